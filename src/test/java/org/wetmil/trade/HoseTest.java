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

class HoseTest {

  static List<Published.Row> waterColumns() {
    return Published.rows("water-column.csv");
  }

  @ParameterizedTest
  @MethodSource("waterColumns")
  void heightTakesThePressureOfAWaterColumn(Published.Row row) {
    row.check(new Hose(0.25, 0, row.number("riseFt"), 0.9982, 0.001).headPsi());
  }

  /** Textbook twin of Hagen-Poiseuille: Darcy-Weisbach with a friction factor of 64 / Re. */
  @Test
  void theLossIsThatOfDarcyAndWeisbachInLaminarFlow() {
    Random random = new Random(64);
    for (int i = 0; i < 500; i++) {
      Hose hose = randomHose(random);
      double gpm = 0.05 + random.nextDouble();
      double boreM = Unit.INCH.to(Unit.METRE, hose.boreIn());
      double lengthM = Unit.FOOT.to(Unit.METRE, hose.lengthFt());
      double speed = hose.shearPerS(gpm) * boreM / 8;
      double kgPerM3 = hose.densityKgPerL() * 1000;
      double pascal = 64 / hose.reynolds(gpm) * lengthM / boreM * kgPerM3 * speed * speed / 2;
      assertThat(hose.lossPsi(gpm) * Unit.PSI.si() / pascal).isCloseTo(1, within(1e-12));
    }
  }

  /** With a tip whose flow is k sqrt(p) the balance is a quadratic in sqrt(p). */
  @Test
  void pressureAndFlowAreThoseOfTheClosedForm() {
    Random random = new Random(8);
    for (int i = 0; i < 500; i++) {
      Hose hose = randomHose(random);
      double pumpPsi = 500 + 2500 * random.nextDouble();
      double gpmAtOnePsi = Flow.gpm(0.8, 9 + 24 * random.nextDouble(), 1, hose.densityKgPerL());

      Hose.State state = hose.solve(pumpPsi, psi -> gpmAtOnePsi * Math.sqrt(psi));

      double half = hose.lossPsi(gpmAtOnePsi) / 2;
      double root = Math.sqrt(half * half + pumpPsi - hose.headPsi()) - half;
      assertThat(state.gunPsi()).isCloseTo(root * root, within(1e-7));
      assertThat(state.gunPsi() + state.lossPsi() + state.headPsi())
          .isCloseTo(pumpPsi, within(1e-6));
      assertThat(state.flowGpm()).isCloseTo(gpmAtOnePsi * root, within(1e-9));
    }
  }

  @Test
  void withoutAHoseTheGunHasThePumpsPressure() {
    Hose none = new Hose(0.25, 0, 0, 1.3, 0.2);
    Hose.State state = none.solve(2000, psi -> Flow.gpm(0.8, 17, psi, 1.3));
    assertThat(state.gunPsi()).isEqualTo(2000);
    assertThat(state.lossPsi()).isZero();
    assertThat(state.flowGpm()).isEqualTo(Flow.gpm(0.8, 17, 2000, 1.3));
  }

  @Test
  void aGunBelowThePumpGainsPressure() {
    Hose down = new Hose(0.25, 50, -30, 1.3, 0.2);
    Hose up = new Hose(0.25, 50, 30, 1.3, 0.2);
    assertThat(gunPsi(down)).isGreaterThan(gunPsi(up));
    assertThat(down.headPsi()).isEqualTo(-up.headPsi());
  }

  @Test
  void aPumpThatCannotLiftTheCoatingGivesNoFlow() {
    Hose tower = new Hose(0.25, 200, 100, 1.4, 1.0);
    Hose.State state = tower.solve(60, psi -> Flow.gpm(0.8, 17, psi, 1.4));
    assertThat(state.flowGpm()).isZero();
    assertThat(state.gunPsi()).isZero();
    assertThat(state.lossPsi()).isZero();

    assertThat(tower.solve(tower.headPsi(), psi -> Flow.gpm(0.8, 17, psi, 1.4)).flowGpm()).isZero();
  }

  @Test
  void aThinCoatingInANarrowHoseIsSaidNotToRunLaminar() {
    Hose.State thin =
        new Hose(0.1875, 50, 0, 0.9, 0.002).solve(1200, psi -> Flow.gpm(0.8, 21, psi, 0.9));
    Hose.State latex =
        new Hose(0.25, 50, 0, 1.3, 0.2).solve(2000, psi -> Flow.gpm(0.8, 17, psi, 1.3));
    assertThat(thin.laminar()).isFalse();
    assertThat(latex.laminar()).isTrue();
  }

  /** The range that the starting viscosities are meant for (house): 300 to 1500 1/s. */
  @Test
  void aUsualHoseShearsTheCoatingAtTheRateTheViscositiesAreFor() {
    Hose.State latex =
        new Hose(0.25, 50, 0, 1.3, 0.2).solve(2000, psi -> Flow.gpm(0.8, 17, psi, 1.3));
    assertThat(latex.shearPerS()).isBetween(300.0, 1500.0);
  }

  /** A quarter-inch hose: pi/4 x 0.25² x 600 in³ is 29.45 in³, 0.1275 gal. */
  @Test
  void aHoseHoldsItsBoreTimesItsLength() {
    assertThat(new Hose(0.25, 50, 0, 1.3, 0.2).volumeGal()).isCloseTo(0.1275, within(0.00005));
  }

  private static double gunPsi(Hose hose) {
    return hose.solve(2000, psi -> Flow.gpm(0.8, 17, psi, 1.3)).gunPsi();
  }

  private static Hose randomHose(Random random) {
    return new Hose(
        0.1875 + 0.2 * random.nextDouble(),
        25 + 200 * random.nextDouble(),
        -30 + 60 * random.nextDouble(),
        0.9 + 0.5 * random.nextDouble(),
        0.02 + random.nextDouble());
  }
}
