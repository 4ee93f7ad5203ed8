package org.wetmil.workbook.read.grid;

import java.util.List;
import org.wetmil.workbook.stream.RawCell;

/**
 * The cells of a row that hold something, from left to right.
 *
 * @param row counted from 0
 * @param hidden by the user or by a filter
 */
public record GridRow(int row, boolean hidden, List<RawCell> cells) {
  public GridRow {
    cells = List.copyOf(cells);
  }
}
