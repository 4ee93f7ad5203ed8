package org.wetmil.audit.stats;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Whether two samples differ, by Welch's t, which lets them scatter differently.
 *
 * @param mean mean of the first less mean of the second
 * @param interval its 95 % interval; unknown when either sample has under three observations
 * @param chance how likely a difference this large is where there is none, 0..1; NaN when unknown
 */
public record Difference(double mean, Interval interval, double chance) {

  /** Of samples that have nothing in common. */
  public static Difference between(Sample first, Sample second) {
    return between(first, second, 0, 0);
  }

  /**
   * Of samples that partly come from the same units, which then rise and fall together: their
   * covariance is taken off the variance of the difference (derived; with no unit in common this is
   * Welch's test, with all in common nearly the paired one).
   *
   * @param firstUnits the unit of each number of the first sample, none twice
   * @param secondUnits the unit of each number of the second sample, none twice
   */
  public static Difference between(
      Sample first, Sample second, int[] firstUnits, int[] secondUnits) {
    Map<Integer, Double> pulls = new HashMap<>();
    double[] firstPulls = first.pulls();
    double[] secondPulls = second.pulls();
    for (int i = 0; i < firstUnits.length; i++) {
      pulls.put(firstUnits[i], firstPulls[i]);
    }
    double covariance = 0;
    for (int i = 0; i < secondUnits.length; i++) {
      covariance += secondPulls[i] * pulls.getOrDefault(secondUnits[i], 0.0);
    }
    double shared = Arrays.stream(secondUnits).filter(pulls::containsKey).count();
    return between(first, second, covariance, shared / (firstUnits.length + secondUnits.length));
  }

  /**
   * @param shared units in common over numbers in all, 0 to 0.5
   */
  private static Difference between(Sample first, Sample second, double covariance, double shared) {
    double mean = first.mean() - second.mean();
    if (first.count() < Sample.FEWEST_FOR_INTERVAL || second.count() < Sample.FEWEST_FOR_INTERVAL) {
      return new Difference(mean, Interval.UNKNOWN, Double.NaN);
    }
    double one = first.meanVariance();
    double two = second.meanVariance();
    double error = Math.sqrt(Math.max(0, one + two - 2 * covariance));
    if (error == 0) {
      return new Difference(mean, Interval.around(mean, 0), mean == 0 ? 1 : 0);
    }
    double welch =
        (one + two)
            * (one + two)
            / (one * one / (first.count() - 1) + two * two / (second.count() - 1));
    // Two numbers of one unit are one observation of the difference.
    double freedom = welch * (1 - shared);
    return new Difference(
        mean,
        Interval.around(mean, Sample.quantile(freedom) * error),
        2 * new TDistribution(null, freedom).cumulativeProbability(-Math.abs(mean) / error));
  }
}
