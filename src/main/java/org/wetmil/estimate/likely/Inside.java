package org.wetmil.estimate.likely;

import java.util.List;

/**
 * How many past jobs came out inside their likely range; about eight of ten should.
 *
 * @param below jobs that took less than the low end
 * @param inside jobs within the range
 * @param above jobs that took more than the high end
 */
public record Inside(int below, int inside, int above) {

  /** A job that is over: the range as it was bid, and what it took in the same unit. */
  public record Past(Band band, double actual) {}

  /** Counts jobs; one whose actual figure is not above 0 or not known is not counted. */
  public static Inside of(List<Past> jobs) {
    int below = 0;
    int inside = 0;
    int above = 0;
    for (Past job : jobs) {
      if (job.actual() > 0) {
        below += job.actual() < job.band().low() ? 1 : 0;
        above += job.actual() > job.band().high() ? 1 : 0;
        inside += job.band().holds(job.actual()) ? 1 : 0;
      }
    }
    return new Inside(below, inside, above);
  }

  public int jobs() {
    return below + inside + above;
  }

  /** Share of the jobs that came out inside, 0..1; NaN without a job. */
  public double share() {
    return jobs() == 0 ? Double.NaN : (double) inside / jobs();
  }
}
