package org.wetmil.workbook.start.rooms;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.read.heading.HeadingText;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.read.words.Words;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** The headings of a table of rooms: where each fact stands, and all columns that name a room. */
final class RoomHeadings {
  private static final String FLOOR = Words.key("Floor");

  private final Grid grid;
  private final int row;
  private final Map<RoomFact, Column> facts = new EnumMap<>(RoomFact.class);
  private final List<Integer> numbers = new ArrayList<>();
  private final List<Integer> names = new ArrayList<>();
  private int firstRow;

  /** A column of a table of rooms. */
  record Column(int at, Optional<Unit> unit) {}

  private RoomHeadings(Grid grid, int row) {
    this.grid = grid;
    this.row = row;
    this.firstRow = row + 1;
  }

  /** The facts that the texts of a row name; none where a number stands among them. */
  static RoomHeadings of(Grid grid, GridRow row) {
    RoomHeadings headings = new RoomHeadings(grid, row.row());
    if (row.cells().stream().noneMatch(cell -> cell.kind() == CellKind.NUMBER)) {
      row.cells().stream().filter(cell -> cell.kind() == CellKind.TEXT).forEach(headings::put);
    }
    return headings;
  }

  private void put(RawCell cell) {
    String text = grid.text(cell.row(), cell.column());
    if (!text.isEmpty()) {
      Heading heading = RoomFact.heading(cell.column(), text);
      HeadingText apart = HeadingText.of(text);
      RoomFact.of(heading, apart.names())
          .ifPresent(fact -> put(fact, new Column(cell.column(), apart.unit())));
    }
  }

  private void put(RoomFact fact, Column column) {
    facts.putIfAbsent(fact, column);
    if (fact == RoomFact.NUMBER) {
      numbers.add(column.at());
    } else if (fact == RoomFact.ROOM) {
      names.add(column.at());
    }
  }

  int size() {
    return facts.size();
  }

  /** Whether they name rooms, and a size of them. */
  boolean areRooms() {
    boolean named = !numbers.isEmpty() || !names.isEmpty();
    return named && facts.keySet().stream().anyMatch(RoomFact::isMeasure);
  }

  /** The same, with what only the cells below can tell: units of a second row, and finishes. */
  RoomHeadings settled() {
    boolean below =
        facts.entrySet().stream()
            .filter(each -> each.getKey().isMeasure())
            .anyMatch(each -> UnitWords.find(grid.text(row + 1, each.getValue().at())).isPresent());
    if (below) {
      facts.replaceAll(
          (fact, column) ->
              new Column(
                  column.at(),
                  column.unit().or(() -> UnitWords.find(grid.text(row + 1, column.at())))));
      firstRow++;
    }
    Column storey = facts.get(RoomFact.STOREY);
    if (storey != null
        && Words.key(grid.text(row, storey.at())).equals(FLOOR)
        && 2 * count(storey, FinishWords::isFinish) > count(storey, any -> true)
        && facts.putIfAbsent(RoomFact.FLOOR_FINISH, storey) == null) {
      facts.remove(RoomFact.STOREY);
    }
    for (Face face : Face.values()) {
      // numbers under Walls are areas or counts, which no heading says
      Column finish = facts.get(face.finish());
      if (finish != null && count(finish, text -> !Sizes.isNumber(text)) == 0) {
        facts.remove(face.finish());
      }
    }
    return this;
  }

  private long count(Column column, Predicate<String> kind) {
    return grid.rows(firstRow, grid.lastRow()).stream()
        .map(each -> grid.text(each.row(), column.at()))
        .filter(text -> !text.isEmpty())
        .filter(kind)
        .count();
  }

  /** The first row below them. */
  int firstRow() {
    return firstRow;
  }

  Map<RoomFact, Column> facts() {
    return facts;
  }

  /** Columns that name a room: those of its number, then those of its name. */
  List<Integer> named() {
    List<Integer> all = new ArrayList<>(numbers);
    all.addAll(names);
    return all;
  }

  /** All columns that are read. */
  Set<Integer> read() {
    Set<Integer> read = new TreeSet<>(named());
    facts.values().forEach(column -> read.add(column.at()));
    return read;
  }

  /** What stands above a column. */
  String text(int column) {
    return grid.text(row, column);
  }
}
