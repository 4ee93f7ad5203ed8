package org.wetmil.workbook.look;

import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.workbook.copy.AddedCell;
import org.wetmil.workbook.copy.CellContent;
import org.wetmil.workbook.copy.Cells;

/** Writes one row of a sheet of ours after the other. */
public final class Rows {
  private final Cells cells;
  private int next;
  private int column;

  public Rows(XSSFSheet sheet) {
    this(Cells.of(sheet));
  }

  /** Rows whose cells go elsewhere than into a sheet of the library. */
  public Rows(Cells cells) {
    this.cells = cells;
  }

  /** Begins the next row. */
  public Rows row() {
    cells.row(next++);
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

  /** Sets the height of the row that was begun last, in points. */
  public Rows height(double points) {
    cells.height(next - 1, (float) points);
    return this;
  }

  /** Gives the row that was begun last one style all along, so that its line runs across. */
  public Rows underline(int columns, XSSFCellStyle style) {
    for (int i = 0; i < columns; i++) {
      cells.style(next - 1, i, style.getIndex());
    }
    return this;
  }

  public Rows text(String text, XSSFCellStyle style) {
    return put(Contents.text(text), style);
  }

  /** A number; nothing but the format where there is none. */
  public Rows number(double value, XSSFCellStyle style) {
    return put(Double.isNaN(value) ? new CellContent.Blank() : Contents.number(value), style);
  }

  /** A formula with its value; the value alone where there is no formula. */
  public Rows formula(String formula, double value, XSSFCellStyle style) {
    return put(Contents.formula(formula, value), style);
  }

  public Rows formula(String formula, String value, XSSFCellStyle style) {
    return put(Contents.formula(formula, value), style);
  }

  /** A cell with nothing but a format. */
  public Rows blank(XSSFCellStyle style) {
    return put(new CellContent.Blank(), style);
  }

  public Rows skip(int cells) {
    column += cells;
    return this;
  }

  private Rows put(CellContent content, XSSFCellStyle style) {
    cells.put(next - 1, new AddedCell(column++, style == null ? 0 : style.getIndex(), content));
    return this;
  }
}
