package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.catalogue.TipOnHand;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.TipCode;

/** The choice of the tip, against a search through all candidates and on cases of its own. */
class ChoiceTest {

  /** The rules of the choice, written down naively. */
  private static final class Search {
    private final PlainLine line;

    Search(RandomBids.Sample sample) {
      this.line = new PlainLine(sample.catalogue(), sample.line());
    }

    TipCode winner() {
      int from = line.joinery ? line.coating.joineryFromThou() : line.coating.orificeFromThou();
      TipCode usual = best(from, line.coating.orificeToThou());
      if (usual == null || score(usual)[0] > 0 || off(usual) > 0.25) {
        TipCode finer = best(line.coating.leastOrificeThou(), from - 1);
        if (finer != null && (usual == null || isBetterFilm(finer, usual))) {
          return finer;
        }
      }
      return usual;
    }

    private boolean isBetterFilm(TipCode one, TipCode two) {
      double[] a = score(one);
      double[] b = score(two);
      return a[0] < b[0] || (a[0] == b[0] && a[1] < b[1]);
    }

    private TipCode best(int from, int to) {
      List<TipCode> tips = new ArrayList<>();
      for (TipCode tip : available()) {
        if (tip.orificeThou() >= from && tip.orificeThou() <= to && isDriven(tip)) {
          tips.add(tip);
        }
      }
      TipCode best = null;
      for (TipCode tip : tips) {
        if (isFan(tip, tips) && (best == null || Arrays.compare(score(tip), score(best)) < 0)) {
          best = tip;
        }
      }
      return best;
    }

    private boolean isFan(TipCode tip, List<TipCode> tips) {
      double w = line.widthIn();
      double fan = line.fanIn(tip);
      if (line.narrow()) {
        List<Double> wide =
            tips.stream().map(line::fanIn).filter(each -> each >= 0.8 * w).sorted().toList();
        double widest = tips.stream().mapToDouble(line::fanIn).max().orElseThrow();
        return fan == (wide.isEmpty() ? widest : wide.get(0));
      }
      List<TipCode> fit =
          tips.stream()
              .filter(each -> each.fanDigit() <= line.surface.widestFanDigit())
              .filter(each -> Double.isNaN(w) || line.fanIn(each) <= w)
              .toList();
      double narrowest = tips.stream().mapToDouble(line::fanIn).min().orElseThrow();
      return fit.isEmpty() ? fan == narrowest : fit.contains(tip);
    }

    private List<TipCode> available() {
      if (line.tables.tipsOnHand().isEmpty()) {
        return line.tables.stockTips();
      }
      List<TipCode> tips = new ArrayList<>();
      for (TipOnHand tip : line.tables.tipsOnHand()) {
        String sprayer = line.line.text(InputColumn.SPRAYER);
        // the guards of the random tables: A seats on Small alone, B on any sprayer
        boolean guarded = tip.fit().equals("B") || sprayer.equals("Small");
        if (tip.count() >= 1 && guarded) {
          tips.add(tip.tip());
        }
      }
      return tips;
    }

    private boolean isDriven(TipCode tip) {
      double flow = line.gpm(tip.orificeThou());
      if (line.sprayer == null) {
        return true;
      }
      double guns = PlainLine.or(line.sprayer.guns(), 1);
      double reserve = line.setting(Setting.PUMP_RESERVE);
      return flow > 0
          && !(tip.orificeThou() > line.sprayer.greatestOrificeThou())
          && !(guns * flow * reserve > line.sprayer.greatestFlowGpm());
    }

    private double off(TipCode tip) {
      return Math.abs(Math.log(line.wetMil(tip) / line.targetMil()));
    }

    private double[] score(TipCode tip) {
      double wet = line.wetMil(tip);
      boolean inside =
          wet >= line.coating.wetMinMil() - 1e-9 && wet <= line.coating.wetMaxMil() + 1e-9;
      double pace = Math.abs(Math.log(line.speedInPerS(tip) / line.easyInPerS()));
      return new double[] {
        inside ? 0 : 1,
        off(tip) <= 0.05 ? 0 : Math.round(off(tip) / 0.005),
        -tip.fanDigit(),
        Math.round(pace / 0.005),
        tip.orificeThou()
      };
    }
  }

  @Test
  @Tag("long")
  void theRecommendedTipIsTheOneThatASearchThroughAllFinds() {
    // each path of the choice is walked
    assertThat(searched(3000)).allMatch(count -> count > 20);
  }

  @Test
  void aSearchThroughAllFindsTheRecommendedTipOfAFewLines() {
    assertThat(searched(100)).allMatch(count -> count > 0);
  }

  /**
   * How many of the lines take no tip, one below the usual range, and one whose film is outside.
   */
  private static List<Integer> searched(int lines) {
    RandomBids bids = new RandomBids(3);
    int none = 0;
    int below = 0;
    int outside = 0;
    for (int i = 0; i < lines; i++) {
      RandomBids.Sample sample = bids.next();
      FilledLine filled = sample.fill();
      Search search = new Search(sample);
      TipCode winner = search.winner();
      Setup setup = filled.recommended();

      assertThat(setup.tip()).as("%s", sample.line()).isEqualTo(winner);
      none += winner == null ? 1 : 0;
      below += setup.belowUsual() ? 1 : 0;
      outside += setup.inside() ? 0 : 1;
    }
    return List.of(none, below, outside);
  }

  private static Setup choose(Catalogue tables, Object... cells) {
    return Bids.fill(tables, Bids.line(cells)).recommended();
  }

  private static final Object[] WALLS = {
    InputColumn.SURFACE, "walls", InputColumn.COATING, "latex", InputColumn.AREA, 500
  };

  private static Object[] walls(Object... more) {
    Object[] all = Arrays.copyOf(WALLS, WALLS.length + more.length);
    System.arraycopy(more, 0, all, WALLS.length, more.length);
    return all;
  }

  @Test
  void onlyTipsOnHandAreChosenAndOnlyThoseThatAreThere() {
    Catalogue tables =
        Bids.with(
            Tables.TIPS_ON_HAND,
            List.of(
                Bids.row(0, "Tip", "517", "Count", 0),
                Bids.row(1, "Tip", "413", "Count", 1),
                Bids.row(2, "Tip", "415")));

    assertThat(choose(tables, walls()).tip().code()).isEqualTo("415");
  }

  @Test
  void aTipThatNoGuardTakesIsNotChosen() {
    Catalogue tables =
        Catalogue.builtIn()
            .with(
                Map.of(
                    Tables.TIPS_ON_HAND,
                    List.of(
                        Bids.row(0, "Tip", "517", "Fit", "A"),
                        Bids.row(1, "Tip", "415", "Fit", "b"),
                        Bids.row(2, "Tip", "515")),
                    Tables.GUARDS_ON_HAND,
                    List.of(
                        Bids.row(0, "Guard", "one", "Fits taken", "A", "Sprayer", "Big one"),
                        Bids.row(1, "Guard", "two", "Fits taken", "B; C"))),
                UnitSystem.US,
                new ArrayList<>());

    assertThat(choose(tables, walls(InputColumn.SPRAYER, "big ones")).tip().code())
        .isEqualTo("517");
    // a tip without a fit is not held back; 515 lays the target a little slowly
    assertThat(choose(tables, walls()).tip().code()).isEqualTo("515");
    // nor does a line take what another may, whose sprayer stands in no table
    Bid both =
        Bids.bid(
            tables,
            UnitSystem.US,
            Bids.line(walls()),
            Bids.line(walls(InputColumn.SPRAYER, "big ones")));
    assertThat(Estimator.fill(both).lines().map(line -> line.recommended().tip().code()))
        .containsExactly("515", "517");
  }

  @Test
  void withoutAnyTipTheTargetTheEasyPaceAndTheWidestFanAreAssumed() {
    Catalogue tables =
        Bids.with(
            Tables.TIPS_ON_HAND, List.of(Bids.row(0, "Tip", "539"), Bids.row(1, "Tip", "207")));
    FilledLine filled =
        Bids.fill(tables, Bids.line(walls(InputColumn.HEIGHT, 0.9))); // 10.8 in, not narrow

    assertThat(filled.recommended().isTip()).isFalse();
    assertThat(filled.figures().get(FilledColumn.TIP_CODE)).isEqualTo(new Figure.Word("none"));
    assertThat(filled.figures()).doesNotContainKey(FilledColumn.ORIFICE);
    assertThat(filled.base(FilledColumn.WET_FILM)).isCloseTo(4.5, within(1e-12));
    assertThat(filled.base(FilledColumn.SPEED)).isEqualTo(30);
    assertThat(filled.recommended().fanIn()).isEqualTo(10);
    assertThat(filled.base(FilledColumn.PAINT)).isPositive();
    assertThat(filled.isCounted()).isTrue();
  }

  @Test
  void narrowWorkWithoutATipTakesTheFanThatCoversIt() {
    Catalogue tables = Bids.with(Tables.TIPS_ON_HAND, List.of(Bids.row(0, "Tip", "539")));

    // 5.5 in: the narrowest fan of at least 4.4 in is 6 in, although 4 in would be inside
    assertThat(
            choose(
                    tables,
                    InputColumn.SURFACE,
                    "trim",
                    InputColumn.COATING,
                    "latex",
                    InputColumn.LENGTH,
                    10,
                    InputColumn.GIRTH,
                    5.5)
                .fanIn())
        .isEqualTo(6);
  }

  /** 254 mm is 10 in, narrow; 203.2 mm takes a fan of 8 in, as does 8 in. */
  @Test
  void aLastBitOfAWidthDoesNotChangeTheFan() {
    for (double inches = 1; inches <= 30; inches++) {
      Object[] same = {InputColumn.SURFACE, "columns", InputColumn.COATING, "latex"};
      Object[] us = Arrays.copyOf(same, 8);
      us[4] = InputColumn.LENGTH;
      us[5] = 10;
      us[6] = InputColumn.GIRTH;
      us[7] = 2 * inches;
      Object[] metric = us.clone();
      metric[5] = 3.048;
      metric[7] = 2 * inches * 25.4;
      Setup one = Bids.fill(Bids.line(us)).recommended();
      Setup two = Bids.fill(Bids.line(UnitSystem.METRIC, metric)).recommended();

      assertThat(two.tip()).as("%s in", inches).isEqualTo(one.tip());
    }
  }

  @Test
  void aBucketTestReplacesTheCoefficientForItsOrificeAndCoatingOnly() {
    Catalogue tables =
        Bids.with(
            Tables.BUCKET_TESTS,
            List.of(
                Bids.row(0, "Tip", "417", "Coating", "emulsion", "Pressure", 1800, "Flow", 0.3)));
    FilledLine latex = Bids.fill(tables, Bids.line(walls(InputColumn.TIP, "517")));
    FilledLine primer =
        Bids.fill(
            tables,
            Bids.line(
                InputColumn.SURFACE, "walls",
                InputColumn.COATING, "primer",
                InputColumn.AREA, 500,
                InputColumn.TIP, "517"));

    assertThat(latex.planned().gun().flowGpm())
        .isCloseTo(0.3 * Math.sqrt(2000 / 1800.0), within(1e-12));
    assertThat(primer.planned().gun().flowGpm()).isCloseTo(0.2704587746, within(1e-9));
  }

  @Test
  void thePressureIsTheLinesInsideTheRangeAndTheUsualOutside() {
    assertThat(Bids.fill(Bids.line(walls(InputColumn.PRESSURE, 1000))).setPsi()).isEqualTo(1000);
    assertThat(Bids.fill(Bids.line(walls(InputColumn.PRESSURE, 3000))).setPsi()).isEqualTo(3000);
    assertThat(Bids.fill(Bids.line(walls(InputColumn.PRESSURE, 999))).setPsi()).isEqualTo(2000);
    assertThat(Bids.fill(Bids.line(walls(InputColumn.PRESSURE, 3001))).setPsi()).isEqualTo(2000);
    assertThat(Bids.fill(Bids.line(walls())).setPsi()).isEqualTo(2000);
    Catalogue rated =
        Bids.with(
            Tables.SPRAYERS, List.of(Bids.row(0, "Sprayer", "Old", "Greatest pressure", 1500)));
    assertThat(Bids.fill(rated, Bids.line(walls(InputColumn.SPRAYER, "old"))).setPsi())
        .isEqualTo(1500);
  }

  private static final Catalogue HOSED =
      Bids.with(
          Tables.SPRAYERS,
          List.of(
              Bids.row(
                  0,
                  "Sprayer",
                  "Long",
                  "Hose bore",
                  0.25,
                  "Hose length",
                  100,
                  "Rise",
                  10,
                  "Greatest pressure",
                  2400)));

  private static FilledLine atGun(Object pressure) {
    BidLine line = Bids.line(walls(InputColumn.SPRAYER, "long", InputColumn.PRESSURE, pressure));
    return Bids.fill(
        HOSED, new BidLine(line.sheet(), line.row(), line.system(), true, line.values()));
  }

  @Test
  void aPressureWantedAtTheGunSetsThePumpHigherByTheLossAndTheHeight() {
    FilledLine filled = atGun(1800);
    GunFlow.At gun = filled.recommended().gun();
    double headPsi = 1300 * 9.80665 * 10 * 0.3048 / 6894.757293168361;

    assertThat(gun.gunPsi()).isEqualTo(1800);
    assertThat(gun.lossPsi()).isPositive();
    assertThat(filled.setPsi()).isCloseTo(1800 + gun.lossPsi() + headPsi, within(1e-9));
    assertThat(filled.base(FilledColumn.PRESSURE)).isEqualTo(filled.setPsi());
  }

  @Test
  void aGunPressureBeyondThePumpsRatingBecomesWhatTheRatingLeaves() {
    FilledLine filled = atGun(2350);
    GunFlow.At gun = filled.recommended().gun();

    assertThat(filled.setPsi()).isEqualTo(2400);
    assertThat(gun.gunPsi()).isLessThan(2350);
    assertThat(gun.gunPsi() + gun.lossPsi())
        .isCloseTo(2400 - 1300 * 9.80665 * 3.048 / 6894.757293168361, within(1e-6));
  }

  @Test
  void aUsualPressureIsSetAtThePumpEvenUnderAHeadingOfTheGun() {
    FilledLine stated = atGun(2000);
    FilledLine blank = atGun("");
    FilledLine outside = atGun(4000);

    assertThat(stated.recommended().gun().gunPsi()).isEqualTo(2000);
    assertThat(blank.setPsi()).isEqualTo(2000);
    assertThat(blank.recommended().gun().gunPsi()).isLessThan(2000);
    assertThat(outside.recommended().gun()).isEqualTo(blank.recommended().gun());
  }

  /** One at the gun and one at the pump stand under each other and keep their own flow. */
  /** One cell after another of a line is that of another line, and both stand in one bid. */
  @Test
  void linesOfOneBidDoNotShareASetupThatIsNotTheirs() {
    RandomBids bids = new RandomBids(41);
    for (int i = 0; i < 60; i++) {
      RandomBids.Sample sample = bids.next();
      BidLine other = bids.line();
      List<BidLine> alike = new ArrayList<>(List.of(sample.line()));
      other
          .values()
          .forEach((column, value) -> alike.add(Bids.changed(sample.line(), column, value)));
      Bid together = Bids.bid(sample.catalogue(), sample.basis(), alike.toArray(BidLine[]::new));
      List<Setup> alone = alike.stream().map(line -> sample.fill(line).recommended()).toList();
      assertThat(Estimator.fill(together).lines().map(FilledLine::recommended))
          .as("sample %s: %s", i, sample.line())
          .isEqualTo(alone);
    }
  }

  @Test
  void linesDoNotShareAFlowThatIsNotTheirs() {
    BidLine gun = atGun(2000).line();
    BidLine pump = new BidLine("Bid", 6, gun.system(), false, gun.values());
    List<FilledLine> filled =
        Estimator.fill(Bids.bid(HOSED, gun.system(), gun, pump)).lines().toList();

    assertThat(filled.get(0).recommended().gun().gunPsi()).isEqualTo(2000);
    assertThat(filled.get(1).recommended().gun().gunPsi()).isLessThan(2000);
  }

  @Test
  void aHeightThatTakesAllThePressureLeavesNoTipAndStillCosts() {
    FilledLine filled = Bids.fill(WorkedLines.tower(), WorkedLines.HIGH_WALLS);

    assertThat(filled.recommended().isTip()).isFalse();
    assertThat(filled.planned().gun().flowGpm()).isZero();
    assertThat(filled.planned().wetMil()).isZero();
    assertThat(filled.followed()).isSameAs(filled.recommended());
    assertThat(filled.base(FilledColumn.PAINT)).isPositive();
    assertThat(filled.base(FilledColumn.LABOUR)).isPositive();
  }

  @Test
  void figuresFollowThePlannedTipOnlyWhereThereIsOne() {
    Catalogue planned = Bids.settings("Figures follow", "planned");
    FilledLine with = Bids.fill(planned, Bids.line(walls(InputColumn.TIP, "513")));
    FilledLine without = Bids.fill(planned, Bids.line(walls()));
    FilledLine unreadable = Bids.fill(planned, Bids.line(walls(InputColumn.TIP, "017")));
    FilledLine shown = Bids.fill(Bids.line(walls(InputColumn.TIP, "513")));

    assertThat(with.followed()).isSameAs(with.planned());
    assertThat(with.figures().get(FilledColumn.TIP_CODE).number()).isEqualTo(517);
    assertThat(with.base(FilledColumn.WET_FILM)).isEqualTo(with.planned().wetMil(), within(1e-12));
    assertThat(without.followed()).isSameAs(without.recommended());
    assertThat(unreadable.followed()).isSameAs(unreadable.recommended());
    assertThat(shown.followed()).isSameAs(shown.recommended());
    assertThat(shown.planned()).isEqualTo(with.planned());
  }

  /**
   * 3.5 mil wet with strokes overlapped by 70 %: at the fastest stroke 515 lays 5.25 mil, too far
   * off; 511 lays the target at 29 in/s.
   */
  @Test
  void aFilmThatNoUsualTipLaysIsLookedForBelowTheUsualRange() {
    FilledLine filled =
        Bids.fill(
            Bids.settings("Overlap", 0.7),
            Bids.line(walls(InputColumn.SPECIFIED_FILM, 1.26, InputColumn.COATS, 1)));

    assertThat(filled.recommended().tip().code()).isEqualTo("511");
    assertThat(filled.recommended().belowUsual()).isTrue();
    assertThat(filled.recommended().inside()).isTrue();
  }
}
