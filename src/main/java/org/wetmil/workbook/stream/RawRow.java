package org.wetmil.workbook.stream;

import java.util.List;

/**
 * A row as it is stored.
 *
 * @param row counted from 0
 * @param hidden by the user or by a filter
 * @param cells those that are stored, in the order of the file
 */
public record RawRow(int row, boolean hidden, List<RawCell> cells) {
  public RawRow {
    cells = List.copyOf(cells);
  }
}
