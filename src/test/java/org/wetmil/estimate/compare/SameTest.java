package org.wetmil.estimate.compare;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Unit;

/** Cells of two versions agree where one may be the other, rounded in its own unit. */
class SameTest {

  @ParameterizedTest
  @CsvSource({
    // 3.66 m is 12.008 ft: half a centimetre is 0.016 ft, and a whole foot may be half a foot off
    "12, FOOT, 3.66, METRE, true",
    "12.0, FOOT, 3.66, METRE, true",
    // half a tenth of a foot and half a centimetre are 0.066 ft; half a percent lets 0.06 pass
    "12.0, FOOT, 3.67, METRE, true",
    "12.0, FOOT, 3.68, METRE, false",
    "100, FOOT, 30.48, METRE, true",
    "100, FOOT, 30.7, METRE, false",
    // in one unit every difference counts
    "12, FOOT, 12.01, FOOT, false",
    "12, FOOT, 12.000, FOOT, true"
  })
  void lengthsAgreeWithinWhatTheirDigitsShow(
      String one, Unit oneUnit, String other, Unit otherUnit, boolean same) {
    assertThat(Same.same(InputColumn.LENGTH, length(one, oneUnit), length(other, otherUnit)))
        .isEqualTo(same);
    assertThat(Same.same(InputColumn.LENGTH, length(other, otherUnit), length(one, oneUnit)))
        .isEqualTo(same);
  }

  /** Feet and inches go to a sixteenth of an inch, half of which is 0.0026 ft. */
  @Test
  void feetAndInchesAgreeToHalfASixteenth() {
    InputValue typed = read("12' 6\"", 12.5, Unit.FOOT);

    assertThat(Same.same(InputColumn.LENGTH, typed, length("3.8100", Unit.METRE))).isTrue();
    assertThat(Same.same(InputColumn.LENGTH, typed, length("3.8107", Unit.METRE))).isTrue();
    assertThat(Same.same(InputColumn.LENGTH, typed, length("3.8110", Unit.METRE))).isFalse();
  }

  @Test
  void blankIsLikeBlankAlone() {
    InputValue word = InputValue.text("Latex");

    assertThat(Same.same(InputColumn.COATING, InputValue.NOTHING, InputValue.open("-"))).isTrue();
    assertThat(Same.same(InputColumn.COATING, InputValue.NOTHING, word)).isFalse();
    assertThat(Same.same(InputColumn.COATING, word, InputValue.NOTHING)).isFalse();
    assertThat(Same.same(InputColumn.COATING, word, InputValue.text(" latex "))).isTrue();
    assertThat(Same.same(InputColumn.COATING, word, InputValue.text("primer"))).isFalse();
    assertThat(Same.same(InputColumn.LENGTH, word, length("12", Unit.FOOT))).isFalse();
    assertThat(Same.same(InputColumn.LENGTH, length("12", Unit.FOOT), word)).isFalse();
  }

  @Test
  void rangesAgreeAtBothEnds() {
    InputValue four = film(4, 6);

    assertThat(Same.same(InputColumn.SPECIFIED_FILM, four, film(4, 6))).isTrue();
    assertThat(Same.same(InputColumn.SPECIFIED_FILM, four, film(4, 6.1))).isFalse();
    assertThat(Same.same(InputColumn.SPECIFIED_FILM, four, film(3.9, 6))).isFalse();
  }

  private static InputValue film(double low, double high) {
    return new InputValue(
        InputValue.State.READ,
        low + "-" + high,
        (low + high) / 2,
        low,
        high,
        Double.NaN,
        Unit.MIL,
        "");
  }

  private static InputValue length(String raw, Unit unit) {
    return read(raw, unit.to(Unit.FOOT, Double.parseDouble(raw)), unit);
  }

  private static InputValue read(String raw, double feet, Unit unit) {
    return new InputValue(InputValue.State.READ, raw, feet, feet, feet, Double.NaN, unit, "");
  }
}
