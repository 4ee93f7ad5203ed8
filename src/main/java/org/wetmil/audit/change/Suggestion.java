package org.wetmil.audit.change;

import org.wetmil.audit.past.Measure;
import org.wetmil.audit.stats.Interval;
import org.wetmil.quantity.Quantity;

/**
 * One figure to change, in one table.
 *
 * @param table the table's name; empty where no table of a bid carries it and the estimator puts it
 *     on by hand
 * @param coating the coating it is for; empty for any
 * @param surface the surface it is for; empty for any
 * @param crew the crew it is for, or a crew at a class of height; empty for any
 * @param column what to change
 * @param quantity what that figure measures
 * @param now today's figure, kept unit
 * @param suggested the figure that the past bids speak for, kept unit, inside its bounds
 * @param factor on the estimate of the measure
 * @param likely 95 % interval of the factor; unknown under three bids
 * @param jobs past bids it comes from
 * @param held whether the bounds of sense held it: then something else is wrong too
 */
public record Suggestion(
    Measure measure,
    String table,
    String coating,
    String surface,
    String crew,
    String column,
    Quantity quantity,
    double now,
    double suggested,
    double factor,
    Interval likely,
    int jobs,
    boolean held) {

  public boolean isByHand() {
    return table.isEmpty();
  }
}
