package org.wetmil.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What one listed opening takes off its face and adds to it, all pieces of it together.
 *
 * @param deductedM2 area taken off in m²
 * @param addedM2 reveals added in m²
 * @param why what the rule said of it
 */
public record Taken(double deductedM2, double addedM2, Why why) {

  /** What the rule said. */
  public enum Why {
    /** Too small to come off, or the rule takes nothing off. */
    MEASURED_OVER,
    /** Comes off whole. */
    DEDUCTED,
    /** The one deduction of two faces falls on this face. */
    ONE_FACE,
    /** The one deduction of two faces is shared by both. */
    HALF,
    /** The one deduction of two faces falls on the other listing. */
    OTHER_FACE,
    /** Taken off whole, since the other side's reveal is not known. */
    OTHER_REVEAL_UNKNOWN
  }

  /**
   * Measures openings by a rule; the result stands in the order of the list.
   *
   * <p>Where the rule wants one deduction for two faces (published for IS 1200-13): listings with
   * one id take it off once, the first of them when both faces have the same finish, the one with
   * the narrower reveal when they differ, half of each when those are equal (from memory). Without
   * an id, a listing whose other face has the same finish takes off half, so that both faces
   * together take it off once (house); any other takes it off whole.
   *
   * @param inFloor for each opening, whether it is in a floor
   */
  public static List<Taken> measure(
      MeasuringRule rule, List<Opening> openings, List<Boolean> inFloor) {
    Map<String, List<Integer>> byId = new HashMap<>();
    for (int i = 0; i < openings.size(); i++) {
      String id = key(openings.get(i));
      if (!id.isEmpty() && rule.isOffOneFace(openings.get(i))) {
        byId.computeIfAbsent(id, none -> new ArrayList<>()).add(i);
      }
    }
    return IntStream.range(0, openings.size())
        .mapToObj(i -> of(rule, openings.get(i), why(rule, openings, inFloor.get(i), i, byId)))
        .toList();
  }

  /** One opening by itself, in a wall or a ceiling. */
  public static Taken measure(MeasuringRule rule, Opening opening) {
    return measure(rule, List.of(opening), List.of(false)).get(0);
  }

  private static Why why(
      MeasuringRule rule,
      List<Opening> openings,
      boolean inFloor,
      int i,
      Map<String, List<Integer>> byId) {
    Opening opening = openings.get(i);
    if (!rule.isDeducted(opening, inFloor)) {
      return Why.MEASURED_OVER;
    }
    return rule.isOffOneFace(opening) && !inFloor
        ? oneFace(openings, i, byId.getOrDefault(key(opening), List.of()))
        : Why.DEDUCTED;
  }

  private static String key(Opening opening) {
    return opening.id().strip().toLowerCase(Locale.ROOT);
  }

  private static Taken of(MeasuringRule rule, Opening opening, Why why) {
    double share =
        switch (why) {
          case MEASURED_OVER, OTHER_FACE -> 0;
          case HALF -> 0.5;
          case DEDUCTED, ONE_FACE, OTHER_REVEAL_UNKNOWN -> 1;
        };
    double added = rule.isRevealAdded(opening) ? opening.count() * opening.revealAreaM2() : 0;
    return new Taken(share * opening.count() * opening.areaM2(), added, why);
  }

  private static Why oneFace(List<Opening> openings, int i, List<Integer> listings) {
    Opening opening = openings.get(i);
    if (listings.size() < 2) {
      return switch (opening.otherFace()) {
        case SAME -> Why.HALF;
        case DIFFERENT -> Why.OTHER_REVEAL_UNKNOWN;
        case NONE -> Why.DEDUCTED;
      };
    }
    int first = listings.get(0);
    if (openings.get(first).otherFace() != Opening.OtherFace.DIFFERENT) {
      return i == first ? Why.ONE_FACE : Why.OTHER_FACE;
    }
    double narrowest =
        listings.stream().mapToDouble(at -> openings.get(at).revealM()).min().orElseThrow();
    List<Integer> narrow =
        listings.stream().filter(at -> openings.get(at).revealM() == narrowest).toList();
    if (!narrow.contains(i)) {
      return Why.OTHER_FACE;
    }
    if (narrow.size() == 1) {
      return Why.ONE_FACE;
    }
    // equal reveals: the first two share it, any further listing is a repetition
    return narrow.indexOf(i) < 2 ? Why.HALF : Why.OTHER_FACE;
  }
}
