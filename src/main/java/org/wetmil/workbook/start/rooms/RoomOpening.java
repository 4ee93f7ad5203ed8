package org.wetmil.workbook.start.rooms;

import java.util.List;
import java.util.Locale;

/**
 * One door or window.
 *
 * @param name its own name, unique on the list
 * @param type what it shares with others of its kind; empty when not told
 * @param rooms names of the rooms that it opens to, as the bid writes them
 * @param widthFt NaN when not told
 * @param heightFt NaN when not told
 * @param overhead whether it is in the ceiling
 * @param colour as written; empty when not told
 * @param finish as written; empty when not told
 */
public record RoomOpening(
    String name,
    String type,
    Kind kind,
    List<String> rooms,
    double widthFt,
    double heightFt,
    boolean overhead,
    String colour,
    String finish) {

  public enum Kind {
    DOOR,
    WINDOW;

    /** Its name in the table of kinds of opening. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** The surface that a bid line paints it as. */
    public String surface() {
      return word() + "s";
    }
  }

  public RoomOpening {
    rooms = List.copyOf(rooms);
  }

  public boolean isSized() {
    return widthFt > 0 && heightFt > 0;
  }
}
