package org.wetmil.audit.ratio;

import java.util.List;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.Interval;
import org.wetmil.audit.stats.Sample;

/**
 * How a group of bids came out: outcome over estimate, each a ratio, 1 is right.
 *
 * @param by null for all bids together
 * @param group its bare name; empty for all bids together
 * @param jobs bids that have a part in it
 * @param weight how many whole bids those parts amount to
 * @param ratio geometric mean
 * @param likely 95 % interval of the geometric mean; unknown under three whole bids
 * @param median median of the ratios
 * @param estimated sum of the estimates, kept unit
 * @param actual sum of the outcomes, kept unit
 * @param chance how likely the group differs this much from the other bids by luck alone; NaN when
 *     it cannot be told
 * @param adjustedChance the same, allowing for how many groups were looked at
 */
public record GroupRatio(
    GroupedBy by,
    String group,
    int jobs,
    double weight,
    double ratio,
    Interval likely,
    double median,
    double estimated,
    double actual,
    double chance,
    double adjustedChance) {

  /** What was really paid for: the sum of outcomes over the sum of estimates. */
  public double ratioOfSums() {
    return actual / estimated;
  }

  static GroupRatio all(Observations observations) {
    return of(null, "", Piece.of(observations, one -> 1), Double.NaN);
  }

  /** One group by itself, without comparing it with the others. */
  public static GroupRatio of(Observations observations, GroupedBy by, String group) {
    return of(by, group, Piece.of(observations, one -> one.share(by, group)), Double.NaN);
  }

  static GroupRatio of(GroupedBy by, Split split) {
    return of(by, split.group(), split.within(), split.difference().chance());
  }

  GroupRatio adjusted(double chanceAmongMany) {
    return new GroupRatio(
        by, group, jobs, weight, ratio, likely, median, estimated, actual, chance, chanceAmongMany);
  }

  private static GroupRatio of(GroupedBy by, String group, List<Piece> pieces, double chance) {
    Sample logs = Piece.sample(pieces);
    return new GroupRatio(
        by,
        group,
        pieces.size(),
        logs.weight(),
        Math.exp(logs.mean()),
        logs.interval().exp(),
        Math.exp(logs.median()),
        pieces.stream().mapToDouble(Piece::estimated).sum(),
        pieces.stream().mapToDouble(Piece::actual).sum(),
        chance,
        Double.NaN);
  }
}
