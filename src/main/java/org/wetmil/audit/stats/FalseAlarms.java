package org.wetmil.audit.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * The more groups are looked at, the more look special by chance; Benjamini and Hochberg's step-up
 * rule (1995, published) holds the share of false alarms among the alarms raised.
 */
public final class FalseAlarms {
  private FalseAlarms() {}

  /**
   * Chances adjusted for how many were looked at: raising every alarm at or under q leaves at most
   * a share q of them false, on average.
   *
   * @param chances each 0..1; NaN is passed over and stays NaN
   */
  public static double[] adjusted(double... chances) {
    int[] falling =
        IntStream.range(0, chances.length)
            .filter(i -> !Double.isNaN(chances[i]))
            .boxed()
            .sorted(Comparator.comparingDouble((Integer i) -> chances[i]).reversed())
            .mapToInt(Integer::intValue)
            .toArray();
    double[] adjusted = new double[chances.length];
    Arrays.fill(adjusted, Double.NaN);
    double least = 1;
    for (int at = 0; at < falling.length; at++) {
      int rank = falling.length - at;
      least = Math.min(least, chances[falling[at]] * falling.length / rank);
      adjusted[falling[at]] = least;
    }
    return adjusted;
  }
}
