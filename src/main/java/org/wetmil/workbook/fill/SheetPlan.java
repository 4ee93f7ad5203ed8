package org.wetmil.workbook.fill;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.SheetLayout;
import org.wetmil.workbook.read.TableLayout;

/**
 * Where the filled columns of one bid sheet go: to the right of every table, in one block; tables
 * that stand side by side get blocks of their own, since they share rows.
 */
final class SheetPlan {
  private final SheetLayout layout;
  private final FilledBid.FilledSheet filled;
  private final List<FilledColumn> columns;
  private final List<Block> blocks = new ArrayList<>();
  private final Map<Integer, FilledLine> lines = new HashMap<>();

  /** The filled columns of one table. */
  record Block(TableLayout table, int firstColumn, List<FilledColumn> columns) {
    int column(FilledColumn column) {
      return firstColumn + columns.indexOf(column);
    }

    String letters(FilledColumn column) {
      return CellReference.convertNumToColString(column(column));
    }
  }

  /**
   * @param columns the filled columns that this bid shows
   */
  SheetPlan(SheetLayout layout, FilledBid.FilledSheet filled, List<FilledColumn> columns) {
    this.layout = layout;
    this.filled = filled;
    this.columns = List.copyOf(columns);
    int free = layout.tables().stream().mapToInt(TableLayout::firstFreeColumn).max().orElse(0);
    for (TableLayout table : layout.tables()) {
      int first = free;
      while (isTaken(table, first)) {
        first += columns.size();
      }
      blocks.add(new Block(table, first, this.columns));
    }
    filled.lines().forEach(line -> lines.put(line.line().row() - 1, line));
  }

  private boolean isTaken(TableLayout table, int first) {
    return blocks.stream()
        .anyMatch(
            block ->
                block.firstColumn() == first
                    && block.table().headingRow() <= table.lastRow()
                    && table.headingRow() <= block.table().lastRow());
  }

  String sheet() {
    return layout.sheet();
  }

  UnitSystem system() {
    return filled.sheet().system();
  }

  SheetLayout layout() {
    return layout;
  }

  /** The filled columns that this bid shows, in their order. */
  List<FilledColumn> columns() {
    return columns;
  }

  List<Block> blocks() {
    return blocks;
  }

  List<FilledLine> lines() {
    return filled.lines();
  }

  /** The filled line that stands in a row, from 0; null when none does. */
  FilledLine lineAt(int row) {
    return lines.get(row);
  }

  /** The block that the line in a row fills. */
  Block blockOf(int row) {
    return blocks.stream()
        .filter(block -> block.table().headingRow() < row && row <= block.table().lastRow())
        .findFirst()
        .orElseThrow();
  }

  /** Columns of filled figures, once each: totals take them whole. */
  List<Integer> firstColumns() {
    return blocks.stream().map(Block::firstColumn).distinct().toList();
  }
}
