package org.wetmil.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.wetmil.audit.past.Actual;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.past.PastLine;

/** Small past bids for tests, written line by line. */
public final class PastBids {
  private final List<PastBid> bids = new ArrayList<>();

  public static PastLine line(String coating, String surface, double gallons, String... fired) {
    return new PastLine(
        coating, surface, "", gallons, gallons, gallons / 2, PastLine.Factors.NONE, Set.of(fired));
  }

  /** A bid whose lines took these multiples of their paint, each known by itself. */
  public PastBids byLine(String crew, List<PastLine> lines, double... ratios) {
    List<Actual> actuals = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      PastLine line = lines.get(i);
      actuals.add(new Actual(Measure.PAINT, List.of(line), line.gallons() * ratios[i]));
    }
    return bid(crew, lines, actuals);
  }

  /** A bid whose lines together took this multiple of their paint and that of their hours. */
  public PastBids byJob(String crew, List<PastLine> lines, double paint, double hours) {
    double gallons = lines.stream().mapToDouble(PastLine::gallons).sum();
    double time = lines.stream().mapToDouble(PastLine::hours).sum();
    return bid(
        crew,
        lines,
        List.of(
            new Actual(Measure.PAINT, lines, gallons * paint),
            new Actual(Measure.HOURS, lines, time * hours)));
  }

  public PastBids bid(String crew, List<PastLine> lines, List<Actual> actuals) {
    LocalDate date = LocalDate.of(2023, 3, 6).plusDays(14L * bids.size());
    bids.add(new PastBid("job " + (bids.size() + 1), date, crew, "", lines, actuals));
    return this;
  }

  public List<PastBid> list() {
    return List.copyOf(bids);
  }
}
