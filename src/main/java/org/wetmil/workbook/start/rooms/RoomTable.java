package org.wetmil.workbook.start.rooms;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.table.TotalWords;
import org.wetmil.workbook.read.words.UnitWords;

/** A table of rooms: one room a row. A room that comes again is another room of that name. */
final class RoomTable {
  private final Grid grid;
  private final int firstRow;
  private final Map<RoomFact, RoomTables.Column> columns;

  RoomTable(Grid grid, int firstRow, Map<RoomFact, RoomTables.Column> columns) {
    this.grid = grid;
    this.firstRow = firstRow;
    this.columns = columns;
  }

  String sheet() {
    return grid.sheet();
  }

  /** The family of the first unit that a heading states. */
  Optional<UnitSystem> system() {
    return columns.values().stream()
        .flatMap(column -> column.unit().stream())
        .map(unit -> UnitWords.isMetric(unit) ? UnitSystem.METRIC : UnitSystem.US)
        .findFirst();
  }

  /**
   * The rooms, from the top.
   *
   * @param system units of headings that state none
   */
  List<Room> rooms(UnitSystem system) {
    List<Room> rooms = new ArrayList<>();
    for (GridRow row : grid.rows(firstRow, grid.lastRow())) {
      String name = name(row.row());
      if (!name.isEmpty() && !TotalWords.isLabel(name) && isMeasured(row.row(), system)) {
        rooms.add(room(row.row(), name, system));
      }
    }
    return rooms;
  }

  private boolean isMeasured(int row, UnitSystem system) {
    return columns.keySet().stream()
        .filter(RoomFact::isMeasure)
        .anyMatch(fact -> !Double.isNaN(size(row, fact, system)) || isOpen(row, fact));
  }

  /** A size that is left open, as a dash or n/a, belongs to a room; a blank one may be a title. */
  private boolean isOpen(int row, RoomFact fact) {
    String text = text(row, fact);
    return !text.isEmpty() && NumberText.read(text, DecimalMark.UNKNOWN) instanceof Typed.NotKnown;
  }

  private Room room(int row, String name, UnitSystem system) {
    Map<Face, String> finishes = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      String finish = isOpen(row, face.finish()) ? "" : text(row, face.finish());
      if (!finish.isEmpty()) {
        finishes.put(face, finish);
      }
    }
    double area = size(row, RoomFact.AREA, system);
    return new Room(
        name,
        text(row, RoomFact.STOREY),
        size(row, RoomFact.LENGTH, system),
        size(row, RoomFact.WIDTH, system),
        size(row, RoomFact.HEIGHT, system),
        size(row, RoomFact.PERIMETER, system),
        Double.isNaN(area) ? size(row, RoomFact.GROSS_AREA, system) : area,
        size(row, RoomFact.WALL_AREA, system),
        finishes,
        List.of());
  }

  private String name(int row) {
    return (text(row, RoomFact.NUMBER) + " " + text(row, RoomFact.ROOM)).strip();
  }

  private String text(int row, RoomFact fact) {
    RoomTables.Column column = columns.get(fact);
    return column == null ? "" : grid.texts().exact(grid.seenAt(row, column.at())).strip();
  }

  private double size(int row, RoomFact fact, UnitSystem system) {
    RoomTables.Column column = columns.get(fact);
    if (column == null) {
      return Double.NaN;
    }
    String text = text(row, fact);
    boolean area = fact.dimension() == Dimension.AREA;
    Unit unit = column.unit().orElse((area ? Quantity.AREA : Quantity.LENGTH).unit(system));
    return area ? Sizes.areaFt2(text, unit) : Sizes.lengthFt(text, unit);
  }
}
