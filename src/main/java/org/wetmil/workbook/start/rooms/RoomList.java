package org.wetmil.workbook.start.rooms;

import java.util.List;
import org.wetmil.quantity.UnitSystem;

/**
 * What a room list tells.
 *
 * @param source what kind of list it is, and where it stands
 * @param system the family of units that it is in
 * @param remarks sentences for whoever runs the command
 */
public record RoomList(
    String source,
    UnitSystem system,
    List<Room> rooms,
    List<RoomOpening> openings,
    List<String> remarks) {
  public RoomList {
    rooms = List.copyOf(rooms);
    openings = List.copyOf(openings);
    remarks = List.copyOf(remarks);
  }
}
