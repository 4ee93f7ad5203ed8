package org.wetmil.workbook.reconcile;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.wetmil.workbook.fill.Heights;

/** What every list has: frozen headings, a filter, and pages as wide as the list. */
final class Lists {
  /** Headings of a page run over up to three lines. */
  static final float HEADINGS_PT = 47;

  /** A line of headings, and what stays free above and below. */
  private static final float LINE_PT = 15;

  private static final float FREE_PT = 2;

  private Lists() {}

  private static float headings(Sheet sheet) {
    int lines = 1;
    for (Cell cell : sheet.getRow(0)) {
      int width = sheet.getColumnWidth(cell.getColumnIndex()) / 256;
      lines = Math.max(lines, Heights.lines(cell.getStringCellValue(), width));
    }
    return lines * LINE_PT + FREE_PT;
  }

  static void shape(Sheet sheet, int columns, int rows) {
    sheet.getRow(0).setHeightInPoints(headings(sheet));
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
