package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.TipCode;

/** What must hold for every line, whatever the tables say. */
class LawsTest {
  private static final int LINES = 2000;

  /** Conservation of volume: what leaves the gun is what the bid buys, less the waste. */
  @Test
  @Tag("long")
  void flowTimesTriggerOnTimeIsThePaintSprayed() {
    RandomBids bids = new RandomBids(4);
    int checked = 0;
    for (int i = 0; i < LINES; i++) {
      RandomBids.Sample sample = bids.next();
      FilledLine filled = sample.fill();
      double paint = filled.base(FilledColumn.PAINT);
      if (paint > 0) {
        PlainLine plain = new PlainLine(sample.catalogue(), sample.line());
        double waste = sample.catalogue().number(filled.work().waste());
        double sprayedGal = paint * (1 + plain.thinner) * (1 - waste);
        double minutes =
            filled.base(FilledColumn.SPRAY)
                / plain.heightFactor()
                * 60
                * plain.surface.triggerShare();

        assertThat(filled.base(FilledColumn.FLOW) * minutes)
            .as("%s", sample.line())
            .isCloseTo(sprayedGal, withinPercentage(1e-7));
        checked++;
      }
    }
    assertThat(checked).isGreaterThan(LINES / 3);
  }

  /** A line in feet and the same in metres, on Basis of either family. */
  @Test
  @Tag("long")
  void aLineInMetresIsTheLineInFeet() {
    RandomBids bids = new RandomBids(5);
    for (int i = 0; i < LINES; i++) {
      RandomBids.Sample sample = bids.next();
      FilledLine us = sample.fill(in(UnitSystem.US, sample.line()));
      FilledLine metric = sample.fill(in(UnitSystem.METRIC, sample.line()));

      for (FilledColumn column : FilledColumn.values()) {
        double one = us.base(column);
        double two = metric.base(column);
        boolean same =
            (Double.isNaN(one) || one == 0)
                ? Double.isNaN(two) || Math.abs(two) < 1e-9
                : Math.abs(two / one - 1) < 1e-9 || Math.abs(two - one) < 1e-9;
        assertThat(same).as("%s %s %s of %s", column, one, two, sample.line()).isTrue();
      }
    }
  }

  private static BidLine in(UnitSystem system, BidLine line) {
    Map<InputColumn, InputValue> values = new EnumMap<>(line.values());
    values.replaceAll(
        (column, value) -> {
          Unit unit = column.quantity().unit(system);
          double cell = column.quantity().base().to(unit, value.number());
          return value.hasNumber()
              ? new InputValue(
                  value.state(),
                  value.raw(),
                  value.number(),
                  value.low(),
                  value.high(),
                  cell,
                  unit,
                  "")
              : value;
        });
    return new BidLine(line.sheet(), line.row(), system, line.pressureAtGun(), values);
  }

  @Test
  @Tag("long")
  void paintAndHoursGrowWithTheArea() {
    RandomBids bids = new RandomBids(6);
    for (int i = 0; i < LINES; i++) {
      RandomBids.Sample sample = bids.next();
      double before = 0;
      double hours = 0;
      for (double area : new double[] {100, 250, 251, 4000}) {
        Map<InputColumn, InputValue> values = new EnumMap<>(sample.line().values());
        values.put(
            InputColumn.AREA,
            new InputValue(
                InputValue.State.READ, "", area, area, area, area, Unit.SQUARE_FOOT, ""));
        values.remove(InputColumn.OPENINGS);
        FilledLine filled =
            sample.fill(new BidLine("Bid", 5, sample.line().system(), false, values));
        if (filled.isSetUp()) {
          assertThat(filled.base(FilledColumn.PAINT)).isGreaterThan(before);
          assertThat(filled.base(FilledColumn.LABOUR)).isGreaterThan(hours);
          before = filled.base(FilledColumn.PAINT);
          hours = filled.base(FilledColumn.LABOUR);
        }
      }
    }
  }

  private static FilledLine walls(Catalogue tables, Object... more) {
    Object[] cells =
        Arrays.copyOf(
            new Object[] {
              InputColumn.SURFACE, "walls", InputColumn.COATING, "latex", InputColumn.AREA, 800
            },
            6 + more.length);
    System.arraycopy(more, 0, cells, 6, more.length);
    return Bids.fill(tables, Bids.line(cells));
  }

  /** 1.26 mil dry is 3.5 mil wet, 2.52 is 7: both ends of what latex takes. */
  @Test
  void doubleTheFilmIsHalfTheSpread() {
    Catalogue tables = Catalogue.builtIn();
    FilledLine thin = walls(tables, InputColumn.COATS, 1, InputColumn.SPECIFIED_FILM, 1.26);
    FilledLine thick = walls(tables, InputColumn.COATS, 1, InputColumn.SPECIFIED_FILM, 2.52);

    double films = thick.base(FilledColumn.WET_FILM) / thin.base(FilledColumn.WET_FILM);
    assertThat(films).isCloseTo(2, within(1e-12));
    assertThat(thin.base(FilledColumn.SPREAD) / thick.base(FilledColumn.SPREAD))
        .isCloseTo(2, within(1e-12));
    assertThat(thick.base(FilledColumn.PAINT) / thin.base(FilledColumn.PAINT))
        .isCloseTo(2, within(1e-12));
  }

  /** Same orifice at one pace: 317 lays 10/6 of what 517 lays. */
  @Test
  void filmIsInverseToTheFan() {
    Catalogue tables =
        Bids.settings(
            "Figures follow",
            "Planned",
            "Broad slowest",
            30,
            "Broad easy",
            30,
            "Broad fastest",
            30);
    double narrow = walls(tables, InputColumn.TIP, "317").base(FilledColumn.WET_FILM);
    double wide = walls(tables, InputColumn.TIP, "517").base(FilledColumn.WET_FILM);

    assertThat(narrow / wide).isCloseTo(10 / 6.0, within(1e-12));
  }

  @Test
  void thinnerChangesThePaceAndNotTheSolidsThatAGallonLeaves() {
    FilledLine plain = walls(Catalogue.builtIn());
    FilledLine thinned = walls(Catalogue.builtIn(), InputColumn.THINNER, 0.25);

    double plainSolids = plain.base(FilledColumn.SPREAD) * plain.base(FilledColumn.DRY_FILM);
    double thinnedSolids = thinned.base(FilledColumn.SPREAD) * thinned.base(FilledColumn.DRY_FILM);
    assertThat(thinnedSolids).isCloseTo(plainSolids, within(1e-9));
  }

  /** The trade's own form of the film: 19,250 gpm / (in x ft/min), twice that half overlapped. */
  @Test
  void filmAgreesWithTheFormOfTheTrade() {
    FilledLine filled = walls(Catalogue.builtIn());
    double feet = filled.base(FilledColumn.SPEED) * 5;
    double onePass = 19_250 * filled.base(FilledColumn.FLOW) / (10 * feet);

    assertThat(filled.base(FilledColumn.WET_FILM)).isCloseTo(2 * onePass * 0.7, within(1e-12));
  }

  /** The limits belong to the lower step, in feet and in the metres that they are. */
  @ParameterizedTest
  @CsvSource({
    "US, 10, 1.0",
    "US, 10.01, 1.15",
    "US, 14, 1.15",
    "US, 14.01, 1.35",
    "US, 20, 1.35",
    "US, 20.01, 1.6",
    "METRIC, 3.048, 1.0",
    "METRIC, 3.05, 1.15",
    "METRIC, 4.2672, 1.15",
    "METRIC, 4.27, 1.35",
    "METRIC, 6.096, 1.35",
    "METRIC, 6.1, 1.6"
  })
  void heightLimitsAreInclusive(UnitSystem system, double height, double factor) {
    for (UnitSystem basis : UnitSystem.values()) {
      BidLine line =
          Bids.line(
              system,
              InputColumn.SURFACE,
              "floor",
              InputColumn.COATING,
              "latex",
              InputColumn.AREA,
              100,
              InputColumn.HEIGHT,
              height);
      BidLine low =
          Bids.line(
              system,
              InputColumn.SURFACE,
              "floor",
              InputColumn.COATING,
              "latex",
              InputColumn.AREA,
              100);
      Catalogue tables = Catalogue.builtIn();
      double high = Estimator.fill(Bids.bid(tables, basis, line)).total(FilledColumn.SPRAY);
      double flat = Estimator.fill(Bids.bid(tables, basis, low)).total(FilledColumn.SPRAY);

      assertThat(high / flat).isCloseTo(factor, within(1e-12));
    }
  }

  @Test
  void factorsOfTheUnitsAreShortWhereTheyAreExact() {
    assertThat(UnitFactor.FILM.value(UnitSystem.US)).isEqualTo(3850);
    assertThat(UnitFactor.PACE.value(UnitSystem.US)).isEqualTo(25);
    assertThat(UnitFactor.PACE.value(UnitSystem.METRIC)).isEqualTo(0.36);
    assertThat(UnitFactor.SPREAD.value(UnitSystem.METRIC)).isEqualTo(1000);
    assertThat(UnitFactor.SPREAD.value(UnitSystem.US)).isCloseTo(231_000 / 144.0, within(1e-9));
    assertThat(UnitFactor.FILM.value(UnitSystem.US)).isEqualTo(19_250 / 5.0);
  }

  @Test
  void theFanGrowsWithTheDistance() {
    FilledLine filled = walls(Bids.settings("Distance", 15), InputColumn.TIP, "417");

    assertThat(filled.planned().fanIn()).isCloseTo(10, within(1e-12));
    assertThat(filled.planned().tip()).isEqualTo(new TipCode(4, 17));
    assertThat(Quantity.FAN_WIDTH.shown(filled.planned().fanIn(), UnitSystem.METRIC))
        .isCloseTo(25.4, within(1e-12));
  }
}
