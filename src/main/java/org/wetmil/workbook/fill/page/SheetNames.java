package org.wetmil.workbook.fill.page;

import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Names for sheets of ours: where a name is taken, the next free one with a number. */
final class SheetNames {
  private SheetNames() {}

  static XSSFSheet create(XSSFWorkbook workbook, String wanted) {
    String name = wanted;
    for (int i = 2; workbook.getSheet(name) != null; i++) {
      name = wanted + " " + i;
    }
    return workbook.createSheet(name);
  }
}
