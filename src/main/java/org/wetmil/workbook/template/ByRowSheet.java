package org.wetmil.workbook.template;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Field;
import org.wetmil.catalogue.Range;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/**
 * A sheet that lists every setting or rate by name, with room for the estimator's own value beside
 * the one that is built in.
 */
final class ByRowSheet {
  private static final int NAME = 0;
  private static final int VALUE = 1;

  private final XSSFSheet sheet;
  private final Look look;
  private final UnitSystem system;
  private final List<Field> fields;
  private final List<Row> table;

  ByRowSheet(XSSFSheet sheet, Look look, Tables table, UnitSystem system) {
    this.sheet = sheet;
    this.look = look;
    this.system = system;
    this.fields = Catalogue.builtIn().table(table).spec().fields();
    this.table = Catalogue.builtIn().rows(table);
  }

  void write() {
    Rows rows = new Rows(sheet);
    Prompts prompts = new Prompts(sheet);
    List<String> headings =
        List.of(
            fields.get(NAME).heading(),
            fields.get(VALUE).heading(),
            "Unit",
            "Built in",
            "Taken",
            "Meaning");
    rows.row();
    headings.forEach(heading -> rows.text(heading, look.asked()));
    for (Row row : table) {
      rows.row();
      row(rows, row);
      int at = rows.number() - 1;
      prompt(prompts, row, new CellRangeAddressList(at, at, VALUE, VALUE));
    }
    int[] widths = {28, 18, 9, 14, 34, 72};
    Pages.widths(sheet, widths);
    sheet.createFreezePane(1, 1);
    Pages.landscape(sheet, widths.length, rows.number());
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
  }

  private void row(Rows rows, Row row) {
    Entry value = row.entries().get(VALUE);
    rows.text(row.name(), look.text(false))
        .number(Double.NaN, look.blank(false))
        .text(Headings.symbol(value.quantity(), system), look.text(false));
    if (Double.isNaN(value.number())) {
      rows.text(value.text(), look.atLeft());
    } else {
      rows.number(shown(value.quantity(), value.number()), look.atLeft());
    }
    rows.text(taken(row, value.quantity()), look.text(true))
        .text(row.text("Meaning"), look.text(true));
  }

  private void prompt(Prompts prompts, Row row, CellRangeAddressList cell) {
    List<String> words = range(row).words();
    String text = row.text("Meaning") + "; blank keeps the built-in value";
    if (words.isEmpty()) {
      prompts.say(cell, row.name(), text);
    } else {
      prompts.offer(cell, words, row.name(), text);
    }
  }

  private String taken(Row row, Quantity quantity) {
    Range range = range(row);
    if (!range.words().isEmpty()) {
      return String.join("; ", range.words());
    }
    return Double.isInfinite(range.low())
        ? ""
        : "%s to %s"
            .formatted(plain(shown(quantity, range.low())), plain(shown(quantity, range.high())));
  }

  private static Range range(Row row) {
    return Range.of(row.text("Range"));
  }

  private double shown(Quantity quantity, double base) {
    return quantity.base().to(Headings.unit(quantity, system), base);
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
