package org.wetmil.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.wetmil.audit.past.Actual;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.past.PastLine;

/**
 * Past bids made up with biases that are known, from a stated seed.
 *
 * @param common log factor common to all bids
 * @param coatings log effect of each coating
 * @param surfaces log effect of each surface
 * @param crews log effect of each crew
 * @param fired log effect on the three lines in ten on which the check {@link #CHECK} fires
 * @param bidScatter standard deviation of the log ratio from bid to bid
 * @param lineScatter standard deviation from line to line within a bid
 * @param known how finely the outcome is known
 */
public record Simulation(
    double common,
    Map<String, Double> coatings,
    Map<String, Double> surfaces,
    Map<String, Double> crews,
    double fired,
    double bidScatter,
    double lineScatter,
    Known known) {
  public static final String CHECK = "made-up-check";

  /** How finely the outcome is known. */
  public enum Known {
    BY_LINE,
    BY_COATING,
    BY_JOB
  }

  public List<PastBid> bids(int count, int lines, long seed) {
    Random random = new Random(seed);
    List<PastBid> bids = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      bids.add(bid(i, lines, random));
    }
    return bids;
  }

  private PastBid bid(int number, int lineCount, Random random) {
    String crew = pick(crews, random);
    double shift = common + crews.get(crew) + bidScatter * random.nextGaussian();
    List<PastLine> lines = new ArrayList<>();
    List<Double> amounts = new ArrayList<>();
    for (int i = 0; i < lineCount; i++) {
      String coating = pick(coatings, random);
      String surface = pick(surfaces, random);
      double estimate = 5 * Math.exp(0.5 * random.nextGaussian());
      boolean fires = random.nextDouble() < 0.3;
      double log =
          shift
              + (fires ? fired : 0)
              + coatings.get(coating)
              + surfaces.get(surface)
              + lineScatter * random.nextGaussian();
      lines.add(
          new PastLine(
              coating,
              surface,
              "",
              estimate,
              2 * estimate,
              estimate,
              PastLine.Factors.NONE,
              fires ? Set.of(CHECK) : Set.of()));
      amounts.add(estimate * Math.exp(log));
    }
    return new PastBid(
        "job " + number,
        LocalDate.of(2022, 1, 10).plusDays(30L * number),
        crew,
        "",
        lines,
        actuals(lines, amounts));
  }

  private List<Actual> actuals(List<PastLine> lines, List<Double> amounts) {
    Map<String, List<PastLine>> pieces = new LinkedHashMap<>();
    Map<String, Double> sums = new LinkedHashMap<>();
    for (int i = 0; i < lines.size(); i++) {
      String piece =
          switch (known) {
            case BY_LINE -> "line " + i;
            case BY_COATING -> lines.get(i).coating();
            case BY_JOB -> "job";
          };
      pieces.computeIfAbsent(piece, key -> new ArrayList<>()).add(lines.get(i));
      sums.merge(piece, amounts.get(i), Double::sum);
    }
    return pieces.keySet().stream()
        .map(piece -> new Actual(Measure.PAINT, pieces.get(piece), sums.get(piece)))
        .toList();
  }

  private static String pick(Map<String, Double> groups, Random random) {
    List<String> names = List.copyOf(new TreeSet<>(groups.keySet()));
    return names.get(random.nextInt(names.size()));
  }
}
