package org.wetmil.workbook.fill;

import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes one row of a sheet of ours after the other. */
public final class Rows {
  private final XSSFSheet sheet;
  private XSSFRow row;
  private int next;
  private int column;

  public Rows(XSSFSheet sheet) {
    this.sheet = sheet;
  }

  /** Begins the next row. */
  public Rows row() {
    row = sheet.createRow(next++);
    column = 0;
    return this;
  }

  /** Leaves a row empty. */
  public Rows gap() {
    next++;
    return this;
  }

  /** The row that was begun last, from 1 as in an address. */
  public int number() {
    return next;
  }

  public XSSFRow current() {
    return row;
  }

  public Rows text(String text, XSSFCellStyle style) {
    XSSFCell cell = cell(style);
    // a spreadsheet program takes a text cell for text, whatever it begins with
    cell.setCellValue(Texts.fitting(text));
    return this;
  }

  public Rows number(double value, XSSFCellStyle style) {
    XSSFCell cell = cell(style);
    if (!Double.isNaN(value)) {
      cell.setCellValue(value);
    }
    return this;
  }

  /** A formula with its value; the value alone where there is no formula. */
  public Rows formula(String formula, double value, XSSFCellStyle style) {
    XSSFCell cell = cell(style);
    if (formula != null) {
      cell.setCellFormula(formula);
    }
    cell.setCellValue(value);
    return this;
  }

  public Rows formula(String formula, String value, XSSFCellStyle style) {
    XSSFCell cell = cell(style);
    cell.setCellFormula(formula);
    cell.setCellValue(Texts.fitting(value));
    return this;
  }

  public Rows skip(int cells) {
    column += cells;
    return this;
  }

  private XSSFCell cell(XSSFCellStyle style) {
    XSSFCell cell = row.createCell(column++);
    if (style != null) {
      cell.setCellStyle(style);
    }
    return cell;
  }
}
