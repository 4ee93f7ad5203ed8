package org.wetmil.workbook.reconcile;

import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.RowsLater;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** What every list has: frozen headings, a filter, and pages as wide as the list. */
final class Lists {
  /** Headings of a page run over up to three lines. */
  static final float HEADINGS_PT = 47;

  /** What stays free above and below headings. */
  private static final int FREE_PT = 2;

  /** Columns that tell, after the first, what a row is about. */
  private static final Set<String> NAMED = Set.of("Date", "Job", "Item");

  private Lists() {}

  /**
   * A column of a list.
   *
   * @param width in characters
   */
  record Column(String heading, int width) {}

  /**
   * Writes a list, its rows only when the file is written.
   *
   * @param count how many rows it has under the headings
   * @param body writes them; the styles it takes are to be made before
   */
  static void later(
      XSSFSheet sheet, Look look, List<Column> columns, int count, Consumer<Rows> body) {
    XSSFCellStyle heading = look.heading();
    ((LeanWorkbook) sheet.getWorkbook())
        .later(
            sheet,
            new RowsLater(
                1 + count,
                columns.size(),
                cells -> {
                  Rows rows = new Rows(cells);
                  headings(rows, columns, heading);
                  body.accept(rows);
                }));
    shape(sheet, columns, count);
  }

  /** Begins a list whose rows are written at once, as many as are said. */
  static Rows now(XSSFSheet sheet, Look look, List<Column> columns, int count) {
    Rows rows = new Rows(sheet);
    headings(rows, columns, look.heading());
    shape(sheet, columns, count);
    return rows;
  }

  private static void headings(Rows rows, List<Column> columns, XSSFCellStyle style) {
    rows.row();
    columns.forEach(column -> rows.text(column.heading(), style));
    rows.height(height(columns));
  }

  private static void shape(XSSFSheet sheet, List<Column> columns, int count) {
    for (int i = 0; i < columns.size(); i++) {
      Pages.width(sheet, i, columns.get(i).width());
    }
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, count, 0, columns.size() - 1));
    int kept = 1;
    while (kept < columns.size() && NAMED.contains(columns.get(kept).heading())) {
      kept++;
    }
    Pages.list(sheet, columns.size(), 1 + count, kept);
  }

  private static double height(List<Column> columns) {
    int lines =
        columns.stream()
            .mapToInt(column -> Heights.lines(column.heading(), column.width()))
            .max()
            .orElse(1);
    return Heights.points(lines) + FREE_PT;
  }
}
