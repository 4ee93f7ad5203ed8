package org.wetmil.estimate;

import java.util.EnumMap;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.trade.Constant;

/**
 * The greatest sizes that a line is taken with. What is past them is a slip of the keys or of the
 * unit: it counts as not stated, so that a line that needs it is stopped and stays out of totals,
 * order and price. Heights and lengths are settings, since there are towers and long halls; the
 * rest is so far off that nobody would raise it.
 */
public final class GreatestSizes {
  /** Gross area of one line that no job comes near, about 9 km². */
  public static final Constant AREA =
      new Constant(
          "Greatest area that a line is taken with", 1e8, "ft2", Constant.Kind.HOUSE, "judgement");

  private GreatestSizes() {}

  /**
   * The line with sizes past the greatest marked as beyond; the line itself where there is none.
   */
  static BidLine held(BidLine line, Catalogue catalogue) {
    Map<InputColumn, InputValue> cells = null;
    for (InputColumn column : line.values().keySet()) {
      InputValue value = line.get(column);
      if (value.hasNumber() && value.high() > of(column, line, catalogue)) {
        cells = cells == null ? new EnumMap<>(line.values()) : cells;
        cells.put(column, value.beyond());
      }
    }
    return cells == null ? line : line.with(cells);
  }

  /** The greatest number that a line is taken with under a column, in the kept unit. */
  public static double of(InputColumn column, BidLine line, Catalogue catalogue) {
    Setting setting = setting(column, line);
    if (setting != null) {
      return catalogue.number(setting);
    }
    // house, each a hundred times what a large job has
    return switch (column) {
      case COUNT, MASK_OPENINGS -> 1e6;
      case AREA, OPENINGS -> AREA.value();
      case GIRTH -> 4000;
      case SPECIFIED_FILM -> 1000;
      case MASK_EDGE, ACTUAL_PAINT, ACTUAL_HOURS -> 1e7;
      default -> Double.POSITIVE_INFINITY;
    };
  }

  /** The setting that limits a column of a line; null where none does. */
  public static Setting setting(InputColumn column, BidLine line) {
    return switch (column) {
      case HEIGHT -> Setting.GREATEST_HEIGHT;
      case LENGTH, WIDTH -> isRoom(line) ? Setting.GREATEST_ROOM_SIDE : Setting.GREATEST_LENGTH;
      default -> null;
    };
  }

  /** Fences, pipes and trim run on; what has a width too is a room. */
  private static boolean isRoom(BidLine line) {
    return hasNumber(line, InputColumn.LENGTH) && hasNumber(line, InputColumn.WIDTH);
  }

  /** Whether a number stands there, be it taken or not. */
  private static boolean hasNumber(BidLine line, InputColumn column) {
    return line.get(column).number() > 0;
  }
}
