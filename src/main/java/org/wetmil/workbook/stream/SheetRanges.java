package org.wetmil.workbook.stream;

import java.util.List;
import java.util.Optional;

/**
 * The ranges that a sheet declares after its rows.
 *
 * @param merged blocks of cells shown as one
 * @param autoFilter the range of the sheet's own filter, if any; tables have theirs
 */
public record SheetRanges(List<CellRange> merged, Optional<CellRange> autoFilter) {
  public SheetRanges {
    merged = List.copyOf(merged);
  }
}
