package org.wetmil.audit.past;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

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
 * @param likely what it would have been said to take, where that is known
 */
public record PastBid(
    String id,
    LocalDate date,
    String crew,
    String estimator,
    List<PastLine> lines,
    List<Actual> actuals,
    UnitCosts costs,
    Map<Measure, Likely> likely) {
  public PastBid {
    lines = List.copyOf(lines);
    actuals = List.copyOf(actuals);
    likely = Map.copyOf(likely);
  }

  /** A bid that states no costs and of which no range is known. */
  public PastBid(
      String id,
      LocalDate date,
      String crew,
      String estimator,
      List<PastLine> lines,
      List<Actual> actuals) {
    this(id, date, crew, estimator, lines, actuals, UnitCosts.NONE, Map.of());
  }
}
