package org.wetmil.workbook.copy;

import java.util.Objects;

/**
 * A cell that we add to a row.
 *
 * @param column counted from 0
 * @param style index of a cell style of the shaped workbook
 * @param content what the cell holds
 */
public record AddedCell(int column, int style, CellContent content) {
  public AddedCell {
    Objects.checkIndex(column, 1 << 14);
    Objects.checkIndex(style, 1 << 16);
    Objects.requireNonNull(content);
  }
}
