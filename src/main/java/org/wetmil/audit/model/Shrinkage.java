package org.wetmil.audit.model;

import java.util.List;
import org.wetmil.audit.stats.OneWay;
import org.wetmil.audit.stats.Sample;

/**
 * How far the groups of one kind are believed against all bids: a group of n bids counts w = n / (n
 * + k), with k = s² / tau² by one-way analysis of variance (derived: the best linear prediction of
 * a random effect).
 *
 * @param k bids that are worth as much as what all bids say; infinite where the groups differ no
 *     more than their bids scatter
 */
record Shrinkage(double k) {
  /** Where there are too few groups or bids to tell (house rule). */
  static final double FEW_K = 4;

  /** What to begin with. */
  static final Shrinkage START = new Shrinkage(FEW_K);

  private static final int FEWEST_GROUPS = 3;
  private static final double FEWEST_FREEDOM = 8;

  static Shrinkage of(List<Sample> groups) {
    OneWay variance = OneWay.of(groups);
    return new Shrinkage(k(variance));
  }

  private static double k(OneWay variance) {
    if (variance.groups() < 2) {
      // One group alone cannot be told from all bids.
      return Double.POSITIVE_INFINITY;
    }
    if (variance.groups() < FEWEST_GROUPS || variance.freedomWithin() < FEWEST_FREEDOM) {
      return FEW_K;
    }
    return variance.between() == 0
        ? Double.POSITIVE_INFINITY
        : variance.within() / variance.between();
  }

  /** w for a group of n bids. */
  double weight(double n) {
    return Double.isInfinite(k) ? 0 : n / (n + k);
  }
}
