package org.wetmil.audit.stats;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * Whether two samples differ, by Welch's t, which lets them scatter differently.
 *
 * @param mean mean of the first less mean of the second
 * @param interval its 95 % interval; unknown when either sample has under three observations
 * @param chance how likely a difference this large is where there is none, 0..1; NaN when unknown
 */
public record Difference(double mean, Interval interval, double chance) {

  public static Difference between(Sample first, Sample second) {
    double mean = first.mean() - second.mean();
    if (first.count() < Sample.FEWEST_FOR_INTERVAL || second.count() < Sample.FEWEST_FOR_INTERVAL) {
      return new Difference(mean, Interval.UNKNOWN, Double.NaN);
    }
    double one = first.meanVariance();
    double two = second.meanVariance();
    double variance = one + two;
    if (variance == 0) {
      return new Difference(mean, Interval.around(mean, 0), mean == 0 ? 1 : 0);
    }
    double freedom =
        variance * variance / (one * one / (first.count() - 1) + two * two / (second.count() - 1));
    double t = Math.abs(mean) / Math.sqrt(variance);
    return new Difference(
        mean,
        Interval.around(mean, Sample.quantile(freedom) * Math.sqrt(variance)),
        2 * new TDistribution(null, freedom).cumulativeProbability(-t));
  }
}
