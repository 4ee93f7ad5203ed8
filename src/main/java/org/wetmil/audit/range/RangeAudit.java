package org.wetmil.audit.range;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.audit.past.Actual;
import org.wetmil.audit.past.Likely;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.stats.Interval;
import org.wetmil.audit.stats.Proportion;
import org.wetmil.estimate.likely.Inside;

/**
 * How many past jobs came out inside the range that would have been said when they were bid.
 *
 * @param jobs those whose outcome is known for every line of the bid
 * @param partly bids of which only a part has an outcome; they are not counted
 */
public record RangeAudit(Measure measure, List<PlacedJob> jobs, int partly) {
  public RangeAudit {
    jobs = List.copyOf(jobs);
  }

  public static RangeAudit of(Measure measure, List<PastBid> bids) {
    List<PlacedJob> jobs = new ArrayList<>();
    int partly = 0;
    for (PastBid bid : bids) {
      List<Actual> actuals = bid.actuals().stream().filter(a -> a.measure() == measure).toList();
      Likely likely = bid.likely().get(measure);
      if (!actuals.isEmpty() && likely != null) {
        if (isWhole(bid, actuals)) {
          double took = actuals.stream().mapToDouble(Actual::amount).sum();
          jobs.add(new PlacedJob(bid, likely.whole(), took));
        } else {
          partly++;
        }
      }
    }
    return new RangeAudit(measure, jobs, partly);
  }

  /** Whether the outcomes, of which no two cover the same line, cover all that was bid. */
  private static boolean isWhole(PastBid bid, List<Actual> actuals) {
    int covered = actuals.stream().mapToInt(actual -> actual.lines().size()).sum();
    return covered == bid.lines().size()
        && actuals.stream().allMatch(a -> a.amount() > 0 && Double.isFinite(a.amount()))
        && bid.lines().stream().allMatch(line -> line.estimated(actuals.get(0).measure()) >= 0);
  }

  public Inside inside() {
    return Inside.of(jobs.stream().map(job -> new Inside.Past(job.range(), job.actual())).toList());
  }

  /** 95 % interval of the share inside. */
  public Interval share() {
    return Proportion.interval(inside().inside(), inside().jobs());
  }

  public Judgement judgement() {
    return Judgement.of(inside());
  }
}
