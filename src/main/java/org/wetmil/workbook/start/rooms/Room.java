package org.wetmil.workbook.start.rooms;

import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * One room as far as its list tells; a size that it does not tell is NaN.
 *
 * @param name number and name, as the bid will write it
 * @param storey empty when not told
 * @param areaFt2 of the floor
 * @param finishes what the faces are said to be finished with, as written
 * @param hints sentences for whoever completes the bid
 */
public record Room(
    String name,
    String storey,
    double lengthFt,
    double widthFt,
    double heightFt,
    double perimeterFt,
    double areaFt2,
    double wallAreaFt2,
    Map<Face, String> finishes,
    List<String> hints) {

  /** Below this share of the least that geometry allows, it is no rounding. */
  private static final double ROUNDING = 0.99;

  public Room {
    finishes = Map.copyOf(finishes);
    hints = List.copyOf(hints);
  }

  public boolean isSized() {
    return lengthFt > 0 && widthFt > 0;
  }

  /** Whether any size is told. */
  public boolean isMeasured() {
    return DoubleStream.of(lengthFt, widthFt, heightFt, perimeterFt, areaFt2, wallAreaFt2)
        .anyMatch(size -> size > 0);
  }

  /**
   * Whether a perimeter this short cannot go around an area this large: the shortest line around an
   * area is a circle, so that one of them is in another unit or mistyped.
   */
  public boolean isImpossible() {
    double leastFt = 2 * Math.sqrt(Math.PI * areaFt2);
    return perimeterFt < ROUNDING * leastFt;
  }
}
