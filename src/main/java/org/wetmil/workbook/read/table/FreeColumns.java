package org.wetmil.workbook.read.table;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.wetmil.estimate.Remark;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.RawCell;

/** Finds the columns to the right of a table that nobody has written in. */
public final class FreeColumns {
  private final Grid grid;
  private final int shown;
  private final Set<Integer> ours;
  private final List<Remark> remarks;
  private final Map<BidTable, Integer> beside;
  private final BitSet held = new BitSet();

  /**
   * @param tables all bid tables of the sheet: their cells are no notes, though they take room
   * @param shown how many columns a table is filled with
   * @param ours columns of an earlier fill, which are used again as long as they have room
   */
  public FreeColumns(
      Grid grid, List<BidTable> tables, int shown, Set<Integer> ours, List<Remark> remarks) {
    this.grid = grid;
    this.shown = shown;
    this.ours = ours;
    this.remarks = remarks;
    this.beside = beside(tables);
    tables.forEach(table -> held.set(table.firstColumn(), table.lastColumn() + 1));
  }

  /** How many tables stand beside each. From the top, so that only those at its height are seen. */
  private static Map<BidTable, Integer> beside(List<BidTable> tables) {
    Map<BidTable, Integer> beside = new IdentityHashMap<>();
    List<BidTable> open = new ArrayList<>();
    for (BidTable table :
        tables.stream().sorted(Comparator.comparingInt(each -> each.block().firstRow())).toList()) {
      open.removeIf(other -> other.lastRow() < table.block().firstRow());
      for (BidTable other : open) {
        if (table.isBeside(other)) {
          beside.merge(table, 1, Integer::sum);
          beside.merge(other, 1, Integer::sum);
        }
      }
      open.add(table);
    }
    return beside;
  }

  /** First column for what a table is filled with, in the rows from its headings to the last. */
  public int first(BidTable table, int lastRow) {
    List<RawCell> notes =
        grid.rows(table.block().firstRow(), lastRow).stream()
            .flatMap(row -> row.cells().stream())
            .filter(cell -> cell.column() > table.lastColumn())
            .toList();
    int needed = shown * (1 + beside.getOrDefault(table, 0));
    int again = ours.stream().mapToInt(Integer::intValue).min().orElse(-1);
    boolean hasRoom =
        again > table.lastColumn()
            && rightmost(notes, at -> at >= again && at < again + needed).isEmpty();
    Optional<RawCell> note = rightmost(notes, at -> !hasRoom || at < again);
    int afterNotes = note.map(RawCell::column).orElse(table.lastColumn()) + 1;
    int first = hasRoom ? again : afterNotes;
    note.filter(cell -> !held.get(cell.column()))
        .ifPresent(cell -> remarks.add(moved(cell, first)));
    return first;
  }

  private static Optional<RawCell> rightmost(List<RawCell> cells, Predicate<Integer> columns) {
    return cells.stream()
        .filter(cell -> columns.test(cell.column()))
        .max(Comparator.comparingInt(RawCell::column).thenComparing(RawCell::row, (a, b) -> b - a));
  }

  private Remark moved(RawCell note, int first) {
    return new Remark(
        "columns-moved",
        grid.sheet(),
        new CellAddress(note.row(), note.column()).toString(),
        grid.texts().shown(note),
        "The filled columns begin at column %s, to the right of what stands beside the table."
            .formatted(CellAddress.letters(first)));
  }
}
