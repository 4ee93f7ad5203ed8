package org.wetmil.workbook.read.heading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** Finds the headings of the tables of a sheet, wherever they stand. */
public final class HeadingFinder {
  /** The first headings stand within these rows. */
  public static final int FIRST_ROWS = 40;

  /** Rows that the headings of one table may be stacked in. */
  public static final int GREATEST_DEPTH = 3;

  /** Rows of units below headings. */
  private static final int UNIT_ROWS = 1;

  /** Names that a row must add to be a row of headings; one alone may be a label of the sheet. */
  private static final int NEW_NAMES = 2;

  private final Grid grid;
  private final HeadingWords words;

  public HeadingFinder(Grid grid, HeadingWords words) {
    this.grid = grid;
    this.words = words;
  }

  /** The headings of all tables and their repetitions, from top to bottom and left to right. */
  public List<HeadingBlock> find() {
    List<HeadingBlock> found = new ArrayList<>();
    int above = 0;
    for (GridRow row : grid.rows()) {
      boolean top = row.row() < FIRST_ROWS;
      if (!top && found.isEmpty()) {
        break;
      }
      int known = knownCells(row);
      // In the first rows, headings may be split over two rows, or have their units below.
      if (known >= 2 || (top && (known == 1 || above >= 2))) {
        at(row.row()).forEach(block -> add(found, block));
      }
      above = known;
    }
    found.sort(
        Comparator.comparingInt(HeadingBlock::headingRow)
            .thenComparingInt(HeadingBlock::firstColumn));
    return found;
  }

  /** Whether the first rows hold words enough that the whole sheet is worth looking at. */
  public boolean mayHold() {
    return grid.rows(0, FIRST_ROWS - 1).stream().mapToInt(this::knownCells).sum() >= NEW_NAMES;
  }

  /**
   * Of headings that overlap, those with more known names stay. Looked for from the end, where the
   * lowest are, and no further up than they can be: a sheet may have thousands.
   */
  private static void add(List<HeadingBlock> found, HeadingBlock block) {
    List<HeadingBlock> rivals = new ArrayList<>();
    for (int i = found.size() - 1; i >= 0; i--) {
      HeadingBlock other = found.get(i);
      if (other.headingRow() + UNIT_ROWS < block.firstRow()) {
        break;
      }
      if (block.firstRow() <= other.lastRow() && block.isAboveOrBelow(other)) {
        rivals.add(other);
      }
    }
    if (rivals.stream().allMatch(other -> other.known() < block.known())) {
      found.removeAll(rivals);
      found.add(block);
    }
  }

  private int knownCells(GridRow row) {
    int known = 0;
    for (RawCell cell : row.cells()) {
      if (cell.kind() == CellKind.TEXT && words.isKnown(cell.text())) {
        known++;
      }
    }
    return known;
  }

  /** The headings whose lowest names stand in a row, each with the depth that makes most known. */
  private List<HeadingBlock> at(int row) {
    List<HeadingBlock> best = List.of();
    for (int depth = 1; depth <= GREATEST_DEPTH && row - depth + 1 >= 0; depth++) {
      int first = row - depth + 1;
      if (depth > 1 && isBlank(first)) {
        break;
      }
      List<HeadingBlock> deeper = blocks(first, row);
      if (best.isEmpty() || known(deeper) >= known(best) + NEW_NAMES || adds(deeper, best)) {
        best = deeper;
      }
    }
    return best.stream().map(this::withUnitRow).toList();
  }

  private static long known(List<HeadingBlock> blocks) {
    return blocks.stream().mapToLong(HeadingBlock::known).sum();
  }

  /** Whether a row above tells more about headings that are known without it: their units. */
  private static boolean adds(List<HeadingBlock> deeper, List<HeadingBlock> best) {
    return known(deeper) == known(best) && units(deeper) > units(best);
  }

  private static long units(List<HeadingBlock> blocks) {
    return blocks.stream()
        .flatMap(block -> block.headings().stream())
        .filter(each -> each.isKnown() && each.unit().isPresent())
        .count();
  }

  private boolean isBlank(int row) {
    return grid.rows(row, row).isEmpty();
  }

  private List<HeadingBlock> blocks(int first, int last) {
    Map<Integer, List<String>> stacks = new TreeMap<>();
    for (int row = first; row <= last; row++) {
      int at = row;
      for (GridRow cells : grid.rows(row, row)) {
        for (RawCell cell : cells.cells()) {
          if (cell.kind() == CellKind.TEXT && !grid.text(at, cell.column()).isEmpty()) {
            stacks.computeIfAbsent(cell.column(), any -> new ArrayList<>());
          }
        }
      }
    }
    stacks.forEach((column, stack) -> stack(first, last, column, stack));
    List<Heading> headings = new ArrayList<>();
    stacks.forEach((column, stack) -> headings.add(words.heading(column, stack)));
    List<HeadingBlock> blocks = new ArrayList<>();
    for (List<Heading> table : new SideBySide(grid, first, last).split(headings)) {
      HeadingBlock block =
          new HeadingBlock(first, last, last, table).withoutFilled(words::isFilled);
      if (block.mayBeBid() && !holdsNumbers(block)) {
        blocks.add(block);
      }
    }
    return blocks;
  }

  /** The texts of one column; a text above that is merged over several columns heads them all. */
  private void stack(int first, int last, int column, List<String> stack) {
    for (int row = first; row <= last; row++) {
      RawCell cell = row < last ? grid.seenAt(row, column) : grid.at(row, column);
      boolean fromLeft = cell.column() != column;
      boolean fromAbove = cell.row() != row;
      String text = grid.text(cell.row(), cell.column());
      if (cell.kind() == CellKind.TEXT
          && !text.isEmpty()
          && !fromAbove
          && !(fromLeft && row == last)) {
        stack.add(text);
      }
    }
  }

  /** A row with numbers under known headings is one of values. */
  private boolean holdsNumbers(HeadingBlock block) {
    return grid.rows(block.firstRow(), block.headingRow()).stream()
        .anyMatch(
            row ->
                block.headings().stream()
                    .filter(Heading::isKnown)
                    .map(heading -> grid.at(row.row(), heading.column()))
                    .anyMatch(cell -> cell.kind() == CellKind.NUMBER));
  }

  /** Takes in a row of units below the headings. */
  private HeadingBlock withUnitRow(HeadingBlock block) {
    int row = block.headingRow() + 1;
    boolean any = false;
    List<Heading> headings = new ArrayList<>();
    for (Heading heading : block.headings()) {
      String text = grid.text(row, heading.column());
      var unit = UnitWords.find(text);
      boolean blank = text.isEmpty() || text.equals("-");
      if (!blank && unit.isEmpty()) {
        return block;
      }
      boolean fits =
          unit.isPresent()
              && heading.candidates().stream()
                  .map(InputColumn::quantity)
                  .anyMatch(each -> each.base().dimension() == unit.get().dimension());
      any |= unit.isPresent();
      headings.add(fits ? heading.withUnit(unit.get()) : heading);
    }
    return any ? new HeadingBlock(block.firstRow(), block.headingRow(), row, headings) : block;
  }
}
