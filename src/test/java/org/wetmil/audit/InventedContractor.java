package org.wetmil.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.wetmil.audit.past.Actual;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.past.PastLine;

/**
 * Past bids of an invented contractor, from a stated seed, with two hidden causes: block filler
 * loses more than planned, and one crew is slow at heights.
 */
final class InventedContractor {
  static final String LOW = "up to 10 ft";
  static final String HIGH = "over 14 to 20 ft";

  private static final List<String> CREWS = List.of("Alder", "Birch", "Cedar");

  private final double fillerLoss;
  private final double slowAtHeights;
  private final Random random;

  /**
   * @param fillerLoss factor on block filler, 1 is none
   * @param slowAtHeights factor on the hours of the crew Cedar at heights, 1 is none
   */
  InventedContractor(double fillerLoss, double slowAtHeights, long seed) {
    this.fillerLoss = fillerLoss;
    this.slowAtHeights = slowAtHeights;
    random = new Random(seed);
  }

  List<PastBid> bids(int count) {
    List<PastBid> bids = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      bids.add(bid(i));
    }
    return bids;
  }

  private PastBid bid(int number) {
    String crew = CREWS.get(number % 3);
    String height = number / 3 % 2 == 0 ? LOW : HIGH;
    boolean isBlock = number % 5 < 2;
    List<PastLine> lines = new ArrayList<>();
    lines.add(line("latex", "walls", height, 12 + random.nextInt(20)));
    lines.add(line("latex", "ceiling", height, 4 + random.nextInt(10)));
    lines.add(line("primer", "walls", height, 5 + random.nextInt(10)));
    if (isBlock) {
      lines.add(line("block filler", "walls", height, 15 + random.nextInt(20)));
    }
    double paintLuck = luck(0.06);
    double hoursLuck = luck(0.08);
    double slow = crew.equals("Cedar") && height.equals(HIGH) ? slowAtHeights : 1;
    List<Actual> actuals = new ArrayList<>();
    for (String coating : List.of("latex", "primer", "block filler")) {
      List<PastLine> part = lines.stream().filter(l -> l.coating().equals(coating)).toList();
      double loss = coating.equals("block filler") ? fillerLoss : 1;
      if (!part.isEmpty()) {
        actuals.add(
            new Actual(
                Measure.PAINT, part, sum(part, Measure.PAINT) * loss * paintLuck * luck(0.04)));
      }
    }
    actuals.add(new Actual(Measure.HOURS, lines, sum(lines, Measure.HOURS) * slow * hoursLuck));
    return new PastBid(
        "job " + (number + 1),
        LocalDate.of(2022, 2, 7).plusDays(44L * number),
        crew,
        "",
        lines,
        actuals);
  }

  private static PastLine line(String coating, String surface, String height, double gallons) {
    return new PastLine(
        coating,
        surface,
        height,
        gallons,
        0.6 * gallons,
        0.3 * gallons,
        PastLine.Factors.NONE,
        Set.of());
  }

  private double luck(double scatter) {
    return Math.exp(scatter * random.nextGaussian());
  }

  private static double sum(List<PastLine> lines, Measure measure) {
    return lines.stream().mapToDouble(line -> line.estimated(measure)).sum();
  }

  /** Every sentence of a page, in its order. */
  static List<String> page(Verdict verdict) {
    return Stream.of(
            Stream.of(verdict.proof(), verdict.bids()),
            verdict.right().stream(),
            verdict.reasons().stream(),
            verdict.change().stream(),
            verdict.helped().stream())
        .flatMap(sentences -> sentences)
        .toList();
  }
}
