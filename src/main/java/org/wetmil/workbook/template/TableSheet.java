package org.wetmil.workbook.template;

import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Field;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** A blank sheet for one of the tables of figures: its headings, and room for rows. */
final class TableSheet {
  /** Rows laid out; more may follow. */
  static final int ROWS = 30;

  /** Columns that an upright page takes. */
  private static final int UPRIGHT = 5;

  /** Says of a built-in row what is common practice in it; no figure of the estimator's. */
  private static final String PRACTICE = "Practice";

  private final XSSFSheet sheet;
  private final Look look;
  private final Tables table;
  private final UnitSystem system;
  private final List<Field> fields;

  TableSheet(XSSFSheet sheet, Look look, Tables table, UnitSystem system) {
    this.sheet = sheet;
    this.look = look;
    this.table = table;
    this.system = system;
    this.fields =
        Catalogue.builtIn().table(table).spec().fields().stream()
            .filter(field -> !field.heading().equals(PRACTICE))
            .toList();
  }

  void write() {
    Rows rows = new Rows(sheet);
    rows.row().height(Headings.HEIGHT);
    Prompts prompts = new Prompts(sheet);
    for (int i = 0; i < fields.size(); i++) {
      Field field = fields.get(i);
      String heading = Headings.of(field.heading(), field.quantity(), system);
      rows.text(heading, look.asked());
      prompt(prompts, field, new CellRangeAddressList(1, ROWS, i, i), heading);
      Pages.width(sheet, i, width(field, heading));
    }
    for (int i = 0; i < ROWS; i++) {
      rows.row();
      fields.forEach(field -> rows.blank(look.blank(isCode(field))));
    }
    Examples.note(sheet, table, system);
    sheet.createFreezePane(1, 1);
    if (fields.size() > UPRIGHT) {
      Pages.list(sheet, fields.size(), ROWS + 1, 1);
    } else {
      Pages.upright(sheet, fields.size(), ROWS + 1);
    }
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
  }

  /** A tip code is text, so that 5-17 becomes no date. */
  private static boolean isCode(Field field) {
    return field.heading().equals("Tip");
  }

  private static int width(Field field, String heading) {
    return Headings.width(heading, field.quantity(), field.range().words());
  }

  private void prompt(Prompts prompts, Field field, CellRangeAddressList cells, String title) {
    Optional<Tables> names = names(field);
    if (names.isPresent()) {
      prompts.offer(cells, ListsSheet.name(names.get()), title, field.meaning());
    } else if (!field.range().words().isEmpty()) {
      prompts.offer(cells, field.range().words(), title, field.meaning());
    } else {
      prompts.say(cells, title, field.meaning());
    }
  }

  /** The table whose names stand under a heading of another. */
  private Optional<Tables> names(Field field) {
    boolean own = field.equals(fields.get(0)) && table != Tables.OPENINGS;
    return switch (field.heading()) {
      case "Class", "Coating" -> own ? Optional.empty() : Optional.of(Tables.COATINGS);
      case "Surface" -> own ? Optional.empty() : Optional.of(Tables.SURFACES);
      case "Sprayer" -> own ? Optional.empty() : Optional.of(Tables.SPRAYERS);
      case "Kind" -> Optional.of(Tables.OPENING_KINDS);
      default -> Optional.empty();
    };
  }
}
