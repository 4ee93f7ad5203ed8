package org.wetmil.estimate;

import java.util.HashMap;
import java.util.Map;
import org.wetmil.catalogue.Names;

/**
 * Whose floor is covered where: the floor of a room counts once, on its first walls or ceiling line
 * that is in the totals (else on its first such line at all), at the length and width of the room's
 * first line that states both.
 */
public final class Rooms {
  private final Map<String, Room> rooms = new HashMap<>();
  private final Map<String, String> keys = new HashMap<>();

  private static final class Room {
    private BidLine sized;
    private BidLine covering;
    private boolean counted;
  }

  /** Takes the next line of the sheet. */
  public void add(Work work, boolean counted) {
    BidLine line = work.line();
    Room room = rooms.computeIfAbsent(key(line), key -> new Room());
    boolean sized = line.has(InputColumn.LENGTH) && line.has(InputColumn.WIDTH);
    if (room.sized == null && sized && isIndoors(work)) {
      room.sized = line;
    }
    boolean overhead =
        work.surface() != null && (work.surface().walls() || work.surface().ceiling());
    if (overhead && (room.covering == null || (counted && !room.counted))) {
      room.covering = line;
      room.counted = counted;
    }
  }

  /** Whether the floor of the room is covered on this line. */
  public boolean isCoveredOn(BidLine line) {
    Room room = rooms.get(key(line));
    return room != null && room.covering == line;
  }

  /** The line that sizes the floor covered on this one; null when no line of the room does. */
  public BidLine floorOf(BidLine line) {
    return isCoveredOn(line) ? rooms.get(key(line)).sized : null;
  }

  private static boolean isIndoors(Work work) {
    return work.surface() == null || !work.surface().outdoors();
  }

  private String key(BidLine line) {
    return keys.computeIfAbsent(line.text(InputColumn.ROOM), Names::key);
  }
}
