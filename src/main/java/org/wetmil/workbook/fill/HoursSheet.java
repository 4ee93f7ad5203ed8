package org.wetmil.workbook.fill;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.UnitSystem;

/**
 * The list of hours, area and paint, one line a row, in the job's units. Every cell of a row refers
 * to one row of a bid sheet, so that after a sort there it is whole again.
 */
final class HoursSheet {
  /** The columns, in order; totals elsewhere find theirs by name. */
  enum Column {
    SHEET("Sheet", 14),
    FLOOR("Floor", 12),
    ROOM("Room", 22),
    SURFACE("Surface", 22),
    COATING("Coating", 18),
    COUNTED("Counted", 9),
    AREA("Net area", 11),
    PAINT("Paint", 10),
    SPRAY("Spray", 10),
    ROLL("Back-roll", 10),
    MASK("Masking", 10),
    PREPARE("Preparation", 11),
    LABOUR("Labour", 10);

    private final String heading;
    private final int width;

    Column(String heading, int width) {
      this.heading = heading;
      this.width = width;
    }

    /** A whole column of the list as formulas elsewhere write it. */
    String whole(String sheet) {
      String letters = CellReference.convertNumToColString(ordinal());
      return Texts.sheet(sheet) + "!$" + letters + ":$" + letters;
    }
  }

  private static final List<FilledColumn> NUMBERS =
      List.of(
          FilledColumn.NET_AREA,
          FilledColumn.PAINT,
          FilledColumn.SPRAY,
          FilledColumn.ROLL,
          FilledColumn.MASK,
          FilledColumn.PREPARE,
          FilledColumn.LABOUR);

  private final XSSFSheet sheet;
  private final Look look;
  private final List<SheetPlan> plans;
  private final UnitSystem system;
  private final Rows rows;

  HoursSheet(XSSFSheet sheet, Look look, List<SheetPlan> plans, UnitSystem system) {
    this.sheet = sheet;
    this.look = look;
    this.plans = plans;
    this.system = system;
    this.rows = new Rows(sheet);
  }

  void write() {
    rows.row();
    for (Column column : Column.values()) {
      rows.text(heading(column), look.heading());
      sheet.setColumnWidth(column.ordinal(), column.width * 256);
    }
    for (SheetPlan plan : plans) {
      plan.placed().stream()
          .filter(placed -> placed.line().isFilled())
          .forEach(placed -> line(plan, placed));
    }
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, rows.number() - 1, 0, Column.values().length - 1));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    Pages.landscape(sheet, Column.values().length, rows.number());
  }

  private String heading(Column column) {
    return switch (column) {
      case AREA -> FilledColumn.NET_AREA.heading(system);
      case PAINT -> FilledColumn.PAINT.heading(system);
      case SPRAY, ROLL, MASK, PREPARE, LABOUR -> column.heading + " (h)";
      default -> column.heading;
    };
  }

  private void line(SheetPlan plan, SheetPlan.Placed placed) {
    FilledLine line = placed.line();
    SheetPlan.Block block = placed.block();
    String at = Texts.sheet(plan.sheet()) + "!";
    int row = line.line().row();
    rows.row().text(plan.sheet(), look.text(false));
    for (InputColumn label : List.of(InputColumn.FLOOR, InputColumn.ROOM, InputColumn.SURFACE)) {
      Integer column = block.table().columns().get(label);
      if (column == null) {
        rows.text("", look.text(false));
      } else {
        String cell = at + new CellReference(row - 1, column, true, true).formatAsString();
        rows.formula("TRIM(" + cell + ")", line.line().text(label), look.text(false));
      }
    }
    rows.formula(
            filled(at, block, FilledColumn.COATING_USED, row),
            line.work().coating().name(),
            look.text(false))
        .formula(
            filled(at, block, FilledColumn.COUNTED, row),
            line.figures().get(FilledColumn.COUNTED).number(),
            look.number(0));
    for (FilledColumn column : NUMBERS) {
      double factor =
          column.quantity().unit(plan.system()).si() / column.quantity().unit(system).si();
      String formula =
          filled(at, block, column, row) + (factor == 1 ? "" : "*" + Totals.plain(factor));
      rows.formula(formula, line.figures().get(column).number() * factor, look.number(2));
    }
  }

  private static String filled(String at, SheetPlan.Block block, FilledColumn column, int row) {
    return at + new CellReference(row - 1, block.column(column), true, true).formatAsString();
  }
}
