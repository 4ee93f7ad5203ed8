package org.wetmil.workbook.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Count;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.start.rooms.Room;
import org.wetmil.workbook.start.rooms.RoomList;
import org.wetmil.workbook.start.rooms.Several;

/** Makes a bid workbook from a room list. */
public final class Start {
  private Start() {}

  /**
   * What was made.
   *
   * @param source the kind of list, and where it stands
   * @param leftOut of the lines, those that Include leaves out until somebody decides
   * @param missing how many lines lack each column that they need, by its heading
   * @param remarks sentences about the list as a whole
   */
  public record Made(
      String source,
      int rooms,
      int lines,
      int openings,
      int leftOut,
      Map<String, Integer> missing,
      List<String> remarks) {}

  /**
   * Reads the list and writes the bid workbook, whole or not at all; the list stays as it is.
   *
   * @param passwords that may open the list
   * @param overwrite whether a file that is there already may be replaced
   * @throws org.wetmil.workbook.WorkbookException when the file lists no rooms, or one of the two
   *     cannot be read or written
   */
  public static Made make(Path list, Passwords passwords, Path output, boolean overwrite) {
    RoomList rooms = RoomListReader.read(list, passwords);
    List<DraftLine> lines = BidLines.of(rooms);
    StartWriter.write(rooms, lines, List.of(list), output, overwrite);
    Map<InputColumn, Integer> missing = new EnumMap<>(InputColumn.class);
    lines.forEach(line -> line.missing().forEach(column -> missing.merge(column, 1, Integer::sum)));
    Map<String, Integer> named = new LinkedHashMap<>();
    missing.forEach((column, count) -> named.put(column.heading(), count));
    return new Made(
        rooms.source(),
        rooms.rooms().size(),
        lines.size(),
        rooms.openings().size(),
        (int) lines.stream().filter(DraftLine::isLeftOut).count(),
        named,
        remarks(rooms));
  }

  private static List<String> remarks(RoomList rooms) {
    List<String> remarks = new ArrayList<>(rooms.remarks());
    List<String> unsizedRooms =
        rooms.rooms().stream().filter(room -> !room.isMeasured()).map(Room::name).toList();
    if (!unsizedRooms.isEmpty()) {
      remarks.add(
          "%s no size on the list; their lines ask for it: %s."
              .formatted(
                  Count.of(unsizedRooms.size(), "room has", "rooms have"),
                  Several.of(unsizedRooms)));
    }
    long unplaced = rooms.openings().stream().filter(opening -> opening.rooms().isEmpty()).count();
    if (unplaced > 0) {
      remarks.add(
          Count.of(
              unplaced,
              "door or window names no room of the list and is left out.",
              "doors and windows name no room of the list and are left out."));
    }
    long unsized = rooms.openings().stream().filter(opening -> !opening.isSized()).count();
    if (unsized > 0) {
      remarks.add(
          Count.of(unsized, "door or window states no size", "doors and windows state no size")
              + "; fill takes the usual one of their kind.");
    }
    long impossible = rooms.rooms().stream().filter(Room::isImpossible).count();
    if (impossible > 0) {
      remarks.add(
          Count.of(impossible, "room has", "rooms have")
              + " a perimeter too short for the area: look at the units of both.");
    }
    return remarks;
  }
}
