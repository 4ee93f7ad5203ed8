package org.wetmil.workbook.read;

import java.util.List;
import org.wetmil.estimate.Remark;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.RawCell;

/** Finds the columns to the right of a table that nobody has written in. */
final class FreeColumns {
  private FreeColumns() {}

  /** First free column of the rows from the headings to the last. */
  static int first(Grid grid, BidTable table, int lastRow, List<Remark> remarks) {
    RawCell note = null;
    for (GridRow row : grid.rows(table.block().firstRow(), lastRow)) {
      RawCell last = row.cells().get(row.cells().size() - 1);
      if (last.column() > table.lastColumn() && (note == null || last.column() > note.column())) {
        note = last;
      }
    }
    if (note == null) {
      return table.lastColumn() + 1;
    }
    remarks.add(
        new Remark(
            "columns-moved",
            grid.sheet(),
            new CellAddress(note.row(), note.column()).toString(),
            grid.texts().shown(note),
            "The filled columns begin at column %s, to the right of what stands beside the table."
                .formatted(CellAddress.letters(note.column() + 1))));
    return note.column() + 1;
  }
}
