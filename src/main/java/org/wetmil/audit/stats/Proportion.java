package org.wetmil.audit.stats;

import org.apache.commons.math3.stat.interval.WilsonScoreInterval;

/** How sure a share is that was counted. */
public final class Proportion {
  private static final WilsonScoreInterval WILSON = new WilsonScoreInterval();

  private Proportion() {}

  /**
   * 95 % interval of a share by Wilson's score (published: Wilson 1927), which holds for few as for
   * many and near 0 and 1.
   *
   * @param count of those that are, 0..of
   * @return unknown when there are none
   */
  public static Interval interval(int count, int of) {
    if (of == 0) {
      return Interval.UNKNOWN;
    }
    // the library refuses these, whose ends on one side are plain
    double z2 = 1.959963984540054 * 1.959963984540054;
    if (count == 0) {
      return new Interval(0, z2 / (of + z2));
    }
    if (count == of) {
      return new Interval(of / (of + z2), 1);
    }
    var wilson = WILSON.createInterval(of, count, Interval.CONFIDENCE);
    return new Interval(wilson.getLowerBound(), wilson.getUpperBound());
  }
}
