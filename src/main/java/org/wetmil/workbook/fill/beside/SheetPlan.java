package org.wetmil.workbook.fill.beside;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.SheetLayout;
import org.wetmil.workbook.read.TableLayout;
import org.wetmil.workbook.stream.CellAddress;

/**
 * Where the filled columns of one bid sheet go: to the right of every table, in one block; tables
 * that stand side by side get blocks of their own, since they share rows.
 */
public final class SheetPlan {
  private final SheetLayout layout;
  private final FilledBid.FilledSheet filled;
  private final List<FilledColumn> columns;
  private final List<Block> blocks = new ArrayList<>();
  private final Map<Integer, List<Placed>> rows = new HashMap<>();

  /** The filled columns of one table. */
  public record Block(TableLayout table, int firstColumn, List<FilledColumn> columns) {
    public int column(FilledColumn column) {
      return firstColumn + columns.indexOf(column);
    }

    String letters(FilledColumn column) {
      return CellAddress.letters(column(column));
    }
  }

  /** A filled line and the block that it fills. */
  public record Placed(Block block, FilledLine line) {

    /** Whether a finding in the line's row is about this line; tables can share rows. */
    boolean isAbout(Finding finding) {
      return finding.isAbout(line);
    }
  }

  /**
   * @param columns the filled columns that this bid shows
   */
  public SheetPlan(SheetLayout layout, FilledBid.FilledSheet filled, List<FilledColumn> columns) {
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
    place(filled.lines().iterator());
  }

  /** Lines come table by table, in the order of their rows. */
  private void place(Iterator<FilledLine> lines) {
    for (Block block : blocks) {
      for (int row : block.table().lineRows()) {
        FilledLine line = lines.next();
        if (line.line().row() != row + 1) {
          throw new IllegalStateException("line " + line.line().row() + " stands out of order");
        }
        rows.computeIfAbsent(row, r -> new ArrayList<>(1)).add(new Placed(block, line));
      }
    }
  }

  private boolean isTaken(TableLayout table, int first) {
    return blocks.stream()
        .anyMatch(
            block ->
                block.firstColumn() == first
                    && block.table().headingRow() <= table.lastRow()
                    && table.headingRow() <= block.table().lastRow());
  }

  public String sheet() {
    return layout.sheet();
  }

  public UnitSystem system() {
    return filled.sheet().system();
  }

  SheetLayout layout() {
    return layout;
  }

  /** The filled columns that this bid shows, in their order. */
  public List<FilledColumn> columns() {
    return columns;
  }

  List<Block> blocks() {
    return blocks;
  }

  List<FilledLine> lines() {
    return filled.lines();
  }

  /** The lines that stand in a row, from 0: one, none, or one of each table side by side. */
  List<Placed> at(int row) {
    return rows.getOrDefault(row, List.of());
  }

  /** The line that a finding is about; empty when it is about none. */
  Optional<Placed> of(Finding finding) {
    List<Placed> placed = at(finding.spot().row() - 1);
    int at = finding.among(placed.stream().map(Placed::line).toList());
    return at < 0 ? Optional.empty() : Optional.of(placed.get(at));
  }

  /** All lines with their blocks, in the order of the bid. */
  public List<Placed> placed() {
    return blocks.stream()
        .flatMap(
            block ->
                block.table().lineRows().stream()
                    .flatMap(row -> at(row).stream())
                    .filter(placed -> placed.block() == block))
        .toList();
  }

  /** Columns of filled figures, once each: totals take them whole. */
  public List<Integer> firstColumns() {
    return blocks.stream().map(Block::firstColumn).distinct().toList();
  }
}
