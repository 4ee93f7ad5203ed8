package org.wetmil.estimate;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/**
 * Times the filling of a large bid; a program to run by hand, not a test. Prints lines for each
 * second of processor time, round by round; the first rounds warm up.
 */
public final class EstimatorTiming {
  private static final int LINES = 200_000;
  private static final String[][] WORK = {
    {"walls", "latex", "new drywall"},
    {"ceiling", "latex", "new drywall"},
    {"trim", "alkyd enamel", "painted"},
    {"doors", "oil-based", "painted"},
    {"walls", "primer", "bare"},
    {"metal deck", "dry fall", ""},
    {"siding", "latex", "peeling"},
    {"cabinets", "lacquer", "bare wood"}
  };

  private EstimatorTiming() {}

  public static void main(String[] args) {
    Bid bid = bid();
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    for (int round = 0; round < 6; round++) {
      long start = threads.getCurrentThreadCpuTime();
      FilledBid filled = Estimator.fill(bid);
      double seconds = (threads.getCurrentThreadCpuTime() - start) / 1e9;
      System.out.printf(
          "%,.0f lines/s (%.2f s, %,.0f gal)%n",
          LINES / seconds, seconds, filled.total(FilledColumn.PAINT));
      job(filled, threads);
    }
  }

  /** What hours, order, price and likely range of the job add to that. */
  private static void job(FilledBid filled, ThreadMXBean threads) {
    long start = threads.getCurrentThreadCpuTime();
    FilledJob job = FilledJob.of(filled);
    long jobs = threads.getCurrentThreadCpuTime();
    System.out.printf(
        "  hours, order and range of the job: %.2f s (up to %,.0f gal)%n",
        (jobs - start) / 1e9, job.range().paintGal().high());
  }

  private static Bid bid() {
    Random random = new Random(1);
    List<BidLine> lines = new ArrayList<>();
    for (int i = 0; i < LINES; i++) {
      String[] work = WORK[i % WORK.length];
      BidLine line =
          Bids.line(
              InputColumn.ROOM, "Room " + i / 4,
              InputColumn.SURFACE, work[0],
              InputColumn.COATING, work[1],
              InputColumn.CONDITION, work[2],
              InputColumn.LENGTH, 8 + random.nextInt(300) / 10.0,
              InputColumn.WIDTH, 8 + random.nextInt(200) / 10.0,
              InputColumn.HEIGHT, 8 + random.nextInt(80) / 10.0,
              InputColumn.COUNT, 1 + random.nextInt(4),
              InputColumn.TIP, "517",
              InputColumn.COLOUR, "Colour " + i % 7,
              InputColumn.MASK_EDGE, random.nextInt(100));
      lines.add(new BidLine("Bid", i + 2, UnitSystem.US, false, line.values()));
    }
    Map<InputColumn, Unit> units = new EnumMap<>(InputColumn.class);
    BidSheet sheet = new BidSheet("Bid", UnitSystem.US, true, units, lines);
    return new Bid(
        "timing", UnitSystem.US, Catalogue.builtIn(), List.of(sheet), List.of(), List.of());
  }
}
