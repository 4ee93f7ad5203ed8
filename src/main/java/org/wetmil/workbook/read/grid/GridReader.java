package org.wetmil.workbook.read.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.RawRow;
import org.wetmil.workbook.stream.SheetPart;

/** Takes sheets into memory, without what an earlier fill wrote. */
public final class GridReader {
  private final PackageReader workbook;
  private final OwnMarks marks;
  private final MissingResults missing;
  private final CellText texts;
  private final Map<String, List<CellRange>> ours = new HashMap<>();
  private final Map<String, List<RawCell>> values = new HashMap<>();

  public GridReader(PackageReader workbook, OwnMarks marks, MissingResults missing) {
    this.workbook = workbook;
    this.marks = marks;
    this.missing = missing;
    this.texts = new CellText(workbook.formats(), workbook.date1904());
    this.ours.putAll(marks.columns());
  }

  /**
   * The cells of an earlier fill by sheet, with what was filled down since on sheets read whole.
   */
  public Map<String, List<CellRange>> ours() {
    return ours;
  }

  /** The cells of an earlier fill on a sheet read whole that hold a value and no formula. */
  public List<RawCell> values(String sheet) {
    return values.getOrDefault(sheet, List.of());
  }

  /** A whole sheet, with formulas computed that have no stored result. */
  public Grid whole(SheetPart sheet) {
    List<GridRow> rows = rows(sheet, Integer.MAX_VALUE);
    List<CellRange> merged = workbook.ranges(sheet).merged();
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

  /** The first rows of a sheet, to see what it may be. */
  public Grid top(SheetPart sheet, int count) {
    return new Grid(sheet.name(), rows(sheet, count), List.of(), texts);
  }

  private List<GridRow> rows(SheetPart sheet, int end) {
    List<GridRow> rows = new ArrayList<>();
    OurCells own = new OurCells(marks.columns().getOrDefault(sheet.name(), List.of()));
    List<RawCell> found = new ArrayList<>();
    workbook.rows(
        sheet,
        row -> {
          if (row.row() < end) {
            GridRow kept = kept(row, own, found);
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
    return rows;
  }

  private static GridRow kept(RawRow row, OurCells ours, List<RawCell> values) {
    List<RawCell> cells = new ArrayList<>();
    for (RawCell cell : row.cells()) {
      if (ours.holds(cell)) {
        if (cell.formula() == null && !isEmpty(cell)) {
          values.add(cell);
        }
      } else if (!isEmpty(cell)) {
        cells.add(cell);
      }
    }
    cells.sort(Comparator.comparingInt(RawCell::column));
    return new GridRow(row.row(), row.hidden(), cells);
  }

  private static boolean isEmpty(RawCell cell) {
    boolean blank =
        cell.kind() == CellKind.BLANK
            || (cell.kind() == CellKind.TEXT && cell.text().replace('\u00a0', ' ').isBlank());
    return blank && cell.formula() == null;
  }
}
