package org.wetmil.audit.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Numbers, each of which counts as so many observations: 1 when it is wholly about the matter, less
 * when only a part of it is. With all weights 1 every figure is the textbook one.
 */
public final class Sample {
  /** Fewest observations that get an interval (house rule). */
  public static final double FEWEST_FOR_INTERVAL = 3;

  /** Tighter than the library's 1e-9, which shows in the twelfth digit of an interval. */
  private static final double QUANTILE_ACCURACY = 1e-14;

  private final double[] values;
  private final double[] weights;
  private final double weight;
  private final double mean;
  private final double squares;

  private Sample(double[] values, double[] weights) {
    this.values = values;
    this.weights = weights;
    weight = Arrays.stream(weights).sum();
    mean = sum(i -> weights[i] * values[i]) / weight;
    squares = sum(i -> weights[i] * square(values[i] - mean));
  }

  public static Sample of(double... values) {
    double[] ones = new double[values.length];
    Arrays.fill(ones, 1);
    return new Sample(values.clone(), ones);
  }

  /**
   * @param weights how many observations each value counts as, above 0 and at most 1
   */
  public static Sample of(double[] values, double[] weights) {
    if (values.length != weights.length) {
      throw new IllegalArgumentException(
          values.length + " values but " + weights.length + " weights");
    }
    return new Sample(values.clone(), weights.clone());
  }

  /** How many numbers there are. */
  public int size() {
    return values.length;
  }

  /** How many whole observations they amount to. */
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

  /** Sample variance with weight - 1 degrees of freedom; NaN when there are none. */
  public double variance() {
    return weight > 1 ? squares / (weight - 1) : Double.NaN;
  }

  /** Square of the mean's standard error; NaN when it cannot be told. */
  public double meanVariance() {
    return variance() / weight;
  }

  /**
   * 95 % interval of the mean by Student's t (derived; assumes independent, roughly normal
   * numbers).
   *
   * @return unknown under three observations
   */
  public Interval interval() {
    if (weight < FEWEST_FOR_INTERVAL) {
      return Interval.UNKNOWN;
    }
    return Interval.around(mean, quantile(weight - 1) * Math.sqrt(meanVariance()));
  }

  /** The t that leaves 2.5 % on each side. */
  static double quantile(double degreesOfFreedom) {
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
