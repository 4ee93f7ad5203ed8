package org.wetmil.audit.stats;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Whether numbers drift over time, in a way that one odd number cannot bend.
 *
 * @param slope Theil-Sen: median slope over all pairs of different times, per unit of time; NaN
 *     under six numbers
 * @param chance Mann-Kendall with correction for ties in numbers and times and for continuity: how
 *     likely such an order is without a drift, 0..1; NaN under six numbers
 */
public record Trend(double slope, double chance) {
  /** Fewest numbers that show a drift (house rule). */
  public static final int FEWEST = 6;

  public static final Trend UNKNOWN = new Trend(Double.NaN, Double.NaN);

  /**
   * @param times in any unit, in any order
   */
  public static Trend of(double[] times, double[] values) {
    double[] slopes =
        IntStream.range(0, times.length)
            .boxed()
            .flatMapToDouble(
                i ->
                    IntStream.range(i + 1, times.length)
                        .filter(j -> times[i] != times[j])
                        .mapToDouble(j -> (values[j] - values[i]) / (times[j] - times[i])))
            .toArray();
    if (values.length < FEWEST || slopes.length == 0) {
      return UNKNOWN;
    }
    return new Trend(StatUtils.percentile(slopes, 50), chance(times, values, slopes));
  }

  private static double chance(double[] times, double[] values, double[] slopes) {
    double rises = Arrays.stream(slopes).map(Math::signum).sum();
    double variance = variance(values.length, ties(times), ties(values));
    if (variance == 0) {
      return 1;
    }
    double z = Math.max(0, Math.abs(rises) - 1) / Math.sqrt(variance);
    return 2 * new NormalDistribution().cumulativeProbability(-z);
  }

  /** Variance of Kendall's S with ties in both (published: Kendall, Rank Correlation Methods). */
  private static double variance(double n, double[] t, double[] u) {
    double whole = n * (n - 1) * (2 * n + 5);
    double tied = sum(t, x -> x * (x - 1) * (2 * x + 5)) + sum(u, x -> x * (x - 1) * (2 * x + 5));
    double pairs = sum(t, x -> x * (x - 1)) * sum(u, x -> x * (x - 1));
    double triples = sum(t, x -> x * (x - 1) * (x - 2)) * sum(u, x -> x * (x - 1) * (x - 2));
    return (whole - tied) / 18 + pairs / (2 * n * (n - 1)) + triples / (9 * n * (n - 1) * (n - 2));
  }

  /** How many times each number occurs. */
  private static double[] ties(double[] values) {
    return Arrays.stream(values)
        .distinct()
        .map(value -> Arrays.stream(values).filter(x -> x == value).count())
        .toArray();
  }

  private static double sum(double[] counts, DoubleUnaryOperator term) {
    return Arrays.stream(counts).map(term).sum();
  }
}
