package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** A wall is likely 5 to 40 ft high, another length 0.5 to 60 m (house). */
class LikelyUnitTest {

  @ParameterizedTest
  @CsvSource({
    // as it stands in a column of feet
    "US, HEIGHT, 59.9, ",
    "US, HEIGHT, 60, INCH",
    "US, HEIGHT, 480, INCH",
    "US, HEIGHT, 480.1, ",
    "US, HEIGHT, 1523.9, ",
    "US, HEIGHT, 1524.1, MILLIMETRE",
    "US, LENGTH, 19.6, ",
    "US, LENGTH, 19.7, INCH",
    "US, LENGTH, 2363, MILLIMETRE",
    // as it stands in a column of metres
    "METRIC, LENGTH, 49, ",
    "METRIC, LENGTH, 50, CENTIMETRE",
    "METRIC, LENGTH, 499, CENTIMETRE",
    "METRIC, LENGTH, 500, MILLIMETRE",
    "METRIC, LENGTH, 60000, MILLIMETRE",
    "METRIC, LENGTH, 60001, ",
    "METRIC, HEIGHT, 270, CENTIMETRE",
    "METRIC, HEIGHT, 2700, MILLIMETRE"
  })
  void unitIsTheFirstInWhichTheNumberIsALikelySize(
      UnitSystem system, InputColumn column, double typed, Unit likely) {
    assertThat(LikelyUnit.of(column, null, length(typed, system), system))
        .isEqualTo(Optional.ofNullable(likely));
  }

  @Test
  void unitThatStandsInTheCellIsNotOfferedAgain() {
    InputValue inches = new InputValue(InputValue.State.READ, "96 in", 8, 8, 8, 96, Unit.INCH, "");

    assertThat(LikelyUnit.of(InputColumn.HEIGHT, null, inches, UnitSystem.US)).isEmpty();
    assertThat(LikelyUnit.of(InputColumn.HEIGHT, null, InputValue.NOTHING, UnitSystem.US))
        .isEmpty();
  }

  private static InputValue length(double typed, UnitSystem system) {
    Unit unit = Quantity.LENGTH.unit(system);
    double feet = unit.to(Unit.FOOT, typed);
    return new InputValue(InputValue.State.READ, "" + typed, feet, feet, feet, typed, unit, "");
  }
}
