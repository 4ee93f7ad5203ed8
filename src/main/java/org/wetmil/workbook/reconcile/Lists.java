package org.wetmil.workbook.reconcile;

import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;

/** What every list has: frozen headings, a filter, and pages as wide as the list. */
final class Lists {
  /** Headings run over up to three lines. */
  static final float HEADINGS_PT = 47;

  private Lists() {}

  static void shape(Sheet sheet, int columns, int rows) {
    sheet.getRow(0).setHeightInPoints(HEADINGS_PT);
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, Math.max(0, rows - 1), 0, columns - 1));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    sheet.setFitToPage(true);
    PrintSetup print = sheet.getPrintSetup();
    print.setLandscape(true);
    print.setFitWidth((short) 1);
    print.setFitHeight((short) 0);
    sheet.getFooter().setLeft("&F, &A");
    sheet.getFooter().setRight("&P / &N");
    sheet.setDisplayGridlines(false);
  }
}
