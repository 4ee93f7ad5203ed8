package org.wetmil.workbook.read.table;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.wetmil.estimate.Remark;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.RawCell;

/** Finds the columns to the right of a table that nobody has written in. */
public final class FreeColumns {
  private FreeColumns() {}

  /**
   * First column for what is filled, in the rows from the headings to the last.
   *
   * @param tables all bid tables of the sheet: their cells are no notes, though they take room
   * @param shown how many columns a table is filled with
   * @param ours columns of an earlier fill, which are used again as long as they have room
   */
  public static int first(
      Grid grid,
      BidTable table,
      List<BidTable> tables,
      int lastRow,
      int shown,
      Set<Integer> ours,
      List<Remark> remarks) {
    List<RawCell> notes =
        grid.rows(table.block().firstRow(), lastRow).stream()
            .flatMap(row -> row.cells().stream())
            .filter(cell -> cell.column() > table.lastColumn())
            .toList();
    long beside = tables.stream().filter(table::isBeside).count();
    long needed = shown * (1 + beside);
    int again = ours.stream().mapToInt(Integer::intValue).min().orElse(-1);
    boolean hasRoom =
        again > table.lastColumn()
            && rightmost(notes, at -> at >= again && at < again + needed).isEmpty();
    Optional<RawCell> note = rightmost(notes, at -> !hasRoom || at < again);
    int afterNotes = note.map(RawCell::column).orElse(table.lastColumn()) + 1;
    int first = hasRoom ? again : afterNotes;
    note.filter(cell -> tables.stream().noneMatch(other -> holds(other, cell)))
        .ifPresent(cell -> remarks.add(moved(grid, cell, first)));
    return first;
  }

  private static boolean holds(BidTable table, RawCell cell) {
    return cell.column() >= table.firstColumn() && cell.column() <= table.lastColumn();
  }

  private static Optional<RawCell> rightmost(List<RawCell> cells, Predicate<Integer> columns) {
    return cells.stream()
        .filter(cell -> columns.test(cell.column()))
        .max(Comparator.comparingInt(RawCell::column).thenComparing(RawCell::row, (a, b) -> b - a));
  }

  private static Remark moved(Grid grid, RawCell note, int first) {
    return new Remark(
        "columns-moved",
        grid.sheet(),
        new CellAddress(note.row(), note.column()).toString(),
        grid.texts().shown(note),
        "The filled columns begin at column %s, to the right of what stands beside the table."
            .formatted(CellAddress.letters(first)));
  }
}
