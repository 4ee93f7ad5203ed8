package org.wetmil.audit.stats;

import java.util.Arrays;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Numbers that lie far from the rest, by the modified z-score: 0.6745 |x - median| / MAD over 3.5
 * (published: Iglewicz and Hoaglin, quoted by the NIST/SEMATECH e-Handbook 1.3.5.17; the constant
 * is the 75 % point of the normal distribution). MAD is the median of the distances from the
 * median.
 */
public final class Outliers {
  /** Fewest numbers among which one can be told to be odd (house rule). */
  public static final int FEWEST = 6;

  private static final double LIMIT = 3.5;
  private static final double NORMAL_75 = 0.6745;

  /** sqrt(pi / 2): standard deviation over mean deviation of a normal distribution (derived). */
  private static final double MEAN_DEVIATION = 1.2533;

  private Outliers() {}

  /** The score of each number; 0 for all where there are too few or none differs. */
  public static double[] scores(double... values) {
    double[] scores = new double[values.length];
    if (values.length < FEWEST) {
      return scores;
    }
    double median = StatUtils.percentile(values, 50);
    double[] away = Arrays.stream(values).map(x -> Math.abs(x - median)).toArray();
    double spread = StatUtils.percentile(away, 50) / NORMAL_75;
    if (spread == 0) {
      // Over half the numbers are equal: the mean of the distances still sees the others.
      spread = StatUtils.mean(away) * MEAN_DEVIATION;
    }
    if (spread == 0) {
      return scores;
    }
    double scale = spread;
    return Arrays.stream(away).map(x -> x / scale).toArray();
  }

  public static boolean isOutlier(double score) {
    return score > LIMIT;
  }
}
