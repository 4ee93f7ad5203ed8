package org.wetmil.audit.model;

import java.util.List;

/**
 * How far the groups of one kind are believed against all bids: a group of n bids counts w = n / (n
 * + k), with k = s² / tau², the scatter of a bid over that of the groups (derived: the best linear
 * prediction of a random effect).
 *
 * @param k bids that are worth as much as what all bids say; infinite where the groups differ no
 *     more than their bids scatter
 */
record Shrinkage(double k) {
  /** Where there are too few groups or bids to tell, and to begin with (house rule). */
  static final Shrinkage FEW = new Shrinkage(4);

  /** One group alone cannot be told from all bids. */
  static final Shrinkage FULL = new Shrinkage(Double.POSITIVE_INFINITY);

  private static final int FEWEST_GROUPS = 3;
  private static final double FEWEST_FREEDOM = 8;

  /** Least and most that are told apart from none and all (house rule). */
  private static final double LEAST = 1e-3;

  private static final double MOST = 1e4;

  /** The one that a kind starts with. */
  static Shrinkage start(List<Term> groups) {
    return groups.size() < 2 ? FULL : FEW;
  }

  /** Whether the bids tell how far the groups of a kind differ. */
  static boolean isTold(List<Term> groups) {
    int freedom = groups.stream().mapToInt(Term::jobs).sum() - groups.size();
    return groups.size() >= FEWEST_GROUPS && freedom >= FEWEST_FREEDOM;
  }

  /**
   * The one that effects speak for, which came of another (published: the fixed-point form of
   * restricted maximum likelihood, Schall 1991, from memory; for one kind with equally many bids in
   * each group it settles at the one-way analysis of variance).
   *
   * @param freedom groups that the effects amount to, 0 to their number
   * @param squares sum of the squared effects
   * @param scatter variance of a bid's log ratio within its groups
   */
  static Shrinkage of(double freedom, double squares, double scatter) {
    double k = scatter * freedom / squares;
    return k < MOST ? new Shrinkage(Math.max(LEAST, k)) : new Shrinkage(MOST);
  }

  /** The same at the end: a pull that strong leaves nothing. */
  Shrinkage settled() {
    return k < MOST ? this : FULL;
  }

  /** w for a group of n bids. */
  double weight(double n) {
    return Double.isInfinite(k) ? 0 : n / (n + k);
  }
}
