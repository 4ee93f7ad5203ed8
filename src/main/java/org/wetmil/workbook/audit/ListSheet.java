package org.wetmil.workbook.audit;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** What all lists share: headings in row 1, one record a row, a filter, headings that stay. */
final class ListSheet {
  private static final float HEADINGS_PT = 45;
  private static final String NONE = "none";

  private ListSheet() {}

  static Rows begin(XSSFSheet sheet, Look look, String[] headings, int... widths) {
    Rows rows = new Rows(sheet).row();
    rows.height(HEADINGS_PT);
    for (int i = 0; i < headings.length; i++) {
      rows.text(headings[i], look.heading());
      Pages.width(sheet, i, widths[i]);
    }
    return rows;
  }

  /** An empty list says so, so that nobody takes it for a page that failed. */
  static void end(XSSFSheet sheet, Look look, int columns, Rows written) {
    if (written.number() == 1) {
      written.row().text(NONE, look.text(false));
    }
    int rows = written.number();
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, Math.max(0, rows - 1), 0, columns - 1));
    Pages.list(sheet, columns, rows, 1);
  }
}
