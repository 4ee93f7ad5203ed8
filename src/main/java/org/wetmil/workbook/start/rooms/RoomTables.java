package org.wetmil.workbook.start.rooms;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.read.heading.HeadingFinder;
import org.wetmil.workbook.read.heading.HeadingText;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.SheetPart;

/** Finds the tables of rooms of a workbook by their headings, one on each sheet that has one. */
public final class RoomTables {
  private final List<SheetPart> sheets;
  private final Function<SheetPart, Grid> grids;
  private final List<String> bids = new ArrayList<>();

  /** A column of a table of rooms. */
  record Column(int at, Optional<Unit> unit) {}

  public RoomTables(List<SheetPart> sheets, Function<SheetPart, Grid> grids) {
    this.sheets = sheets;
    this.grids = grids;
  }

  /** The rooms; empty when no sheet has a table of rooms. */
  public Optional<RoomList> read() {
    List<RoomTable> tables = new ArrayList<>();
    for (SheetPart sheet : sheets) {
      if (sheet.visibility() == SheetPart.Visibility.VISIBLE) {
        table(grids.apply(sheet)).ifPresent(tables::add);
      }
    }
    if (tables.isEmpty()) {
      return Optional.empty();
    }
    List<String> remarks = new ArrayList<>();
    Optional<UnitSystem> stated =
        tables.stream().flatMap(table -> table.system().stream()).findFirst();
    UnitSystem system = stated.orElse(UnitSystem.US);
    if (stated.isEmpty()) {
      remarks.add(
          "no heading states a unit; feet and ft² are taken. Write the unit in the headings, as in"
              + " Area (m²), if they are others.");
    }
    List<Room> rooms = tables.stream().flatMap(table -> table.rooms(system).stream()).toList();
    List<String> names = tables.stream().map(RoomTable::sheet).toList();
    String source = "a table of rooms, sheet " + String.join(", ", names);
    return Optional.of(new RoomList(source, system, rooms, List.of(), remarks));
  }

  /** The row of the first forty that names most facts of a room, one of them its name. */
  private Optional<RoomTable> table(Grid grid) {
    Map<RoomFact, Column> best = Map.of();
    int bestRow = -1;
    for (GridRow row : grid.rows(0, HeadingFinder.FIRST_ROWS - 1)) {
      Map<RoomFact, Column> found = headings(grid, row);
      if (isRooms(found) && found.size() > best.size()) {
        best = found;
        bestRow = row.row();
      }
    }
    if (bestRow >= 0 && isBid(grid, bestRow)) {
      bids.add(grid.sheet());
      return Optional.empty();
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(withUnits(grid, bestRow, best));
  }

  private static Map<RoomFact, Column> headings(Grid grid, GridRow row) {
    Map<RoomFact, Column> found = new EnumMap<>(RoomFact.class);
    for (RawCell cell : row.cells()) {
      if (cell.kind() == CellKind.NUMBER) {
        return Map.of();
      }
      String text = grid.text(cell.row(), cell.column());
      if (cell.kind() == CellKind.TEXT && !text.isEmpty()) {
        Heading heading = RoomFact.heading(cell.column(), text);
        RoomFact.of(heading, HeadingText.of(text).names())
            .ifPresent(fact -> put(found, fact, new Column(cell.column(), unit(text))));
      }
    }
    return found;
  }

  /** Of two columns for the name, the second is kept as the number if the first is none. */
  private static void put(Map<RoomFact, Column> found, RoomFact fact, Column column) {
    boolean second = found.putIfAbsent(fact, column) != null;
    if (second && fact == RoomFact.ROOM) {
      found.putIfAbsent(RoomFact.NUMBER, found.put(RoomFact.ROOM, column));
    }
  }

  private static Optional<Unit> unit(String heading) {
    return HeadingText.of(heading).unit();
  }

  private static boolean isRooms(Map<RoomFact, Column> found) {
    boolean named = found.containsKey(RoomFact.ROOM) || found.containsKey(RoomFact.NUMBER);
    return named && found.keySet().stream().anyMatch(RoomFact::isMeasure);
  }

  /** Whether the headings name surfaces: then the lines of a bid stand below, not rooms. */
  private static boolean isBid(Grid grid, int row) {
    return grid.rows(row, row).stream()
        .flatMap(each -> each.cells().stream())
        .filter(cell -> cell.kind() == CellKind.TEXT)
        .map(cell -> RoomFact.heading(cell.column(), cell.text()))
        .anyMatch(heading -> heading.candidates().equals(List.of(InputColumn.SURFACE)));
  }

  /** Sheets that are bids already, as seen while reading. */
  public List<String> bids() {
    return List.copyOf(bids);
  }

  /** Takes in a row of units below the headings. */
  private static RoomTable withUnits(Grid grid, int row, Map<RoomFact, Column> columns) {
    Map<RoomFact, Column> all = new EnumMap<>(columns);
    boolean below =
        columns.entrySet().stream()
            .filter(each -> each.getKey().isMeasure())
            .anyMatch(each -> UnitWords.find(grid.text(row + 1, each.getValue().at())).isPresent());
    if (below) {
      all.replaceAll(
          (fact, column) ->
              new Column(
                  column.at(),
                  column.unit().or(() -> UnitWords.find(grid.text(row + 1, column.at())))));
    }
    return new RoomTable(grid, row + (below ? 2 : 1), all);
  }
}
