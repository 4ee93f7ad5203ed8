package org.wetmil.estimate;

import java.util.HashMap;
import java.util.Map;
import org.wetmil.catalogue.Names;

/** The rooms of a sheet by name, however a name is spelt. */
public final class Rooms {
  private final Map<String, Room> byKey = new HashMap<>();
  private final Map<String, Room> byName = new HashMap<>();

  /**
   * Whose floor is covered where: the floor of a room counts once, on its first walls or ceiling
   * line that is in the totals (else on its first such line at all), at the length and width of the
   * room's first line that states both.
   */
  public static final class Room {
    private BidLine sized;
    private BidLine covering;
    private boolean counted;

    private void add(Work work, boolean counts) {
      BidLine line = work.line();
      boolean outdoors = work.surface() != null && work.surface().outdoors();
      if (sized == null
          && !outdoors
          && line.has(InputColumn.LENGTH)
          && line.has(InputColumn.WIDTH)) {
        sized = line;
      }
      boolean around =
          work.surface() != null && (work.surface().walls() || work.surface().ceiling());
      if (around && (covering == null || (counts && !counted))) {
        covering = line;
        counted = counts;
      }
    }

    /** Whether the floor of the room is covered on this line. */
    public boolean isCoveredOn(BidLine line) {
      return covering == line;
    }

    /**
     * The line that sizes the floor covered on this one; null when the floor is covered on another
     * or no line of the room has a size.
     */
    public BidLine floorOf(BidLine line) {
      return isCoveredOn(line) ? sized : null;
    }
  }

  /** Takes the next line of the sheet into its room. */
  public Room add(Work work, boolean counts) {
    Room room =
        byName.computeIfAbsent(
            work.line().text(InputColumn.ROOM),
            name -> byKey.computeIfAbsent(Names.key(name), key -> new Room()));
    room.add(work, counts);
    return room;
  }

  /** The room of a line that was taken. */
  public Room of(BidLine line) {
    return byName.get(line.text(InputColumn.ROOM));
  }
}
