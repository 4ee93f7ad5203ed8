package org.wetmil.audit.range;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.audit.Audit;
import org.wetmil.audit.change.PaintTable;
import org.wetmil.audit.past.Actual;
import org.wetmil.audit.past.Likely;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.past.PastLine;
import org.wetmil.audit.past.UnitCosts;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.estimate.job.QuickRange;
import org.wetmil.estimate.likely.Factor;
import org.wetmil.estimate.likely.Spreads;
import org.wetmil.quantity.UnitSystem;

/**
 * Made-up jobs whose outcomes scatter as the settings say, half as far and twice as far; drawn
 * plainly, factor by factor and line by line, by the model in words of the settings and by none of
 * the program's own draws.
 */
class MadeUpSpreadTest {
  private static final Spreads ASSUMED = Spreads.of(Catalogue.builtIn());

  @ParameterizedTest
  @CsvSource({"1, ABOUT_RIGHT", "0.5, TOO_WIDE", "2, TOO_NARROW"})
  void theShareInsideIsThatOfTheTrueSpread(double wider, Judgement expected) {
    List<PastBid> bids = bids(600, wider, 3);
    for (RangeAudit audit :
        List.of(RangeAudit.of(Measure.PAINT, bids), RangeAudit.of(Measure.HOURS, bids))) {
      double truth = Spreads.insideOf(1 / wider);
      double error = Math.sqrt(truth * (1 - truth) / 600);
      assertThat(audit.inside().jobs()).isEqualTo(600);
      // hours step by whole days of set-up, which moves their ends a little
      double steps = audit.measure() == Measure.HOURS ? 0.03 : 0.01;
      assertThat(audit.inside().share())
          .as("%s x %s", audit.measure(), wider)
          .isCloseTo(truth, within(3 * error + steps));
      assertThat(audit.judgement()).as("%s x %s", audit.measure(), wider).isEqualTo(expected);
    }
  }

  @ParameterizedTest
  @CsvSource({"0.5", "2"})
  void theSettingsNamedAreThoseThatTheOutcomesWereMadeWith(double wider) {
    Audit audit = audit(120, wider, 4);
    Map<Setting, Double> named = new EnumMap<>(Setting.class);
    audit.ranges().changes().forEach(change -> named.putAll(change.settings()));
    assertThat(named).containsKeys(Setting.TRANSFER_RANGE, Setting.FILM_RANGE);
    // of a range as narrow as this two decimals are too coarse
    named.remove(Setting.KEPT_RANGE);
    named.forEach(
        (setting, value) ->
            assertThat(Math.log(value) / Math.log(Catalogue.builtIn().number(setting)))
                .as("%s", setting)
                .isCloseTo(wider, within(0.3 * wider)));
    assertThat(audit.verdict().ranges())
        .anyMatch(text -> text.contains("Transfer range") && text.contains("on Settings"));
  }

  @Test
  void whereRangesAreRightNoSettingIsNamed() {
    Audit audit = audit(100, 1, 5);
    assertThat(audit.ranges().changes()).allMatch(change -> change.settings().isEmpty());
    assertThat(audit.verdict().ranges()).noneMatch(text -> text.contains("Settings"));
  }

  @Test
  void fewJobsSayNothingAndChangeNothing() {
    Audit audit = audit(4, 1, 6);
    assertThat(audit.ranges().audits()).allMatch(each -> each.judgement() == Judgement.TOO_FEW);
    assertThat(audit.verdict().ranges()).allMatch(text -> text.endsWith("too few bids to say."));
  }

  @Test
  void aBidKnownInPartIsCountedApart() {
    PastBid whole = bid(0, 1, new Random(1));
    Actual part = new Actual(Measure.PAINT, whole.lines().subList(0, 1), 3);
    PastBid partly =
        new PastBid(
            "part", null, "", "", whole.lines(), List.of(part), whole.costs(), whole.likely());
    RangeAudit audit = RangeAudit.of(Measure.PAINT, List.of(whole, partly));
    assertThat(audit.jobs()).hasSize(1);
    assertThat(audit.partly()).isEqualTo(1);
  }

  private static Audit audit(int jobs, double wider, long seed) {
    return Audit.of(bids(jobs, wider, seed), Catalogue.builtIn(), PaintTable.LOSS, UnitSystem.US);
  }

  private static List<PastBid> bids(int jobs, double wider, long seed) {
    Random random = new Random(seed);
    List<PastBid> bids = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      bids.add(bid(job, wider, random));
    }
    return bids;
  }

  private static PastBid bid(int job, double wider, Random random) {
    FilledBid filled =
        Estimator.fill(
            Bids.bid(
                Bids.line(ROOM, "Hall " + job, SURFACE, "cabinets", COATING, "lacquer", COUNT, 60),
                Bids.line(ROOM, "Attic " + job, SURFACE, "walls", COATING, "latex", AREA, 9000),
                Bids.line(ROOM, "Bath " + job, SURFACE, "walls", COATING, "latex", AREA, 3000)));
    JobHours hours = JobHours.of(filled);
    QuickRange range = QuickRange.of(filled, hours, 0);
    Map<Factor, Double> common = factors(wider * Math.sqrt(ASSUMED.common()), random);
    double paint = 0;
    double spray = 0;
    List<PastLine> lines = new ArrayList<>();
    for (FilledLine line : filled.lines().toList()) {
      Map<Factor, Double> own = factors(wider * Math.sqrt(1 - ASSUMED.common()), random);
      double stays = line.work().surface().stick() * line.work().surface().hit();
      double both =
          Math.max(stays, common.get(Factor.TRANSFER) * own.get(Factor.TRANSFER))
              * common.get(Factor.FILM)
              * own.get(Factor.FILM);
      double gallons = line.base(FilledColumn.PAINT);
      double trigger = line.base(FilledColumn.SPRAY);
      paint += gallons * both * common.get(Factor.KEPT) * own.get(Factor.KEPT);
      spray += trigger * both * common.get(Factor.TRIGGER) * own.get(Factor.TRIGGER);
      lines.add(
          new PastLine(
              line.work().coating().name(),
              line.work().surface().name(),
              "",
              gallons,
              line.base(FilledColumn.LABOUR),
              trigger,
              PastLine.Factors.NONE,
              Set.of()));
    }
    double took = hours.withSpray(filled.bid(), spray).number(JobFigure.TOTAL);
    return new PastBid(
        "job " + job,
        LocalDate.of(2023, 1, 2).plusDays(job),
        "",
        "",
        lines,
        List.of(new Actual(Measure.PAINT, lines, paint), new Actual(Measure.HOURS, lines, took)),
        UnitCosts.NONE,
        Map.of(
            Measure.PAINT,
            new Likely(range.jobGal(), range.linesGal(), ASSUMED),
            Measure.HOURS,
            new Likely(range.jobHours(), range.sprayHours(), ASSUMED)));
  }

  private static Map<Factor, Double> factors(double width, Random random) {
    Map<Factor, Double> factors = new EnumMap<>(Factor.class);
    for (Factor factor : Factor.values()) {
      factors.put(factor, Math.exp(width * ASSUMED.sigma(factor) * random.nextGaussian()));
    }
    return factors;
  }
}
