package org.wetmil.audit.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Numbers of unequal weight. With all weights 1 every figure is the textbook one.
 *
 * <p>A number weighs less where only a part of it is about the matter ({@link #ofParts}); the parts
 * amount to fewer observations.
 */
public final class Sample {
  /** Fewest observations that get an interval (house rule). */
  public static final double FEWEST_FOR_INTERVAL = 3;

  /** Tighter than the library's 1e-9, which shows in the twelfth digit of an interval. */
  private static final double QUANTILE_ACCURACY = 1e-14;

  private final double[] values;
  private final double[] weights;
  private final double count;
  private final double weight;
  private final double mean;
  private final double squares;

  private Sample(double[] values, double[] weights, double weight, double count) {
    this.values = values;
    this.weights = weights;
    this.weight = weight;
    this.count = count;
    mean = sum(i -> weights[i] * values[i]) / weight;
    squares = sum(i -> weights[i] * square(values[i] - mean));
  }

  public static Sample of(double... values) {
    double[] ones = new double[values.length];
    Arrays.fill(ones, 1);
    return ofParts(values, ones);
  }

  /**
   * @param parts which part of an observation each value is, above 0 and at most 1
   */
  public static Sample ofParts(double[] values, double[] parts) {
    double weight = Arrays.stream(parts).sum();
    return new Sample(values.clone(), parts.clone(), weight, weight);
  }

  /** How many observations the numbers amount to. */
  public double count() {
    return count;
  }

  /** Sum of the weights: how many whole observations tell as much about the mean. */
  public double weight() {
    return weight;
  }

  /** Weighted mean; NaN without a number. */
  public double mean() {
    return mean;
  }

  /** Weighted sum of squared distances from the mean. */
  public double squares() {
    return squares;
  }

  /**
   * Variance of a number of weight 1, with count - 1 degrees of freedom; NaN when there are none.
   */
  public double variance() {
    return count > 1 ? squares / (count - 1) : Double.NaN;
  }

  /** Square of the mean's standard error; NaN when it cannot be told. */
  public double meanVariance() {
    return variance() / weight;
  }

  /** How far each number pulls the mean; their squares add up to its variance where all weigh 1. */
  double[] pulls() {
    double small = Math.sqrt(count / (count - 1));
    return IntStream.range(0, values.length)
        .mapToDouble(i -> small * weights[i] * (values[i] - mean) / weight)
        .toArray();
  }

  /**
   * 95 % interval of the mean by Student's t (derived; assumes independent, roughly normal
   * numbers).
   *
   * @return unknown under three observations
   */
  public Interval interval() {
    if (count < FEWEST_FOR_INTERVAL) {
      return Interval.UNKNOWN;
    }
    return Interval.around(mean, quantile(count - 1) * Math.sqrt(meanVariance()));
  }

  /** The t that leaves 2.5 % on each side. */
  public static double quantile(double degreesOfFreedom) {
    return new TDistribution(null, degreesOfFreedom, QUANTILE_ACCURACY)
        .inverseCumulativeProbability((1 + Interval.CONFIDENCE) / 2);
  }

  /** The weighted median: half the weight lies on each side; NaN without a number. */
  public double median() {
    int[] order =
        IntStream.range(0, values.length)
            .boxed()
            .sorted(Comparator.comparingDouble(i -> values[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    double below = 0;
    for (int at = 0; at < order.length; at++) {
      below += weights[order[at]];
      if (below > weight / 2 + 1e-12) {
        return values[order[at]];
      }
      if (Math.abs(below - weight / 2) <= 1e-12) {
        return (values[order[at]] + values[order[at + 1]]) / 2;
      }
    }
    return Double.NaN;
  }

  private double sum(IntToDoubleFunction term) {
    return IntStream.range(0, values.length).mapToDouble(term).sum();
  }

  private static double square(double x) {
    return x * x;
  }
}
