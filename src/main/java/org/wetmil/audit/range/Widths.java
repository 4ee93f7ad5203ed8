package org.wetmil.audit.range;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.wetmil.audit.past.Likely;
import org.wetmil.estimate.likely.Band;
import org.wetmil.estimate.likely.Factor;
import org.wetmil.estimate.likely.Inside;

/**
 * How wide the range of each past job would have to be to hold what it took.
 *
 * <p>A range whose logarithms are k times as wide holds the power k of its ends (closed form for
 * lognormal factors; the limit that no paint stays on better than all of it is left out, which
 * makes low ends a little too low).
 *
 * @param jobs in the order of the bids
 */
record Widths(List<Job> jobs) {

  /**
   * @param needed standard deviation of the log of all factors that just holds the job; infinite
   *     when none does
   * @param over whether it took more than bid
   */
  record Job(double needed, boolean over) {}

  /**
   * A job's outcome against what it would be bid at.
   *
   * @param ratio outcome over estimate, above 0
   */
  static Job job(double ratio, Likely likely, Factor... factors) {
    Band whole = likely.whole();
    Band drawn = likely.drawn();
    boolean over = ratio > 1;
    double power =
        over
            ? power(ratio, whole.highRatio(), drawn.highRatio())
            : power(ratio, whole.lowRatio(), drawn.lowRatio());
    return new Job(power * likely.spreads().together(factors), over);
  }

  /** What is certain of the job stays, so that its drawn part must make the whole difference. */
  private static double power(double ratio, double whole, double drawn) {
    if (ratio == 1) {
      return 0;
    }
    double part = 1 + (ratio - 1) * (drawn - 1) / (whole - 1);
    double power = Math.log(part) / Math.log(drawn);
    return Double.isNaN(power) ? Double.POSITIVE_INFINITY : power;
  }

  /** How many would have come out inside at one width. */
  Inside at(double width) {
    int below = 0;
    int above = 0;
    for (Job job : jobs) {
      boolean out = job.needed > width;
      below += out && !job.over ? 1 : 0;
      above += out && job.over ? 1 : 0;
    }
    return new Inside(below, jobs.size() - below - above, above);
  }

  /**
   * The least width that holds the next job with the expected chance (published: split conformal
   * prediction, Vovk, Gammerman and Shafer 2005); empty when that takes more jobs.
   */
  OptionalDouble fitting() {
    return fitting(-1);
  }

  /** How many come out inside when each is judged by the width that fits all the others. */
  Inside heldOut() {
    int below = 0;
    int inside = 0;
    int above = 0;
    for (int i = 0; i < jobs.size(); i++) {
      OptionalDouble width = fitting(i);
      if (width.isPresent()) {
        boolean out = jobs.get(i).needed > width.getAsDouble();
        below += out && !jobs.get(i).over ? 1 : 0;
        above += out && jobs.get(i).over ? 1 : 0;
        inside += out ? 0 : 1;
      }
    }
    return new Inside(below, inside, above);
  }

  private OptionalDouble fitting(int without) {
    double[] needed = new double[jobs.size() - (without < 0 ? 0 : 1)];
    int count = 0;
    for (int i = 0; i < jobs.size(); i++) {
      if (i != without) {
        needed[count++] = jobs.get(i).needed;
      }
    }
    Arrays.sort(needed);
    int place = (int) Math.ceil(Judgement.EXPECTED * (needed.length + 1) - 1e-9);
    return place > needed.length || Double.isInfinite(needed[place - 1])
        ? OptionalDouble.empty()
        : OptionalDouble.of(needed[place - 1]);
  }
}
