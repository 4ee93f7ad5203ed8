package org.wetmil.workbook.read.grid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.RawCell;

/**
 * Tells the cells of an earlier fill on one sheet, asked row by row from the top: those that are
 * marked, and what was filled down under them since.
 */
final class OurCells {
  private final List<CellRange> marked;
  private final Map<Integer, Integer> lowest = new HashMap<>();
  private final Map<Integer, CellRange> growing = new HashMap<>();
  private final List<CellRange> grown = new ArrayList<>();

  OurCells(List<CellRange> marked) {
    this.marked = marked;
  }

  boolean holds(RawCell cell) {
    if (marked.isEmpty()) {
      return false;
    }
    int row = cell.row();
    int column = cell.column();
    boolean isMarked = marked.stream().anyMatch(range -> range.contains(row, column));
    boolean isUnder = lowest.getOrDefault(column, -2) == row - 1 && cell.kind() != CellKind.BLANK;
    if (isMarked || isUnder) {
      lowest.put(column, row);
    }
    if (!isMarked && isUnder) {
      CellRange above = growing.get(column);
      boolean goesOn = above != null && above.lastRow() == row - 1;
      CellRange range = new CellRange(goesOn ? above.firstRow() : row, column, row, column);
      if (goesOn) {
        grown.remove(above);
      }
      growing.put(column, range);
      grown.add(range);
    }
    return isMarked || isUnder;
  }

  /** The blocks of all cells that are ours. */
  List<CellRange> ranges() {
    List<CellRange> all = new ArrayList<>(marked);
    all.addAll(grown);
    return all;
  }
}
