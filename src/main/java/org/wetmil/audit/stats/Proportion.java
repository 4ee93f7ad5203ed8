package org.wetmil.audit.stats;

import org.apache.commons.math3.distribution.BinomialDistribution;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/** How sure a share is that was counted. */
public final class Proportion {
  private static final WilsonScoreInterval WILSON = new WilsonScoreInterval();

  private Proportion() {}

  /**
   * 95 % interval of a share by Wilson's score (published: Wilson 1927), which holds for few as for
   * many and near 0 and 1.
   *
   * @param count of those that are, 0..of
   * @return unknown when there are none
   */
  public static Interval interval(int count, int of) {
    if (of == 0) {
      return Interval.UNKNOWN;
    }
    // the library refuses these, whose ends on one side are plain
    double z2 = 1.959963984540054 * 1.959963984540054;
    if (count == 0) {
      return new Interval(0, z2 / (of + z2));
    }
    if (count == of) {
      return new Interval(of / (of + z2), 1);
    }
    var wilson = WILSON.createInterval(of, count, Interval.CONFIDENCE);
    return new Interval(wilson.getLowerBound(), wilson.getUpperBound());
  }

  /**
   * How likely a count is, or one further off on its side, when the share is what it should be:
   * exact, where the score interval of very few is too short (binomial distribution, published).
   *
   * @param count of those that are, 0..of
   * @param share what is expected, 0..1
   */
  public static double chance(int count, int of, double share) {
    var counts = new BinomialDistribution(null, of, share);
    return count < of * share
        ? counts.cumulativeProbability(count)
        : 1 - counts.cumulativeProbability(count - 1);
  }
}
