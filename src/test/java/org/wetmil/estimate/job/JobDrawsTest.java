package org.wetmil.estimate.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.likely.Band;
import org.wetmil.estimate.likely.Factor;
import org.wetmil.estimate.likely.Inside;
import org.wetmil.estimate.likely.Spreads;
import org.wetmil.estimate.likely.Strata;
import org.wetmil.quantity.UnitSystem;

/** Likely ranges against the closed form for products of lognormals, and against sampling error. */
class JobDrawsTest {
  /** Deviations of the sampling error of n plain draws that a quantile may be off. */
  private static final double BOUND = 3;

  /** What a line takes varies by this many times between its ends: sqrt of the sum of squares. */
  private static final double PAINT =
      Math.exp(Math.hypot(Math.hypot(Math.log(1.20), Math.log(1.18)), Math.log(1.03)));

  private static final double SPRAY =
      Math.exp(Math.hypot(Math.hypot(Math.log(1.20), Math.log(1.18)), Math.log(1.40)));

  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
  private static final double Z = NORMAL.inverseCumulativeProbability(0.9);

  private final Spreads spreads = Spreads.of(Catalogue.builtIn());

  @Test
  void lineRangeIsThatOfItsFactors() {
    // cabinets keep 45 % of the paint, so that the limit is out of reach
    FilledLine line = fill(cabinets("Kitchen", 10)).lines().findFirst().orElseThrow();
    Band paint = paintGal(line);
    Band hours = hours(line);

    assertThat(paint.highRatio()).isCloseTo(PAINT, within(1e-6));
    assertThat(paint.lowRatio()).isCloseTo(1 / PAINT, within(1e-6));
    double spray = line.base(FilledColumn.SPRAY);
    double rest = line.base(FilledColumn.LABOUR) - spray;
    assertThat(hours.high()).isCloseTo(rest + spray * SPRAY, within(1e-5));
    assertThat(hours.low()).isCloseTo(rest + spray / SPRAY, within(1e-5));
  }

  @Test
  void addedLineChangesNoOtherLinesRangeOrDraws() {
    BidLine[] two = {wall("Hall", 500), cabinets("Kitchen", 10)};
    BidLine[] three = {wall("Attic", 900), two[0], two[1]};

    assertThat(ranges(three).subList(2, 6)).isEqualTo(ranges(two));
    JobDraws before = draws(1000, two);
    JobDraws after = draws(1000, three);
    assertThat(after.paintGal("Hall")).isEqualTo(before.paintGal("Hall"));
    assertThat(after.paintGal("Kitchen")).isEqualTo(before.paintGal("Kitchen"));
    assertThat(after.paintGal("Attic")).isNotEqualTo(new double[JobDraws.DRAWS]);
  }

  @Test
  void drawsOfOneLineComeWithinSamplingErrorOfTheClosedForm() {
    FilledBid filled = Estimator.fill(Bids.bid(cabinets("Kitchen", 10)));
    JobDraws draws = JobDraws.of(filled.bid(), one(filled));
    double sigma = Math.log(PAINT) / Z;
    double stated = filled.total(FilledColumn.PAINT);

    Band band = draws.paintBand(1, stated);
    assertThat(Math.log(band.highRatio()))
        .isCloseTo(Math.log(PAINT), within(BOUND * error(0.9, sigma)));
    assertThat(Math.log(band.lowRatio()))
        .isCloseTo(-Math.log(PAINT), within(BOUND * error(0.1, sigma)));
    double middle = Strata.quantile(draws.paintGal(), 0.5);
    assertThat(Math.log(middle / stated)).isCloseTo(0, within(BOUND * error(0.5, sigma)));
  }

  /** Paint left in pails takes no time, and the trigger no paint. */
  @ParameterizedTest
  @CsvSource({"TRANSFER, 1.20, 1.20", "FILM, 1.18, 1.18", "KEPT, 1.03, 1", "TRIGGER, 1, 1.40"})
  void aFactorAloneMovesWhatItActsOnByItsOwnLimit(Factor factor, double paint, double hours) {
    FilledBid filled = Estimator.fill(Bids.bid(cabinets("Kitchen", 10)));
    JobDraws.Alone alone = JobDraws.of(filled.bid(), one(filled)).only(factor);

    ranges(alone.paintGal(), filled.total(FilledColumn.PAINT), paint);
    ranges(alone.sprayHours(), filled.total(FilledColumn.SPRAY), hours);
  }

  private static void ranges(double[] draws, double stated, double limit) {
    double error = BOUND * error(0.9, Math.log(limit) / Z) + 1e-12;
    for (double share : new double[] {0.1, 0.9}) {
      double ratio = Strata.quantile(draws, share) / stated;
      assertThat(Math.log(ratio))
          .isCloseTo(Math.signum(share - 0.5) * Math.log(limit), within(error));
    }
  }

  /** Of walls 70 % of the paint stays on; were it all, 70 % of the paint would do. */
  @Test
  void noDrawTakesLessPaintThanIfAllOfItStayedOn() {
    Map<Factor, Double> wide = new EnumMap<>(spreads.sigmas());
    wide.put(Factor.TRANSFER, 1.0);
    FilledBid filled = Estimator.fill(Bids.bid(wall("Hall", 500)));
    JobDraws draws = JobDraws.of(filled.bid(), one(filled), new Spreads(wide, 0.5), 1000);

    double[] paint = draws.only(Factor.TRANSFER).paintGal();
    double least = Arrays.stream(paint).min().orElseThrow() / filled.total(FilledColumn.PAINT);
    assertThat(least).isCloseTo(0.7, within(1e-12));
    double[] hours = draws.only(Factor.TRANSFER).sprayHours();
    assertThat(Arrays.stream(hours).min().orElseThrow() / filled.total(FilledColumn.SPRAY))
        .isCloseTo(0.7, within(1e-12));
  }

  @Test
  void jobWhoseFactorsAreAllCommonRangesAsOneLineDoes() {
    Spreads common = new Spreads(spreads.sigmas(), 1);
    FilledBid filled = Estimator.fill(Bids.bid(cabinets("Kitchen", 10), cabinets("Bath", 3)));
    JobDraws draws = JobDraws.of(filled.bid(), one(filled), common, 1000);
    double sigma = Math.log(PAINT) / Z;

    Band band = draws.paintBand(1, filled.total(FilledColumn.PAINT));
    assertThat(Math.log(band.highRatio()))
        .isCloseTo(Math.log(PAINT), within(BOUND * error(0.9, sigma)));
  }

  /** Mean and variance of a sum of independent lognormals are exact. */
  @Test
  void linesOfTheirOwnAverageOut() {
    Spreads own = new Spreads(spreads.sigmas(), 0);
    BidLine[] lines = many(100);
    FilledBid filled = Estimator.fill(Bids.bid(lines));
    double[] paint = JobDraws.of(filled.bid(), one(filled), own, 1000).paintGal();
    double stated = filled.total(FilledColumn.PAINT);
    double sigma2 = Math.pow(Math.log(PAINT) / Z, 2);
    double mean = Math.exp(sigma2 / 2);
    double sd = mean * Math.sqrt(Math.expm1(sigma2) / lines.length);

    double found = 0;
    double squares = 0;
    for (double each : paint) {
      found += each / stated / paint.length;
      squares += Math.pow(each / stated - mean, 2) / paint.length;
    }
    assertThat(found).isCloseTo(mean, within(BOUND * sd / Math.sqrt(paint.length)));
    double ofVariance = sd * sd * Math.sqrt(2.0 / paint.length);
    assertThat(squares).isCloseTo(sd * sd, within(4 * ofVariance));
  }

  @Test
  void smallLinesTakenTogetherRangeAsWhenDrawnOneByOne() {
    FilledBid filled = Estimator.fill(Bids.bid(many(300)));
    double stated = filled.total(FilledColumn.PAINT);
    Band one = JobDraws.of(filled.bid(), one(filled), spreads, 300).paintBand(1, stated);
    Band together = JobDraws.of(filled.bid(), one(filled), spreads, 20).paintBand(1, stated);
    double sigma = Math.log(one.highRatio() / one.lowRatio()) / 2 / Z;

    assertThat(Math.log(together.highRatio() / one.highRatio()))
        .isCloseTo(0, within(BOUND * Math.sqrt(2) * error(0.9, sigma)));
    assertThat(Math.log(together.lowRatio() / one.lowRatio()))
        .isCloseTo(0, within(BOUND * Math.sqrt(2) * error(0.1, sigma)));
  }

  @Test
  void paintAndHoursMoveTogether() {
    JobDraws draws = draws(1000, cabinets("Kitchen", 10));
    double correlation =
        new PearsonsCorrelation().correlation(draws.paintGal(), draws.sprayHours());

    // film and transfer are in both: their variance over the root of both variances
    double shared = Math.pow(Math.log(1.20), 2) + Math.pow(Math.log(1.18), 2);
    double expected = shared / (Math.log(PAINT) * Math.log(SPRAY));
    assertThat(correlation).isCloseTo(expected, within(0.05));
  }

  @Test
  void drawsDependOnTheJobAndTheLineAlone() {
    assertThat(draws(1000, wall("Hall", 500)).paintGal())
        .isEqualTo(draws(1000, wall("Hall", 500)).paintGal())
        .isNotEqualTo(draws(1000, wall("Lobby", 500)).paintGal());
  }

  @Test
  void certainFactorsLeaveNoRange() {
    Spreads none =
        new Spreads(
            Map.of(Factor.TRANSFER, 0.0, Factor.FILM, 0.0, Factor.KEPT, 0.0, Factor.TRIGGER, 0.0),
            0.5);
    FilledBid filled = Estimator.fill(Bids.bid(wall("Hall", 500)));
    double stated = filled.total(FilledColumn.PAINT);
    Band band = JobDraws.of(filled.bid(), one(filled), none, 1000).paintBand(1, stated);

    assertThat(band.low()).isCloseTo(stated, within(1e-9));
    assertThat(band.high()).isCloseTo(stated, within(1e-9));
  }

  /** Jobs that vary as the settings say fall inside their range about eight times in ten. */
  @Test
  @Tag("long")
  void eightOfTenJobsThatVaryAsStatedFallInside() {
    List<Inside.Past> past = new ArrayList<>();
    Random random = new Random(11);
    double root = Math.sqrt(0.5);
    for (int job = 0; job < 400; job++) {
      BidLine[] lines = {cabinets("Job " + job, 10), cabinets("Bath " + job, 6)};
      FilledBid filled = Estimator.fill(Bids.bid(lines));
      Band band =
          JobDraws.of(filled.bid(), one(filled)).paintBand(1, filled.total(FilledColumn.PAINT));
      double sigma = Math.log(PAINT) / Z;
      double common = random.nextGaussian();
      double actual =
          filled
              .lines()
              .mapToDouble(
                  line ->
                      line.base(FilledColumn.PAINT)
                          * Math.exp(sigma * root * (common + random.nextGaussian())))
              .sum();
      past.add(new Inside.Past(band, actual));
    }

    double error = Math.sqrt(0.8 * 0.2 / past.size());
    assertThat(Inside.of(past).share()).isCloseTo(0.8, within(BOUND * error));
  }

  /** Standard error of the log of a quantile of n plain draws. */
  private static double error(double p, double sigma) {
    double z = NORMAL.inverseCumulativeProbability(p);
    return sigma * Math.sqrt(p * (1 - p) / JobDraws.DRAWS) / NORMAL.density(z);
  }

  private static BidLine[] many(int n) {
    BidLine[] lines = new BidLine[n];
    for (int i = 0; i < n; i++) {
      lines[i] = cabinets("Room " + i, 10);
    }
    return lines;
  }

  private static BidLine wall(String room, double ft2) {
    return Bids.line(ROOM, room, SURFACE, "walls", COATING, "latex", AREA, ft2);
  }

  private static BidLine cabinets(String room, int count) {
    return Bids.line(ROOM, room, SURFACE, "cabinets", COATING, "lacquer", COUNT, count);
  }

  private static FilledBid fill(BidLine... lines) {
    return Estimator.fill(Bids.bid(Catalogue.builtIn(), UnitSystem.US, lines));
  }

  /** Paint of a line in gallons, as its filled cells have it. */
  private static Band paintGal(FilledLine line) {
    return Band.around(
        line.base(FilledColumn.PAINT_LOW),
        line.base(FilledColumn.PAINT),
        line.base(FilledColumn.PAINT_HIGH));
  }

  /** Person-hours of a line's own tasks, as its filled cells have it. */
  private static Band hours(FilledLine line) {
    return Band.around(
        line.base(FilledColumn.LABOUR_LOW),
        line.base(FilledColumn.LABOUR),
        line.base(FilledColumn.LABOUR_HIGH));
  }

  private static List<Band> ranges(BidLine... lines) {
    return fill(lines).lines().flatMap(line -> Stream.of(paintGal(line), hours(line))).toList();
  }

  private static JobDraws draws(int mostSingle, BidLine... lines) {
    FilledBid filled = fill(lines);
    Map<String, List<FilledLine>> rooms =
        filled
            .lines()
            .collect(
                Collectors.groupingBy(
                    line -> line.line().text(InputColumn.ROOM),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return JobDraws.of(filled.bid(), rooms, Spreads.of(Catalogue.builtIn()), mostSingle);
  }

  private static Map<Integer, List<FilledLine>> one(FilledBid filled) {
    return Map.of(1, filled.lines().toList());
  }
}
