package org.wetmil.workbook.copy;

import java.util.List;

/** The cells to add to each row of a sheet. */
@FunctionalInterface
public interface RowAdditions {
  /**
   * The cells to add to a row, in ascending order of their columns. Asked once for every row that
   * the original stores, in the order of the file, which is ascending in a sound workbook.
   *
   * @param row counted from 0
   */
  List<AddedCell> forRow(int row);

  /**
   * The height that the added cells need. It only ever makes a row taller, and only one whose
   * height nobody set, as a spreadsheet program would do that fits rows to wrapped text.
   *
   * @param row counted from 0
   * @return points, or 0 when any height will do
   */
  default double heightPt(int row) {
    return 0;
  }
}
