package org.wetmil.audit.past;

import java.time.LocalDate;
import java.util.List;

/**
 * A past bid.
 *
 * @param id the job as the owner names it
 * @param date when the work was done or bid; null when not known
 * @param crew who did it; blank when not known
 * @param estimator who bid it; blank when not known
 * @param lines its lines, filled
 * @param actuals what is known of the outcome; empty for a bid not won or not closed
 * @param costs what its paint and time cost
 */
public record PastBid(
    String id,
    LocalDate date,
    String crew,
    String estimator,
    List<PastLine> lines,
    List<Actual> actuals,
    UnitCosts costs) {
  public PastBid {
    lines = List.copyOf(lines);
    actuals = List.copyOf(actuals);
  }

  /** A bid that states no costs. */
  public PastBid(
      String id,
      LocalDate date,
      String crew,
      String estimator,
      List<PastLine> lines,
      List<Actual> actuals) {
    this(id, date, crew, estimator, lines, actuals, UnitCosts.NONE);
  }
}
