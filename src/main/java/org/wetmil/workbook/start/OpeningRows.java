package org.wetmil.workbook.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.workbook.start.rooms.Face;
import org.wetmil.workbook.start.rooms.Room;
import org.wetmil.workbook.start.rooms.RoomList;
import org.wetmil.workbook.start.rooms.RoomOpening;

/**
 * The rows of the Openings sheet: those of one type that open to one room alone count together; one
 * between rooms is listed in each, with its name as the Id that marks it as the same.
 */
record OpeningRows(List<Row> rows) {

  /**
   * One row.
   *
   * @param surface blank for walls
   * @param id blank where the opening shows on one face only
   */
  record Row(String room, String surface, RoomOpening opening, int count, String id) {}

  static OpeningRows of(RoomList list) {
    Map<List<Object>, List<RoomOpening>> alike = new LinkedHashMap<>();
    for (Room room : list.rooms()) {
      for (RoomOpening opening : list.openings()) {
        if (opening.rooms().contains(room.name())) {
          alike.computeIfAbsent(key(room, opening), any -> new ArrayList<>()).add(opening);
        }
      }
    }
    List<Row> rows = new ArrayList<>();
    alike.forEach(
        (key, same) -> {
          RoomOpening first = same.get(0);
          String surface = first.overhead() ? Face.CEILING.surface() : "";
          rows.add(new Row((String) key.get(0), surface, first, same.size(), id(first)));
        });
    return new OpeningRows(rows);
  }

  private static String id(RoomOpening opening) {
    return opening.rooms().size() > 1 ? opening.name() : "";
  }

  private static List<Object> key(Room room, RoomOpening opening) {
    return List.of(
        room.name(),
        id(opening),
        opening.kind(),
        opening.type(),
        opening.widthFt(),
        opening.heightFt(),
        opening.overhead());
  }
}
