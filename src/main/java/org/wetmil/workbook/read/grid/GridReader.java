package org.wetmil.workbook.read.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.RawRow;
import org.wetmil.workbook.stream.SheetPart;
import org.wetmil.workbook.stream.SheetRanges;

/** Takes sheets into memory, without what an earlier fill wrote. */
public final class GridReader {
  private final PackageReader workbook;
  private final OwnMarks marks;
  private final MissingResults missing;
  private final CellText texts;
  private final Map<String, List<CellRange>> ours = new HashMap<>();
  private final Map<String, List<RawCell>> values = new HashMap<>();
  private Function<String, Function<RawCell, Optional<RawCell>>> theirs =
      sheet -> cell -> Optional.empty();

  public GridReader(PackageReader workbook, OwnMarks marks, MissingResults missing) {
    this.workbook = workbook;
    this.marks = marks;
    this.missing = missing;
    this.texts = new CellText(workbook.formats(), workbook.date1904());
    this.ours.putAll(marks.columns());
  }

  /**
   * Says how formulas are told that others put into the cells of an earlier fill.
   *
   * @param by gives, for a sheet, what is asked of its formulas from the top down: the cell when it
   *     is not ours
   */
  public void tellFormulas(Function<String, Function<RawCell, Optional<RawCell>>> by) {
    theirs = by;
  }

  /**
   * The cells of an earlier fill by sheet, with what was filled down since on sheets read whole.
   */
  public Map<String, List<CellRange>> ours() {
    return ours;
  }

  /** The cells of an earlier fill on a sheet read whole that hold something but our formulas. */
  public List<RawCell> values(String sheet) {
    return values.getOrDefault(sheet, List.of());
  }

  /** A whole sheet, with formulas computed that have no stored result. */
  public Grid whole(SheetPart sheet) {
    List<GridRow> rows = new ArrayList<>();
    List<CellRange> merged = rows(sheet, Integer.MAX_VALUE, rows).merged();
    values.computeIfPresent(sheet.name(), this::computed);
    List<GridRow> computed = missing.computed(sheet.name(), rows, () -> totals(sheet));
    return new Grid(sheet.name(), computed, merged, texts);
  }

  /** Totals rows of Excel tables: no line of a bid stands there, so none of it is wanted. */
  private List<CellRange> totals(SheetPart sheet) {
    return workbook.tables(sheet).stream()
        .filter(table -> table.totalsRows() > 0)
        .map(
            table ->
                new CellRange(
                    table.range().lastRow() - table.totalsRows() + 1,
                    table.range().firstColumn(),
                    table.range().lastRow(),
                    table.range().lastColumn()))
        .toList();
  }

  private List<RawCell> computed(String sheet, List<RawCell> cells) {
    return cells.isEmpty()
        ? cells
        : missing.computed(sheet, List.of(new GridRow(-1, false, cells)), List::of).get(0).cells();
  }

  /** The first rows of a sheet, to see what it may be. */
  public Grid top(SheetPart sheet, int count) {
    List<GridRow> rows = new ArrayList<>();
    rows(sheet, count, rows);
    return new Grid(sheet.name(), rows, List.of(), texts);
  }

  private SheetRanges rows(SheetPart sheet, int end, List<GridRow> rows) {
    OurCells own = new OurCells(marks.columns().getOrDefault(sheet.name(), List.of()));
    List<RawCell> found = new ArrayList<>();
    Function<RawCell, Optional<RawCell>> formulas = theirs.apply(sheet.name());
    SheetRanges ranges =
        workbook.rows(
            sheet,
            row -> {
              if (row.row() < end) {
                GridRow kept = kept(row, own, found, formulas);
                if (!kept.cells().isEmpty()) {
                  rows.add(kept);
                }
              }
              return row.row() < end;
            });
    if (!own.ranges().isEmpty()) {
      ours.put(sheet.name(), own.ranges());
      values.put(sheet.name(), found);
    }
    return ranges;
  }

  private static GridRow kept(
      RawRow row,
      OurCells ours,
      List<RawCell> values,
      Function<RawCell, Optional<RawCell>> formulas) {
    List<RawCell> cells = new ArrayList<>();
    for (RawCell cell : row.cells()) {
      if (ours.holds(cell)) {
        if (cell.formula() != null) {
          formulas.apply(cell).ifPresent(values::add);
        } else if (!cell.isEmpty()) {
          values.add(cell);
        }
      } else if (!cell.isEmpty()) {
        cells.add(cell);
      }
    }
    cells.sort(Comparator.comparingInt(RawCell::column));
    return new GridRow(row.row(), row.hidden(), cells);
  }
}
