package org.wetmil.workbook.start.rooms;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.words.UnitWords;

/** A table of rooms: one room a row. A room that comes again is another room of that name. */
final class RoomTable {
  private final Grid grid;
  private final RoomHeadings headings;
  private final RoomRows rows;

  RoomTable(Grid grid, RoomHeadings headings) {
    this.grid = grid;
    this.headings = headings;
    this.rows = new RoomRows(grid, headings);
  }

  String sheet() {
    return grid.sheet();
  }

  /** The family of the first unit that a heading states. */
  Optional<UnitSystem> system() {
    return headings.facts().values().stream()
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
    return rows.rooms().stream().map(row -> room(row.row(), system)).toList();
  }

  /** Sentences that name what of the table is not read. */
  List<String> remarks() {
    return rows.remarks();
  }

  private Room room(int row, UnitSystem system) {
    Map<Face, String> finishes = new EnumMap<>(Face.class);
    for (Face face : Face.values()) {
      String finish = text(row, face.finish());
      if (!finish.isEmpty() && !Sizes.isOpen(finish)) {
        finishes.put(face, finish);
      }
    }
    double area = size(row, RoomFact.AREA, system);
    return new Room(
        rows.name(row),
        text(row, RoomFact.STOREY),
        size(row, RoomFact.LENGTH, system),
        size(row, RoomFact.WIDTH, system),
        size(row, RoomFact.HEIGHT, system),
        size(row, RoomFact.PERIMETER, system),
        Double.isNaN(area) ? size(row, RoomFact.GROSS_AREA, system) : area,
        size(row, RoomFact.WALL_AREA, system),
        finishes,
        hints(row, system));
  }

  /** What stands in a cell for a size and is none, and the notes of the list. */
  private List<String> hints(int row, UnitSystem system) {
    List<String> hints = new ArrayList<>();
    headings
        .facts()
        .forEach(
            (fact, column) -> {
              String text = text(row, fact);
              if (fact.isMeasure()
                  && !text.isEmpty()
                  && !Sizes.isOpen(text)
                  && Double.isNaN(size(row, fact, system))) {
                hints.add(headings.text(column.at()) + " on the list is no size: " + text);
              }
            });
    String notes = text(row, RoomFact.NOTES);
    if (!notes.isEmpty()) {
      hints.add("On the list: " + notes);
    }
    return hints;
  }

  private String text(int row, RoomFact fact) {
    RoomHeadings.Column column = headings.facts().get(fact);
    return column == null ? "" : rows.text(row, column.at());
  }

  private double size(int row, RoomFact fact, UnitSystem system) {
    RoomHeadings.Column column = headings.facts().get(fact);
    if (column == null) {
      return Double.NaN;
    }
    String text = text(row, fact);
    boolean area = fact.dimension() == Dimension.AREA;
    Unit unit = column.unit().orElse((area ? Quantity.AREA : Quantity.LENGTH).unit(system));
    return area ? Sizes.areaFt2(text, unit) : Sizes.lengthFt(text, unit);
  }
}
