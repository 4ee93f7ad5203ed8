package org.wetmil.workbook.read.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.measure.DecimalMark;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.cell.CellContext;
import org.wetmil.workbook.read.cell.CellReader;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** Reads the lines of one table. */
public final class LineReader {
  private final Grid grid;
  private final BidTable table;
  private final SheetUnits units;
  private final CellReader cells;
  private final List<Integer> rows;
  private final Map<Integer, Map<InputColumn, RawCell>> titles;
  private final Map<InputColumn, CellContext> contexts = new EnumMap<>(InputColumn.class);
  private final Map<Integer, Map<InputColumn, List<CellAddress>>> elsewhere = new HashMap<>();

  /**
   * @param rows that are lines
   * @param titles by row, the titles above that name its room and floor
   */
  public LineReader(
      Grid grid,
      BidTable table,
      SheetUnits units,
      Catalogue catalogue,
      List<Integer> rows,
      Map<Integer, Map<InputColumn, RawCell>> titles) {
    this.grid = grid;
    this.table = table;
    this.units = units;
    this.rows = List.copyOf(rows);
    this.titles = titles;
    this.cells = new CellReader(grid.texts(), catalogue);
    table.columns().forEach((column, heading) -> contexts.put(column, context(column, rows)));
  }

  private CellContext context(InputColumn column, List<Integer> rows) {
    Heading heading = table.columns().get(column);
    DecimalMark mark = DecimalMark.UNKNOWN;
    if (column.quantity().isNumber()) {
      List<String> texts = new ArrayList<>();
      for (int row : rows) {
        RawCell cell = grid.at(row, heading.column());
        if (cell.kind() == CellKind.TEXT) {
          texts.add(cell.text());
        }
      }
      mark = DecimalMark.seenIn(texts);
    }
    return new CellContext(column, units.unit(column, table), heading.unit().isPresent(), mark);
  }

  /** The rows that are lines. */
  public List<Integer> rows() {
    return rows;
  }

  /** Where the words of the lines read stand that are not in the cell of their row alone. */
  public Map<Integer, Map<InputColumn, List<CellAddress>>> elsewhere() {
    return elsewhere;
  }

  /** The unit that each column is read in. */
  public Map<InputColumn, Unit> columnUnits() {
    Map<InputColumn, Unit> found = new EnumMap<>(InputColumn.class);
    contexts.forEach((column, context) -> found.put(column, context.unit()));
    return found;
  }

  public BidLine read(int row) {
    Map<InputColumn, RawCell> line = new EnumMap<>(InputColumn.class);
    table.columns().forEach((column, heading) -> line.put(column, cell(row, column, heading)));
    Optional<Unit> rowUnit =
        table.chosen().units().flatMap(heading -> UnitWords.find(grid.text(row, heading.column())));
    Map<InputColumn, InputValue> values = cells.line(row, line, contexts, rowUnit);
    table.chosen().inches().forEach((column, heading) -> addInches(row, column, heading, values));
    line.forEach((column, cell) -> place(row, column, cell));
    table.chosen().secondRoom().ifPresent(heading -> joinRoom(row, heading, values));
    titles
        .getOrDefault(row, Map.of())
        .forEach((column, title) -> titled(row, column, title, values));
    Heading pressure = table.columns().get(InputColumn.PRESSURE);
    return new BidLine(
        grid.sheet(), row + 1, units.system(), pressure != null && pressure.atGun(), values);
  }

  /** The cell, or the first of the cells merged with it from above where that means the same. */
  private RawCell cell(int row, InputColumn column, Heading heading) {
    boolean shared =
        switch (column) {
          case LENGTH, WIDTH, HEIGHT -> true;
          case NOTES -> false;
          default -> column.quantity() == Quantity.TEXT;
        };
    RawCell seen = grid.seenAt(row, heading.column());
    return shared && seen.column() == heading.column() ? seen : grid.at(row, heading.column());
  }

  /** Of a size kept in two columns, the inches; without them the feet stand alone. */
  private void addInches(
      int row, InputColumn column, Heading heading, Map<InputColumn, InputValue> values) {
    CellContext context = new CellContext(column, Unit.INCH, true, DecimalMark.UNKNOWN);
    Map<InputColumn, RawCell> cell = Map.of(column, grid.at(row, heading.column()));
    InputValue inches =
        cells.line(row, cell, Map.of(column, context), Optional.empty()).get(column);
    InputValue feet = values.get(column);
    if (inches.isBlank() || feet.isFault()) {
      return;
    }
    if (inches.isFault()) {
      values.put(column, inches);
      return;
    }
    double sum = (feet.hasNumber() ? feet.number() : 0) + inches.number();
    String raw = (feet.raw() + "' " + inches.raw() + "\"").strip();
    values.put(
        column,
        new InputValue(InputValue.State.READ, raw, sum, sum, sum, Double.NaN, Unit.FOOT, ""));
  }

  /** Notes where words stand when no formula may point at the row's own cell for them. */
  private void place(int row, InputColumn column, RawCell cell) {
    if (column.quantity() != Quantity.TEXT) {
      return;
    }
    if (grid.texts().isDate(cell)) {
      // a formula would take over the day's number
      stands(row, column, List.of());
    } else if (cell.row() != row) {
      stands(row, column, List.of(new CellAddress(cell.row(), cell.column())));
    }
  }

  private void stands(int row, InputColumn column, List<CellAddress> cells) {
    elsewhere.computeIfAbsent(row, any -> new EnumMap<>(InputColumn.class)).put(column, cells);
  }

  private void joinRoom(int row, Heading second, Map<InputColumn, InputValue> values) {
    List<RawCell> cells = new ArrayList<>();
    for (Heading heading : List.of(table.columns().get(InputColumn.ROOM), second)) {
      RawCell seen = grid.seenAt(row, heading.column());
      if (seen.column() == heading.column() && !grid.texts().shown(seen).isBlank()) {
        cells.add(table.chosen().numberFirst() ? cells.size() : 0, seen);
      }
    }
    if (!cells.isEmpty()) {
      boolean dated = cells.stream().anyMatch(grid.texts()::isDate);
      stands(
          row,
          InputColumn.ROOM,
          dated
              ? List.of()
              : cells.stream().map(cell -> new CellAddress(cell.row(), cell.column())).toList());
      values.put(
          InputColumn.ROOM,
          InputValue.text(
              cells.stream()
                  .map(cell -> grid.texts().exact(cell).strip())
                  .collect(Collectors.joining(" "))));
    }
  }

  private void titled(
      int row, InputColumn column, RawCell title, Map<InputColumn, InputValue> values) {
    String name = SectionTitles.name(title.text());
    boolean whole = name.equals(title.text().strip());
    values.put(column, InputValue.text(name));
    stands(row, column, whole ? List.of(new CellAddress(title.row(), title.column())) : List.of());
  }
}
