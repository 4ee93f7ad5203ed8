package org.wetmil.workbook.copy;

import java.util.List;

/** The rows of a new sheet, asked for when the file is written. */
public interface NewRows {
  /** How many rows there are, gaps included. */
  int rows();

  /** How many columns they take. */
  int columns();

  /** Gives the rows in ascending order; the styles of their cells are those the workbook has. */
  void give(RowTaker to);

  /** Takes one row after the other. */
  @FunctionalInterface
  interface RowTaker {
    /**
     * @param row counted from 0
     * @param points its height; 0 for the usual one
     * @param cells in ascending order of their columns
     */
    void row(int row, float points, List<AddedCell> cells);
  }
}
