package org.wetmil.estimate;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.wetmil.catalogue.Names;

/**
 * Whose floor is covered where: the floor of a room counts once, on its first walls or ceiling
 * line, at the length and width of the room's first line that states both.
 */
public final class Rooms {
  private final Map<String, BidLine> sized = new HashMap<>();
  private final Map<Object, BidLine> covers = new HashMap<>();

  /** Looks through the lines of one sheet. */
  public Rooms(List<Work> works) {
    Set<String> covered = new HashSet<>();
    for (Work work : works) {
      BidLine line = work.line();
      if (line.has(InputColumn.LENGTH) && line.has(InputColumn.WIDTH) && isIndoors(work)) {
        sized.putIfAbsent(key(line), line);
      }
    }
    for (Work work : works) {
      BidLine line = work.line();
      boolean overhead =
          work.surface() != null && (work.surface().walls() || work.surface().ceiling());
      if (overhead && covered.add(key(line))) {
        covers.put(place(line), sized.get(key(line)));
      }
    }
  }

  /** Whether the floor of the room is covered on this line. */
  public boolean isCoveredOn(BidLine line) {
    return covers.containsKey(place(line));
  }

  /** The line that sizes the floor covered on this one; null when no line of the room does. */
  public BidLine floorOf(BidLine line) {
    return covers.get(place(line));
  }

  private static boolean isIndoors(Work work) {
    return work.surface() == null || !work.surface().outdoors();
  }

  private static Object place(BidLine line) {
    return List.of(line.sheet(), line.row());
  }

  private static String key(BidLine line) {
    return line.sheet() + "\n" + Names.key(line.text(InputColumn.ROOM));
  }
}
