package org.wetmil.audit.range;

import org.wetmil.audit.past.PastBid;
import org.wetmil.estimate.likely.Band;

/**
 * A job and where it came out.
 *
 * @param range as it would have been said when it was bid, kept unit
 * @param actual what it took in all, above 0
 */
public record PlacedJob(PastBid bid, Band range, double actual) {

  /** Where a job came out against its likely range; the ends belong to it. */
  public enum Place {
    BELOW("below"),
    INSIDE("inside"),
    ABOVE("above");

    private final String word;

    Place(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public Place place() {
    if (range.holds(actual)) {
      return Place.INSIDE;
    }
    return actual < range.low() ? Place.BELOW : Place.ABOVE;
  }
}
