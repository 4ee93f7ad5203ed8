package org.wetmil.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.measure.MeasuringRule.DIN_18363;
import static org.wetmil.measure.MeasuringRule.IS_1200_13;
import static org.wetmil.measure.MeasuringRule.NET;
import static org.wetmil.measure.MeasuringRule.SOLID;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;
import org.wetmil.measure.Opening.OtherFace;
import org.wetmil.measure.Opening.Role;
import org.wetmil.measure.Taken.Why;

class MeasuringRuleTest {

  static Stream<Published.Row> indian() {
    return Published.rows("is-1200-13.csv").stream();
  }

  static Stream<Published.Row> german() {
    return Published.rows("din-18363.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("indian")
  void indianStandardMeasuresAsWorkedFromItsClauses(Published.Row row) {
    Opening opening =
        new Opening(
            Role.OPENING,
            row.number("widthM"),
            row.number("heightM"),
            row.number("count"),
            row.number("revealM"),
            false,
            OtherFace.of(row.text("otherFace")),
            "");

    row.check(net(row.number("grossM2"), Taken.measure(IS_1200_13, opening)));
  }

  @ParameterizedTest
  @MethodSource("german")
  void germanRulesMeasureAsWorkedFromTheirClauses(Published.Row row) {
    Opening opening =
        new Opening(
            Role.valueOf(row.text("role").toUpperCase(Locale.ROOT)),
            row.number("widthM"),
            row.number("heightM"),
            1,
            row.number("revealM"),
            false,
            OtherFace.NONE,
            "");
    List<Boolean> inFloor = List.of(row.text("inFloor").equals("yes"));

    row.check(
        net(row.number("grossM2"), Taken.measure(DIN_18363, List.of(opening), inFloor).get(0)));
  }

  @Test
  void netTakesTheSmallestHoleOffAndAddsItsReveals() {
    Taken taken = Taken.measure(NET, opening(0.2, 0.1, 0.05, OtherFace.SAME, "a"));

    assertThat(taken.deductedM2()).isCloseTo(0.02, within(1e-12));
    assertThat(taken.addedM2()).isCloseTo((2 * 0.1 + 0.2) * 0.05, within(1e-12));
  }

  @Test
  void solidTakesNothingOffAndAddsNothing() {
    Taken taken = Taken.measure(SOLID, opening(4, 3, 0.3, OtherFace.NONE, ""));

    assertThat(taken).isEqualTo(new Taken(0, 0, Why.MEASURED_OVER));
  }

  @Test
  void paintedSillLengthensTheReveal() {
    Opening window = new Opening(Role.OPENING, 1.2, 1, 2, 0.1, true, OtherFace.NONE, "");

    assertThat(Taken.measure(NET, window).addedM2()).isCloseTo(2 * 4.4 * 0.1, within(1e-12));
  }

  @Test
  void openingListedOnTwoFacesComesOffOnceOnTheFirst() {
    List<Taken> taken =
        indian(
            opening(1, 2.1, 0.1, OtherFace.SAME, "D1"), opening(1, 2.1, 0.1, OtherFace.SAME, "d1"));

    assertThat(taken).extracting(Taken::why).containsExactly(Why.ONE_FACE, Why.OTHER_FACE);
    assertThat(taken.stream().mapToDouble(Taken::deductedM2).sum()).isCloseTo(2.1, within(1e-12));
    assertThat(taken).extracting(Taken::addedM2).containsOnly(0.0);
  }

  @Test
  void differentFinishesTakeItOffWhereTheRevealIsNarrower() {
    List<Taken> taken =
        indian(
            opening(1, 2.1, 0.15, OtherFace.DIFFERENT, "D1"),
            opening(1, 2.1, 0.05, OtherFace.DIFFERENT, "D1"));

    assertThat(taken).extracting(Taken::why).containsExactly(Why.OTHER_FACE, Why.ONE_FACE);
  }

  @Test
  void differentFinishesWithEqualRevealsShareTheDeduction() {
    List<Taken> taken =
        indian(
            opening(1, 2.1, 0.1, OtherFace.DIFFERENT, "D1"),
            opening(1, 2.1, 0.1, OtherFace.DIFFERENT, "D1"),
            opening(1, 2.1, 0.1, OtherFace.DIFFERENT, "D1"));

    assertThat(taken).extracting(Taken::why).containsExactly(Why.HALF, Why.HALF, Why.OTHER_FACE);
  }

  @Test
  void differentFinishWithoutItsOtherListingIsSaidToBeUnknown() {
    Taken taken = Taken.measure(IS_1200_13, opening(1, 2.1, 0.1, OtherFace.DIFFERENT, "D1"));

    assertThat(taken.why()).isEqualTo(Why.OTHER_REVEAL_UNKNOWN);
    assertThat(taken.deductedM2()).isCloseTo(2.1, within(1e-12));
  }

  @Test
  void largeOpeningComesOffBothFacesWhateverItsId() {
    List<Taken> taken =
        indian(opening(2, 2.1, 0, OtherFace.SAME, "D1"), opening(2, 2.1, 0, OtherFace.SAME, "D1"));

    assertThat(taken).extracting(Taken::deductedM2).containsExactly(4.2, 4.2);
  }

  @Test
  void idMattersToNoOtherRule() {
    List<Opening> twice = Collections.nCopies(2, opening(1, 2.6, 0, OtherFace.SAME, "D1"));

    for (MeasuringRule rule : List.of(NET, DIN_18363)) {
      assertThat(Taken.measure(rule, twice, List.of(false, false)))
          .extracting(Taken::deductedM2)
          .containsExactly(2.6, 2.6);
    }
  }

  @Test
  void sizeTypedInFeetAtALimitStaysAtTheLimit() {
    double metre = 0.3048 * (1 / 0.3048);
    Opening atLimit = opening(metre, 2.5 * metre * (1 + 2e-16), 0, OtherFace.NONE, "");

    assertThat(Taken.measure(DIN_18363, atLimit).deductedM2()).isZero();
  }

  @Test
  void gapUnderTheIndianStandardGoesByItsArea() {
    Opening gap = new Opening(Role.GAP, 5, 0.1, 1, 0, false, OtherFace.NONE, "");
    Opening wide = new Opening(Role.GAP, 5.01, 0.1, 1, 0, false, OtherFace.NONE, "");

    assertThat(Taken.measure(IS_1200_13, gap).deductedM2()).isZero();
    assertThat(Taken.measure(IS_1200_13, wide).deductedM2()).isCloseTo(0.501, within(1e-12));
  }

  @ParameterizedTest
  @EnumSource(MeasuringRule.class)
  void ruleIsFoundByItsTitleInAnyCase(MeasuringRule rule) {
    assertThat(MeasuringRule.find(" " + rule.title().toLowerCase(Locale.ROOT))).contains(rule);
  }

  @Test
  void unknownRuleIsNotFound() {
    assertThat(MeasuringRule.find("IS 1200")).isEmpty();
  }

  @Test
  void onlyRulesThatGoBySizeCannotTestALumpArea() {
    assertThat(Stream.of(MeasuringRule.values()).filter(MeasuringRule::goesBySize))
        .containsExactly(IS_1200_13, DIN_18363);
  }

  @Test
  void openingWithoutAHeightIsRefused() {
    assertThatThrownBy(() -> opening(1, Double.NaN, 0, OtherFace.NONE, ""))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("heightM");
  }

  private static List<Taken> indian(Opening... openings) {
    return Taken.measure(
        IS_1200_13, List.of(openings), Collections.nCopies(openings.length, false));
  }

  private static Opening opening(
      double widthM, double heightM, double revealM, OtherFace otherFace, String id) {
    return new Opening(Role.OPENING, widthM, heightM, 1, revealM, false, otherFace, id);
  }

  private static double net(double grossM2, Taken taken) {
    return grossM2 - taken.deductedM2() + taken.addedM2();
  }
}
