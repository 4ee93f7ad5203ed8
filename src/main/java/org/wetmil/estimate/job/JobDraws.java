package org.wetmil.estimate.job;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.wetmil.catalogue.Names;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.likely.Band;
import org.wetmil.estimate.likely.Factor;
import org.wetmil.estimate.likely.Spreads;
import org.wetmil.estimate.likely.Strata;

/**
 * What a job takes in each of many draws. One draw moves paint and hours together: less paint that
 * stays on slows the gun at the same film. Part of each factor is common to all lines, part is the
 * line's own; its seed is what the line says, so that a line added leaves the others' draws alone.
 *
 * <p>The largest lines are drawn one by one. The others of one kind are drawn as one whose factors
 * have the mean and the variance of the average over so many lines. That is an approximation, since
 * the share that stays on is capped line by line: of 400 lines its low end moves by a hundredth of
 * a percent with the ranges built in and by half a percent with ranges twice as wide.
 */
final class JobDraws {
  /** Draws of a job: the sampling error of its ends is about half a percent. */
  static final int DRAWS = FactorDraws.DRAWS;

  /** Lines drawn one by one. */
  static final int MOST_SINGLE = 200;

  /** What a factor is that does not move. */
  private static final double[] CERTAIN = FactorDraws.certain();

  private final Map<Factor, FactorDraws> factors = new EnumMap<>(Factor.class);
  private final Map<Factor, Alone> alone = new EnumMap<>(Factor.class);
  private final double[] sprayHours = new double[DRAWS];
  private final Map<Object, double[]> paintGal = new LinkedHashMap<>();

  /**
   * Draws of a job were one factor alone uncertain.
   *
   * @param paintGal paint of all lines that count, draw by draw
   * @param sprayHours person-hours of their spraying, draw by draw
   */
  record Alone(double[] paintGal, double[] sprayHours) {}

  private JobDraws(String job, Spreads spreads, List<DrawnLines> lots) {
    for (Factor factor : Factor.values()) {
      factors.put(factor, new FactorDraws(job, factor, spreads));
      alone.put(factor, new Alone(new double[DRAWS], new double[DRAWS]));
    }
    lots.forEach(this::draw);
  }

  /**
   * Draws for the lines that count.
   *
   * @param groups lines by what they are bought together as: the paint of each is kept apart
   */
  static JobDraws of(Bid bid, Map<?, List<FilledLine>> groups) {
    return of(bid, groups, Spreads.of(bid.catalogue()), MOST_SINGLE);
  }

  static JobDraws of(Bid bid, Map<?, List<FilledLine>> groups, Spreads spreads, int mostSingle) {
    return new JobDraws(bid.job(), spreads, lots(groups, mostSingle));
  }

  /** The same job were one factor alone uncertain. */
  Alone only(Factor factor) {
    Alone sums = alone.get(factor);
    return new Alone(sums.paintGal().clone(), sums.sprayHours().clone());
  }

  /** Compared by hand, here and where a lot is drawn: a call for each number costs half of it. */
  private static void add(double[] sum, double figure, double[] times, double least) {
    for (int i = 0; i < DRAWS; i++) {
      double drawn = times[i];
      sum[i] += figure * (drawn > least ? drawn : least);
    }
  }

  private static List<DrawnLines> lots(Map<?, List<FilledLine>> groups, int mostSingle) {
    ToDoubleFunction<FilledLine> weight = weights(groups);
    double[] sorted =
        groups.values().stream().flatMap(List::stream).mapToDouble(weight).sorted().toArray();
    boolean all = mostSingle == 0 || sorted.length <= mostSingle;
    double least = all ? 0 : sorted[sorted.length - mostSingle];
    Map<String, Integer> seen = new HashMap<>();
    Map<Object, DrawnLines> together = new LinkedHashMap<>();
    List<DrawnLines> single = new ArrayList<>();
    groups.forEach(
        (group, lines) -> {
          for (FilledLine line : lines) {
            double size = weight.applyAsDouble(line);
            double transfer = DrawnLines.transfer(line);
            if (size >= least && single.size() < mostSingle) {
              String id = id(line);
              int nth = seen.merge(id, 1, Integer::sum);
              single.add(new DrawnLines(id + "\n" + nth, group, transfer));
              single.get(single.size() - 1).add(line, size);
            } else {
              together
                  .computeIfAbsent(
                      List.of(group, transfer),
                      key -> new DrawnLines("small\n" + key, group, transfer))
                  .add(line, size);
            }
          }
        });
    single.addAll(together.values());
    return single;
  }

  /** How much of the job's paint and spraying a line has. */
  private static ToDoubleFunction<FilledLine> weights(Map<?, List<FilledLine>> groups) {
    double paint = sum(groups, FilledColumn.PAINT);
    double spray = sum(groups, FilledColumn.SPRAY);
    return line ->
        share(line.base(FilledColumn.PAINT), paint) + share(line.base(FilledColumn.SPRAY), spray);
  }

  private static double sum(Map<?, List<FilledLine>> groups, FilledColumn column) {
    return groups.values().stream()
        .flatMap(List::stream)
        .mapToDouble(line -> line.base(column))
        .sum();
  }

  private static double share(double part, double whole) {
    return whole > 0 ? part / whole : 0;
  }

  /** What the line says of itself; rows move when another is put in. */
  private static String id(FilledLine line) {
    StringBuilder id = new StringBuilder();
    for (InputColumn column :
        List.of(
            InputColumn.FLOOR,
            InputColumn.ROOM,
            InputColumn.SURFACE,
            InputColumn.COATING,
            InputColumn.COLOUR)) {
      id.append(Names.key(line.line().text(column))).append('\n');
    }
    return id.toString();
  }

  private void draw(DrawnLines lot) {
    double[] film = drawn(lot, Factor.FILM);
    double[] stays = drawn(lot, Factor.TRANSFER);
    double[] kept = drawn(lot, Factor.KEPT);
    double[] trigger = drawn(lot, Factor.TRIGGER);
    double[] paint = paintGal.computeIfAbsent(lot.group(), group -> new double[DRAWS]);
    double[] hours = sprayHours;
    double transfer = lot.transfer();
    double ofPaint = lot.paintGal();
    double ofSpray = lot.sprayHours();
    for (int i = 0; i < hours.length; i++) {
      double stay = stays[i];
      double both = film[i] * (stay > transfer ? stay : transfer);
      paint[i] += ofPaint * both * kept[i];
      hours[i] += ofSpray * both * trigger[i];
    }
  }

  /** A factor for a lot, which is added to what the job were that factor alone uncertain. */
  private double[] drawn(DrawnLines lot, Factor factor) {
    double[] drawn = factors.get(factor).of(lot.id(), lot.alike());
    double least = factor == Factor.TRANSFER ? lot.transfer() : 0;
    Alone sums = alone.get(factor);
    add(sums.paintGal(), lot.paintGal(), factor == Factor.TRIGGER ? CERTAIN : drawn, least);
    add(sums.sprayHours(), lot.sprayHours(), factor == Factor.KEPT ? CERTAIN : drawn, least);
    return drawn;
  }

  /**
   * The likely range of the paint of one group.
   *
   * @param stated its paint as stated, in gallons
   */
  Band paintBand(Object group, double stated) {
    return band(paintGal.getOrDefault(group, new double[DRAWS]), stated);
  }

  /** The range of a figure that was drawn, widened where the stated one would lie outside. */
  static Band band(double[] draws, double stated) {
    return Band.around(
        Strata.quantile(draws, Spreads.TAIL), stated, Strata.quantile(draws, 1 - Spreads.TAIL));
  }

  /** The draw at the low end of a figure: one in ten comes out no higher. */
  static int lowDraw(double[] figure) {
    return Strata.drawAt(figure, Spreads.TAIL, -1);
  }

  /** The draw at the high end of a figure. */
  static int highDraw(double[] figure) {
    return Strata.drawAt(figure, 1 - Spreads.TAIL, 0);
  }

  /** Person-hours of spraying of all lines that count, draw by draw. */
  double[] sprayHours() {
    return sprayHours.clone();
  }

  /** Paint of the lines of one group in gallons, draw by draw; zeros for a group without lines. */
  double[] paintGal(Object group) {
    return paintGal.getOrDefault(group, new double[DRAWS]).clone();
  }

  /** Paint of all lines that count in gallons, draw by draw. */
  double[] paintGal() {
    double[] sum = new double[DRAWS];
    for (double[] paint : paintGal.values()) {
      for (int i = 0; i < DRAWS; i++) {
        sum[i] += paint[i];
      }
    }
    return sum;
  }
}
