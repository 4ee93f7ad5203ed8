package org.wetmil.workbook.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.start.rooms.Face;
import org.wetmil.workbook.start.rooms.FinishWords;
import org.wetmil.workbook.start.rooms.Room;
import org.wetmil.workbook.start.rooms.RoomList;
import org.wetmil.workbook.start.rooms.RoomOpening;

/** The bid lines that a room list begins: walls, ceiling, floor, doors and windows of each room. */
final class BidLines {
  private final RoomList list;
  private final List<DraftLine> lines = new ArrayList<>();

  private BidLines(RoomList list) {
    this.list = list;
  }

  /** The lines, room by room in the order of the list. */
  static List<DraftLine> of(RoomList list) {
    BidLines lines = new BidLines(list);
    list.rooms().forEach(lines::room);
    return lines.lines;
  }

  private void room(Room room) {
    for (Face face : Face.values()) {
      face(room, face);
    }
    Map<List<Object>, List<RoomOpening>> alike = new LinkedHashMap<>();
    for (RoomOpening opening : list.openings()) {
      // a door between two rooms is painted once, with the first that it names
      boolean here = !opening.rooms().isEmpty() && opening.rooms().get(0).equals(room.name());
      if (here) {
        alike
            .computeIfAbsent(
                List.of(
                    opening.kind(),
                    opening.type(),
                    opening.colour(),
                    opening.widthFt(),
                    opening.heightFt()),
                any -> new ArrayList<>())
            .add(opening);
      }
    }
    alike.values().forEach(same -> openings(room, same));
  }

  private void face(Room room, Face face) {
    DraftLine line = line(room, face.surface());
    line.put(InputColumn.LENGTH, room.lengthFt()).put(InputColumn.WIDTH, room.widthFt());
    line.put(InputColumn.HEIGHT, room.heightFt());
    switch (face) {
      case WALLS -> walls(room, line);
      case CEILING, FLOOR -> level(room, line);
    }
    finish(line, room.finishes().getOrDefault(face, ""), face == Face.FLOOR);
    if (face == Face.WALLS) {
      room.hints().forEach(line::note);
    }
  }

  private static void walls(Room room, DraftLine line) {
    line.put(InputColumn.AREA, room.wallAreaFt2());
    if (!room.isSized() && room.perimeterFt() > 0) {
      line.put(InputColumn.LENGTH, room.perimeterFt()).empty(InputColumn.WIDTH);
      line.note("Length is the perimeter; leave Width blank");
    }
    if (Double.isNaN(room.wallAreaFt2())) {
      line.require(InputColumn.LENGTH);
      if (room.lengthFt() > 0 && !room.isSized() && !(room.perimeterFt() > 0)) {
        // a length alone would be taken for that of all walls
        line.ask(InputColumn.WIDTH);
      }
      line.require(InputColumn.HEIGHT);
    }
    if (room.isImpossible()) {
      line.note("A perimeter this short cannot go around the floor area: look at both units");
    }
  }

  /** A ceiling or floor; the height is that of the work, for ladders and the pace. */
  private static void level(Room room, DraftLine line) {
    line.put(InputColumn.AREA, room.areaFt2());
    if (room.isSized() || room.areaFt2() > 0) {
      return;
    }
    if (room.lengthFt() > 0 || room.widthFt() > 0) {
      line.require(InputColumn.LENGTH);
      line.require(InputColumn.WIDTH);
    } else {
      line.require(InputColumn.AREA);
    }
  }

  private void openings(Room room, List<RoomOpening> same) {
    RoomOpening first = same.get(0);
    DraftLine line = line(room, first.kind().surface());
    line.count(same.size());
    if (first.isSized()) {
      line.put(InputColumn.WIDTH, first.widthFt()).put(InputColumn.HEIGHT, first.heightFt());
    } else {
      line.note("Size not stated: the usual one is taken");
    }
    line.note(first.type());
    line.put(InputColumn.COLOUR, first.colour());
    finish(line, first.finish(), first.kind() == RoomOpening.Kind.WINDOW);
  }

  private DraftLine line(Room room, String surface) {
    DraftLine line = new DraftLine(room.name(), surface);
    line.put(InputColumn.FLOOR, room.storey());
    lines.add(line);
    return line;
  }

  /**
   * The coating that the finish names, to start with.
   *
   * @param seldom whether it is seldom painted, so that it counts only once a coating is stated
   */
  private static void finish(DraftLine line, String finish, boolean seldom) {
    String coating = finish.isEmpty() ? "" : FinishWords.coating(finish);
    line.put(InputColumn.COATING, coating);
    boolean leftOut = coating.isEmpty() && (seldom || FinishWords.isNoPaint(finish));
    line.require(InputColumn.COATING);
    if (!leftOut) {
      line.put(InputColumn.SHEEN, FinishWords.sheen(finish));
    }
    if (!finish.isEmpty()) {
      line.note("Finish on the list: " + finish);
    }
    if (leftOut) {
      line.leaveOut();
    }
  }
}
