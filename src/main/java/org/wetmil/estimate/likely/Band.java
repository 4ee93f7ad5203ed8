package org.wetmil.estimate.likely;

/**
 * A figure with its likely range: of ten jobs like it eight are expected inside.
 *
 * @param low 10 % of jobs come out below
 * @param stated the figure itself, never outside
 * @param high 10 % of jobs come out above
 */
public record Band(double low, double stated, double high) {

  public Band {
    if (!(low <= stated && stated <= high)) {
      throw new IllegalArgumentException(stated + " is not within " + low + " to " + high);
    }
  }

  /** A range that is widened where the stated figure would lie outside. */
  public static Band around(double low, double stated, double high) {
    return new Band(Math.min(low, stated), stated, Math.max(high, stated));
  }

  /** Whether what a job took lies inside; the ends belong to it. */
  public boolean holds(double actual) {
    return actual >= low && actual <= high;
  }

  /** Low end as a ratio to the stated figure; 1 where nothing is stated. */
  public double lowRatio() {
    return stated == 0 ? 1 : low / stated;
  }

  /** High end as a ratio to the stated figure; 1 where nothing is stated. */
  public double highRatio() {
    return stated == 0 ? 1 : high / stated;
  }
}
