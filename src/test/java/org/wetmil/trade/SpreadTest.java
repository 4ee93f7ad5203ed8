package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;
import org.wetmil.quantity.Unit;

class SpreadTest {

  static List<Published.Row> constants() {
    return Published.rows("coverage-constant.csv");
  }

  static List<Published.Row> examples() {
    return Published.rows("coverage-examples.csv");
  }

  static List<Published.Row> spreads() {
    return Published.rows("wet-film-of-a-spread.csv");
  }

  static List<Published.Row> georgia() {
    return Published.rows("georgia-transfer-efficiency.csv");
  }

  static List<Published.Row> federal() {
    return Published.rows("cfr-transfer-efficiency.csv");
  }

  @ParameterizedTest
  @MethodSource("constants")
  void aGallonOfPureSolidsAtOneMilCoversThePublishedArea(Published.Row row) {
    row.check(Spread.theoreticalFt2PerGal(1, 1));
  }

  @ParameterizedTest
  @MethodSource("examples")
  void printedExamplesComeOutAsPrinted(Published.Row row) {
    double solids = row.number("volumeSolids");
    double film = row.number("dryFilm");
    boolean isMetric = row.text("unit").equals("m2/L");
    double theoretical =
        isMetric
            ? metric(Spread.theoreticalFt2PerGal(solids, Unit.MICROMETRE.to(Unit.MIL, film)))
            : Spread.theoreticalFt2PerGal(solids, film);
    double exact = isMetric ? 1000 : Constants.SPREAD_FT2_MIL_PER_GAL.value();
    double practical =
        Spread.practicalFt2PerGal(theoretical, row.number("transferEfficiency"), 0, 1);
    row.check(practical * row.number("constant") / exact);
  }

  @ParameterizedTest
  @MethodSource("spreads")
  void aSpreadImpliesItsWetFilm(Published.Row row) {
    row.check(Spread.theoreticalFt2PerGal(1, row.number("ft2PerGal")));
  }

  @ParameterizedTest
  @MethodSource("georgia")
  void spreadFallsWithTheTransferEfficiencyAsTheTipSheetShows(Published.Row row) {
    row.check(
        Spread.practicalFt2PerGal(
            row.number("idealFt2PerGal"), row.number("transferEfficiency"), 0, 1));
  }

  @ParameterizedTest
  @MethodSource("federal")
  void gallonsScaleAsOneOverTheTransferEfficiency(Published.Row row) {
    double te = row.number("transferEfficiency");
    double atAll = Spread.gallons(1000, 2, Spread.practicalFt2PerGal(400, 1, 0.05, 1.15));
    double atTe = Spread.gallons(1000, 2, Spread.practicalFt2PerGal(400, te, 0.05, 1.15));
    assertThat(atTe * te).isCloseTo(atAll, within(1e-12));
  }

  /** From the airless figure of 40 CFR 60.313(c) to that of 60.453(b). */
  @Test
  void theTwoFederalAirlessFiguresAreAlmostHalfTheGallonsApart() {
    double low = Spread.gallons(1000, 1, Spread.practicalFt2PerGal(400, 0.25, 0, 1));
    double high = Spread.gallons(1000, 1, Spread.practicalFt2PerGal(400, 0.45, 0, 1));
    assertThat(1 - high / low).isCloseTo(0.444, within(0.0005));
  }

  @Test
  void everyCoatTakesItsGallons() {
    assertThat(Spread.gallons(1000, 1, 250)).isEqualTo(4);
    assertThat(Spread.gallons(1000, 2, 250)).isEqualTo(8);
  }

  @Test
  void doublingTheFilmHalvesTheSpread() {
    Random random = new Random(1604);
    for (int i = 0; i < 1000; i++) {
      double solids = 0.1 + 0.9 * random.nextDouble();
      double dryMil = 0.5 + 10 * random.nextDouble();
      assertThat(Spread.theoreticalFt2PerGal(solids, 2 * dryMil))
          .isEqualTo(Spread.theoreticalFt2PerGal(solids, dryMil) / 2);
    }
  }

  @Test
  void usAndMetricSpreadAreTheSameFigureInOtherUnits() {
    double micrometre = Unit.MIL.to(Unit.MICROMETRE, 5);
    assertThat(metric(Spread.theoreticalFt2PerGal(0.65, 5)))
        .isCloseTo(1000 * 0.65 / micrometre, within(1e-12));
  }

  private static double metric(double ft2PerGal) {
    return Unit.SQUARE_FOOT_PER_GALLON.to(Unit.SQUARE_METRE_PER_LITRE, ft2PerGal);
  }

  @Test
  void yieldFoundOnAJobThatWentAsPlannedIsThePlannedOne() {
    double planned = Yield.planned(0.65, 0.05, 1.15);
    double spread =
        Spread.practicalFt2PerGal(Spread.theoreticalFt2PerGal(0.36, 1.6), 0.65, 0.05, 1.15);
    double used = Spread.gallons(2400, 2, spread);
    double found = Yield.found(Yield.theoreticalGallons(2400, 2, 1.6, 0.36), used);
    assertThat(found).isCloseTo(planned, within(1e-12));
    assertThat(Yield.impliedTransferEfficiency(found, 0.05, 1.15)).isCloseTo(0.65, within(1e-12));
  }
}
