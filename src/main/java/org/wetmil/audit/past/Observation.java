package org.wetmil.audit.past;

import java.util.List;
import java.util.Map;

/**
 * An estimate and its outcome.
 *
 * @param bid number of the bid, from 0 in the order given
 * @param estimated above 0
 * @param actual above 0
 * @param shares by kind of group and group, which share of the estimate it is, 0..1
 * @param pairs by coating on a surface, which share of the estimate it is; a name not known is
 *     blank
 * @param fired by check, the share of the estimate on lines where it fired
 */
public record Observation(
    int bid,
    double estimated,
    double actual,
    Map<GroupedBy, Map<String, Double>> shares,
    Map<Pair, Double> pairs,
    Map<String, Double> fired) {

  /** A coating on a surface. */
  public record Pair(String coating, String surface) {}

  /** ln(actual / estimated): 0 is right, above 0 ran over. */
  public double logRatio() {
    return Math.log(actual / estimated);
  }

  public double share(GroupedBy by, String group) {
    return shares.get(by).getOrDefault(group, 0.0);
  }

  /** The share of the estimate whose group is known. */
  public double known(GroupedBy by) {
    double sum = shares.get(by).values().stream().mapToDouble(Double::doubleValue).sum();
    return Math.min(1, sum);
  }

  /** The same as if the outcome had been another. */
  public Observation took(double amount) {
    return new Observation(bid, estimated, amount, shares, pairs, fired);
  }

  /** The shares of the model's groups within a bid. */
  Object modelShares() {
    return List.of(
        shares.get(GroupedBy.COATING),
        shares.get(GroupedBy.SURFACE),
        shares.get(GroupedBy.CREW_AT_HEIGHT));
  }

  /**
   * Together with another of the same bid and the same shares of the model's groups; what else is
   * known of the lines is this one's.
   */
  public Observation with(Observation other) {
    return new Observation(
        bid, estimated + other.estimated, actual + other.actual, shares, pairs, fired);
  }
}
