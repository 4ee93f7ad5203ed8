package org.wetmil.audit.past;

import java.util.Set;

/**
 * A line of a past bid, filled again with today's tables.
 *
 * @param coating the coating as the tables name it; blank when not known
 * @param surface the surface as the tables name it; blank when not known
 * @param height class of height, such as "over 14 to 20 ft"; blank when not stated
 * @param gallons estimated paint in US gallons; NaN when it could not be filled
 * @param hours estimated person-hours; NaN when it could not be filled
 * @param sprayHours the part of them with the gun in hand; NaN when not known
 * @param applied factors of an earlier audit that the estimate already holds
 * @param fired ids of the setup checks that fired on it
 */
public record PastLine(
    String coating,
    String surface,
    String height,
    double gallons,
    double hours,
    double sprayHours,
    Factors applied,
    Set<String> fired) {
  public PastLine {
    fired = Set.copyOf(fired);
  }

  /**
   * Factors on an estimate.
   *
   * @param paint above 0; 1 is none
   * @param hours above 0; 1 is none
   */
  public record Factors(double paint, double hours) {
    public static final Factors NONE = new Factors(1, 1);
  }

  /** The estimate as it would be without the factors already applied. */
  public double estimated(Measure measure) {
    return switch (measure) {
      case PAINT -> gallons / applied.paint();
      case HOURS -> hours / applied.hours();
    };
  }
}
