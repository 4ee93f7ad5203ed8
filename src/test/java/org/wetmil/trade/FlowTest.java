package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;

class FlowTest {
  /** Water at 20 C. */
  private static final double WATER_KG_PER_L = 0.9982;

  static List<Published.Row> sixteenthInch() {
    return Published.rows("nozzle-discharge-sixteenth.csv");
  }

  static List<Published.Row> jets() {
    return Published.rows("jet-velocity.csv");
  }

  static List<Published.Row> smallOrifices() {
    return Published.rows("small-orifice-bracket.csv");
  }

  static List<Published.Row> irrigation() {
    return Published.rows("irrigation-nozzles.csv");
  }

  static Stream<List<Published.Row>> irrigationBySize() {
    return grouped("sixtyFourths");
  }

  static Stream<List<Published.Row>> irrigationByPressure() {
    return grouped("psi");
  }

  @ParameterizedTest
  @MethodSource("sixteenthInch")
  void waterThroughASixteenthOfAnInchFlowsAsHandbooksPrint(Published.Row row) {
    row.check(Flow.theoreticalGpm(62.5, row.number("psi"), WATER_KG_PER_L));
  }

  @ParameterizedTest
  @MethodSource("jets")
  void waterLeavesAtThePublishedSpeed(Published.Row row) {
    double areaFt2 = Math.PI / 4 / 144;
    double gpm = Flow.theoreticalGpm(1000, row.number("psi"), WATER_KG_PER_L);
    row.check(gpm * 231 / 1728 / 60 / areaFt2);
  }

  @Test
  void theOrificeLawHasThePublishedConstants() {
    for (Published.Row row : Published.rows("nozzle-law-constants.csv")) {
      boolean isByHead = row.text("law").equals("head");
      double psi = isByHead ? new Hose(1, 0, 1, WATER_KG_PER_L, 0.001).headPsi() : 1;
      row.check(Flow.theoreticalGpm(1000, psi, WATER_KG_PER_L));
    }
  }

  @ParameterizedTest
  @MethodSource("smallOrifices")
  void smallOrificesLieInTheBracketOfTheTextbookCoefficients(Published.Row row) {
    row.check(
        Flow.gpm(
            row.number("dischargeCoefficient"), row.number("orificeThou"), 2000, WATER_KG_PER_L));
  }

  /** A well-shaped nozzle has 0.95 to 1 in textbooks; no real one passes the theoretical flow. */
  @ParameterizedTest
  @MethodSource("irrigation")
  void measuredNozzlesPassALittleLessThanTheTheoreticalFlow(Published.Row row) {
    double orificeThou = row.number("sixtyFourths") / 64 * 1000;
    assertThat(
            Flow.dischargeCoefficient(
                row.number("gpm"), orificeThou, row.number("psi"), WATER_KG_PER_L))
        .isBetween(0.95, 1.0);
  }

  /** The law says 0.5; a twentieth of that leaves room for a table of three figures. */
  @ParameterizedTest
  @MethodSource("irrigationBySize")
  void measuredFlowGoesWithTheRootOfThePressure(List<Published.Row> size) {
    assertThat(exponent(size, "psi")).isCloseTo(0.5, within(0.025));
  }

  @ParameterizedTest
  @MethodSource("irrigationByPressure")
  void measuredFlowGoesWithTheSquareOfTheDiameter(List<Published.Row> pressure) {
    assertThat(exponent(pressure, "sixtyFourths")).isCloseTo(2, within(0.1));
  }

  @Test
  void flowGoesWithTheSquareOfTheDiameterAndTheRootOfThePressure() {
    Random random = new Random(17);
    for (int i = 0; i < 1000; i++) {
      double thou = 7 + 30 * random.nextDouble();
      double psi = 500 + 3000 * random.nextDouble();
      double factor = 0.5 + 2 * random.nextDouble();
      double flow = Flow.gpm(0.8, thou, psi, 1.3);
      assertThat(Flow.gpm(0.8, thou * factor, psi, 1.3) / flow)
          .isCloseTo(factor * factor, within(1e-12));
      assertThat(Flow.gpm(0.8, thou, psi * factor, 1.3) / flow)
          .isCloseTo(Math.sqrt(factor), within(1e-12));
    }
  }

  @Test
  void paintFlowsLessThanWaterByTheRootOfItsDensity() {
    double water = Flow.gpm(0.8, 17, 2000, 1.0);
    assertThat(Flow.gpm(0.8, 17, 2000, 1.3) / water).isCloseTo(0.877, within(0.0005));
  }

  @Test
  void aBucketTestAtItsOwnPressureIsTheFlow() {
    assertThat(Flow.bucketTestGpm(0.31, 1800, 1800)).isEqualTo(0.31);
    assertThat(Flow.bucketTestGpm(0.31, 1000, 3000) / 0.31).isCloseTo(1.732, within(0.0005));
  }

  @Test
  void theCoefficientFromABucketTestGivesItsFlowBack() {
    double cd = Flow.dischargeCoefficient(0.27, 17, 2000, 1.3);
    assertThat(Flow.gpm(cd, 17, 2000, 1.3)).isCloseTo(0.27, within(1e-15));
  }

  @Test
  void thinnerMovesTheDensityTowardsItsOwn() {
    assertThat(Flow.thinnedKgPerL(1.3, 0, 1.0)).isEqualTo(1.3);
    assertThat(Flow.thinnedKgPerL(1.3, 1, 1.0)).isCloseTo(1.15, within(1e-12));
    assertThat(Flow.thinnedKgPerL(1.15, 0.1, 0.8)).isCloseTo(1.23 / 1.1, within(1e-12));
  }

  /** The worked line of the extension bulletin, 3/16 in at 40 psi, with a textbook coefficient. */
  @Test
  void aRealWaterNozzleFlowsByItsCoefficient() {
    assertThat(Flow.gpm(0.97, 187.5, 40, WATER_KG_PER_L)).isCloseTo(6.41, within(0.05));
  }

  @Test
  void noPressureNoFlow() {
    assertThat(Flow.gpm(0.8, 17, 0, 1.3)).isZero();
  }

  @Test
  void aFigureThatCannotBeIsAFaultThatNamesIt() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Flow.gpm(1.2, 17, 2000, 1.3))
        .withMessage("dischargeCoefficient must be above 0 and at most 1, but is 1.2");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Flow.gpm(0.8, 17, Double.NaN, 1.3))
        .withMessage("gunPsi must be finite and at least 0, but is NaN");
  }

  private static Stream<List<Published.Row>> grouped(String column) {
    return irrigation().stream()
        .collect(Collectors.groupingBy(row -> row.number(column)))
        .values()
        .stream();
  }

  /** Exponent of the flow over a column, from the least to the greatest of its figures. */
  private static double exponent(List<Published.Row> rows, String column) {
    Published.Row first = rows.get(0);
    Published.Row last = rows.get(rows.size() - 1);
    return Math.log(last.number("gpm") / first.number("gpm"))
        / Math.log(last.number(column) / first.number(column));
  }
}
