package org.wetmil.audit.ratio;

import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.stats.Outliers;

/**
 * How one bid came out.
 *
 * @param estimated estimate of what has an outcome, kept unit
 * @param actual its outcome, kept unit
 * @param score modified z-score of its log ratio among all bids
 */
public record JobRatio(PastBid bid, double estimated, double actual, double score) {

  public double ratio() {
    return actual / estimated;
  }

  /** Whether it lies far from the rest: worth a look, and never dropped. */
  public boolean isOdd() {
    return Outliers.isOutlier(score);
  }
}
