package org.wetmil.workbook.fill;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes cells of a page anywhere, so that blocks can stand side by side. */
final class Canvas {
  private final XSSFSheet sheet;

  Canvas(XSSFSheet sheet) {
    this.sheet = sheet;
  }

  XSSFSheet sheet() {
    return sheet;
  }

  Canvas text(int row, int column, String text, XSSFCellStyle style) {
    cell(row, column, style).setCellValue(Texts.fitting(text));
    return this;
  }

  Canvas number(int row, int column, double value, XSSFCellStyle style) {
    cell(row, column, style).setCellValue(value);
    return this;
  }

  /** A formula with its value; the value alone where there is no formula. */
  Canvas formula(int row, int column, String formula, double value, XSSFCellStyle style) {
    XSSFCell cell = cell(row, column, style);
    if (formula != null) {
      cell.setCellFormula(formula);
    }
    cell.setCellValue(value);
    return this;
  }

  Canvas formula(int row, int column, String formula, String value, XSSFCellStyle style) {
    XSSFCell cell = cell(row, column, style);
    cell.setCellFormula(formula);
    cell.setCellValue(Texts.fitting(value));
    return this;
  }

  /** Gives the cells of a row that have none a style, so that its line runs across. */
  Canvas across(int row, int first, int last, XSSFCellStyle style) {
    for (int column = first; column <= last; column++) {
      if (line(row).getCell(column) == null) {
        cell(row, column, style);
      }
    }
    return this;
  }

  Canvas merged(int row, int first, int last) {
    sheet.addMergedRegion(new CellRangeAddress(row, row, first, last));
    return this;
  }

  Canvas height(int row, double points) {
    line(row).setHeightInPoints((float) points);
    return this;
  }

  /** An address on this sheet as its own formulas write it. */
  static String at(int row, int column) {
    return new CellReference(row, column, true, true).formatAsString();
  }

  static String range(int first, int last, int column) {
    return at(first, column) + ":" + at(last, column);
  }

  /** An address on this sheet as formulas of other sheets write it. */
  String from(int row, int column) {
    return Texts.sheet(sheet.getSheetName()) + "!" + at(row, column);
  }

  private XSSFCell cell(int row, int column, XSSFCellStyle style) {
    XSSFCell cell = line(row).createCell(column);
    if (style != null) {
      cell.setCellStyle(style);
    }
    return cell;
  }

  private XSSFRow line(int row) {
    XSSFRow line = sheet.getRow(row);
    return line == null ? sheet.createRow(row) : line;
  }
}
