package org.wetmil.audit.range;

import org.wetmil.audit.stats.Interval;
import org.wetmil.audit.stats.Proportion;
import org.wetmil.estimate.likely.Inside;
import org.wetmil.estimate.likely.Spreads;

/** What a count of jobs inside their ranges says of the ranges. */
public enum Judgement {
  TOO_NARROW("the ranges are too narrow"),
  ABOUT_RIGHT("the ranges are about right"),
  TOO_WIDE("the ranges are too wide"),
  TOO_FEW("too few bids to say");

  /** Share of jobs that should come out inside. */
  public static final double EXPECTED = 1 - 2 * Spreads.TAIL;

  /** House rule: what luck brings about more often than once in twenty says nothing. */
  private static final double CHANCE = 0.05;

  /** What would come out inside of ranges half as wide as they should be. */
  private static final double INSIDE_HALF = share(0.5);

  /** What would come out inside of ranges twice as wide as they should be. */
  private static final double INSIDE_TWICE = share(2);

  private final String words;

  Judgement(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /**
   * Ranges are called right only when the count rules out that they are half or twice as wide as
   * they should be (house rule); expected shares for those are 48 and 99 % (derived, lognormal).
   */
  public static Judgement of(Inside inside) {
    Interval share = Proportion.interval(inside.inside(), inside.jobs());
    double chance = Proportion.chance(inside.inside(), inside.jobs(), EXPECTED);
    if (share.excludes(EXPECTED) && chance <= CHANCE) {
      return share.high() < EXPECTED ? TOO_NARROW : TOO_WIDE;
    }
    return share.excludes(INSIDE_HALF) && share.excludes(INSIDE_TWICE) ? ABOUT_RIGHT : TOO_FEW;
  }

  private static double share(double width) {
    return Spreads.insideOf(width);
  }
}
