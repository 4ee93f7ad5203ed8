package org.wetmil.workbook.copy;

import org.apache.poi.xssf.usermodel.XSSFSheet;

/**
 * Where the cells of a new sheet are put. Those of a {@link LeanWorkbook} never become cells of the
 * library, which takes a hundred times the memory and most of the time; they are held as they are,
 * or given only when the file is written.
 */
public interface Cells {

  /** The cells of a new sheet. */
  static Cells of(XSSFSheet sheet) {
    return sheet.getWorkbook() instanceof LeanWorkbook lean
        ? lean.held(sheet)
        : new LibraryCells(sheet);
  }

  /** Sets a cell; a row has it once. */
  void put(int row, AddedCell cell);

  /** Makes a row, if it is not there yet, and sets its height. */
  void height(int row, float points);

  /** Makes a row that may stay without cells. */
  void row(int row);

  /** Gives a cell another format, and makes it if it is not there. */
  void style(int row, int column, int style);

  /** What a cell holds; null when there is none. */
  CellContent get(int row, int column);
}
