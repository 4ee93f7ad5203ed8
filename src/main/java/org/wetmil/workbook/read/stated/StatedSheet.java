package org.wetmil.workbook.read.stated;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Field;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.StatedRow.StatedCell;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.measure.DecimalMark;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.heading.HeadingFinder;
import org.wetmil.workbook.read.heading.HeadingText;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.read.words.Words;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** Reads a sheet by which the estimator adds to one of the tables of figures. */
public final class StatedSheet {
  /** One column of the sheet: the fields it may be, and its unit. */
  private record Column(List<Field> fields, Optional<Unit> unit, DecimalMark mark) {}

  private final Grid grid;
  private final Tables table;
  private final TableHeadings headings;
  private final Map<Integer, Column> columns = new TreeMap<>();
  private int unitColumn = -1;
  private int headingRow = -1;

  private StatedSheet(Grid grid, Tables table) {
    this.grid = grid;
    this.table = table;
    this.headings = new TableHeadings(table);
  }

  /**
   * The rows that a sheet states for a table; none when its headings are not found.
   *
   * @param problems takes rows that have values and no name
   */
  static List<StatedRow> rows(Grid grid, Tables table, List<TableProblem> problems) {
    StatedSheet sheet = new StatedSheet(grid, table);
    sheet.findHeadings();
    return sheet.columns.isEmpty() ? List.of() : sheet.read(problems);
  }

  private void findHeadings() {
    Map<Integer, Column> best = Map.of();
    for (GridRow row : grid.rows(0, HeadingFinder.FIRST_ROWS - 1)) {
      Map<Integer, Column> found = headingsIn(row);
      if (found.size() > best.size() && isEnough(found)) {
        best = found;
        headingRow = row.row();
      }
    }
    if (best.isEmpty() && headings.spec().isByRow()) {
      withoutHeadings();
      return;
    }
    columns.putAll(best);
    for (RawCell cell : cells(headingRow)) {
      if (!columns.containsKey(cell.column()) && isUnits(grid.text(headingRow, cell.column()))) {
        unitColumn = cell.column();
      }
    }
  }

  private Map<Integer, Column> headingsIn(GridRow row) {
    Map<Integer, Column> found = new TreeMap<>();
    for (RawCell cell : row.cells()) {
      if (cell.kind() == CellKind.TEXT) {
        HeadingText text = HeadingText.of(cell.text());
        List<Field> fields = headings.fields(text);
        if (!fields.isEmpty()) {
          Optional<Unit> unit = text.unit().or(() -> leadingUnit(text, fields));
          found.put(cell.column(), new Column(fields, unit, mark(row.row(), cell.column())));
        }
      }
    }
    return found;
  }

  /** The unit that a name begins with: Gallons sprayed are gallons, on a metric job too. */
  private static Optional<Unit> leadingUnit(HeadingText text, List<Field> fields) {
    return UnitWords.find(text.text().split(" ")[0])
        .filter(
            unit ->
                fields.stream()
                    .map(Field::quantity)
                    .anyMatch(each -> each != null && each.base().dimension() == unit.dimension()));
  }

  /** The name of the row and something about it; a list may hold names alone. */
  private boolean isEnough(Map<Integer, Column> found) {
    Field name = headings.spec().fields().get(0);
    boolean named = found.values().stream().anyMatch(column -> column.fields().contains(name));
    boolean list =
        switch (table) {
          case TIPS_ON_HAND, GUARDS_ON_HAND -> true;
          default -> false;
        };
    return named && (found.size() > 1 || list);
  }

  /** A list of settings needs no headings: name, value and unit stand side by side. */
  private void withoutHeadings() {
    List<Field> fields = headings.spec().fields();
    for (GridRow row : grid.rows()) {
      RawCell first = row.cells().get(0);
      boolean known =
          Catalogue.builtIn().table(table).find(grid.text(row.row(), first.column())).isPresent();
      if (known) {
        headingRow = row.row() - 1;
        DecimalMark mark = mark(headingRow, first.column() + 1);
        columns.put(first.column(), new Column(List.of(fields.get(0)), Optional.empty(), mark));
        columns.put(first.column() + 1, new Column(List.of(fields.get(1)), Optional.empty(), mark));
        unitColumn = first.column() + 2;
        return;
      }
    }
  }

  private DecimalMark mark(int above, int column) {
    return DecimalMark.seenIn(
        grid.rows(above + 1, grid.lastRow()).stream()
            .map(row -> grid.at(row.row(), column))
            .filter(cell -> cell.kind() == CellKind.TEXT)
            .map(RawCell::text)
            .toList());
  }

  private List<RawCell> cells(int row) {
    return grid.rows(row, row).stream().flatMap(each -> each.cells().stream()).toList();
  }

  private static boolean isUnits(String heading) {
    return Words.key(heading).equals("unit") || Words.key(heading).equals("uom");
  }

  private List<StatedRow> read(List<TableProblem> problems) {
    String name = headings.spec().fields().get(0).heading();
    List<StatedRow> rows = new ArrayList<>();
    for (GridRow row : grid.rows(headingRow + 1, grid.lastRow())) {
      Optional<Unit> unit =
          unitColumn < 0 ? Optional.empty() : UnitWords.find(grid.text(row.row(), unitColumn));
      Map<String, StatedCell> cells = new LinkedHashMap<>();
      columns.forEach((at, column) -> read(row.row(), at, column, unit, cells));
      if (cells.containsKey(name)) {
        rows.add(new StatedRow(grid.sheet(), row.row() + 1, cells));
      } else {
        cells.values().stream()
            .filter(StatedCell::trueNumber)
            .findFirst()
            .ifPresent(cell -> problems.add(nameless(cell, name)));
      }
    }
    return rows;
  }

  private TableProblem nameless(StatedCell cell, String name) {
    String expected = "a name under " + name + " in this row";
    return new TableProblem(table.title(), grid.sheet(), cell.address(), cell.raw(), expected);
  }

  private void read(
      int row, int at, Column column, Optional<Unit> rowUnit, Map<String, StatedCell> cells) {
    RawCell seen = grid.seenAt(row, at);
    boolean name = column.fields().contains(headings.spec().fields().get(0));
    // A room merged over its openings names each of them.
    RawCell cell = name && seen.column() == at ? seen : grid.at(row, at);
    if (cell.kind() == CellKind.BLANK && cell.formula() == null) {
      return;
    }
    StatedCells reader = new StatedCells(grid.texts(), column.mark());
    Optional<Unit> unit = reader.unit(cell).or(column::unit).or(() -> rowUnit);
    Field field = TableHeadings.best(column.fields(), unit);
    reader
        .read(table, field, cell, unit)
        .ifPresent(read -> cells.putIfAbsent(field.heading(), read));
  }
}
