package org.wetmil.workbook.stream;

import java.util.Optional;

/** A block of cells, all four borders counted from 0 and included. */
public record CellRange(int firstRow, int firstColumn, int lastRow, int lastColumn) {
  public CellRange {
    if (firstRow > lastRow || firstColumn > lastColumn) {
      throw new IllegalArgumentException("a range ends before it begins");
    }
  }

  /** Whether a cell lies in the block. */
  public boolean contains(int row, int column) {
    return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
  }

  /** Reads "A1" or "A1:B5", with or without dollar signs; empty when it is neither. */
  public static Optional<CellRange> parse(String reference) {
    String[] ends = reference.trim().replace("$", "").split(":", -1);
    if (ends.length > 2) {
      return Optional.empty();
    }
    CellAddress from = CellAddress.find(ends[0]).orElse(null);
    CellAddress to = CellAddress.find(ends[ends.length - 1]).orElse(null);
    if (from == null || to == null) {
      return Optional.empty();
    }
    return Optional.of(
        new CellRange(
            Math.min(from.row(), to.row()),
            Math.min(from.column(), to.column()),
            Math.max(from.row(), to.row()),
            Math.max(from.column(), to.column())));
  }
}
