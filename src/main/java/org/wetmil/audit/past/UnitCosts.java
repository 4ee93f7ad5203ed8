package org.wetmil.audit.past;

import java.math.BigDecimal;

/**
 * What paint and time cost in a bid.
 *
 * @param perGallon direct cost of a US gallon of its paint; null when not stated
 * @param perHour direct cost of a person-hour; null when not stated
 * @param currency as the bid writes it; blank when it does not
 */
public record UnitCosts(BigDecimal perGallon, BigDecimal perHour, String currency) {
  public static final UnitCosts NONE = new UnitCosts(null, null, "");

  /** Null when not stated. */
  public BigDecimal of(Measure measure) {
    return switch (measure) {
      case PAINT -> perGallon;
      case HOURS -> perHour;
    };
  }
}
