package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/** How figures are written into sentences. */
class SayTest {

  @Test
  void figuresAreSaidInTheUnitsOfTheSheetWithDigitsThatMeanSomething() {
    assertThat(Say.of(Quantity.FILM, 7, UnitSystem.US)).isEqualTo("7.0 mil");
    assertThat(Say.of(Quantity.FILM, 7, UnitSystem.METRIC)).isEqualTo("178 µm");
    assertThat(Say.of(Quantity.LENGTH, 20, UnitSystem.US)).isEqualTo("20 ft");
    assertThat(Say.of(Quantity.PRESSURE, 2000, UnitSystem.METRIC)).isEqualTo("138 bar");
    assertThat(Say.of(Quantity.ORIFICE, 17, UnitSystem.METRIC)).isEqualTo("0.43 mm");
  }

  @Test
  void aFigureHeldInFormulasIsNotRoundedToAnotherLength() {
    assertThat(Say.held(Quantity.LENGTH, 8.75, UnitSystem.US)).isEqualTo("8.75 ft");
    assertThat(Say.held(Quantity.LENGTH, 6 + 2 / 12.0, UnitSystem.US)).isEqualTo("6.167 ft");
    assertThat(Say.held(Quantity.LENGTH, 118.5, UnitSystem.US)).isEqualTo("118.5 ft");
    assertThat(Say.held(Quantity.FILM, 5, UnitSystem.US)).isEqualTo("5.0 mil");
  }

  @Test
  void aFigureAndItsLimitNeverLookAlike() {
    assertThat(Say.pair(Quantity.FILM, 7.003, 7, UnitSystem.US))
        .isEqualTo(new Say.Pair("7.003 mil", "7.000 mil"));
    assertThat(Say.pair(Quantity.PRESSURE, 3000.4, 3000, UnitSystem.US))
        .isEqualTo(new Say.Pair("3000.4 psi", "3000 psi"));
  }

  @Test
  void rangesHaveTheirUnitOnce() {
    assertThat(Say.range(Quantity.GUN_SPEED, 18, 36, UnitSystem.US)).isEqualTo("18 to 36 in/s");
    assertThat(Say.range(Quantity.NUMBER, 1, 2, UnitSystem.US)).isEqualTo("1 to 2");
  }

  @Test
  void wordsAreJoinedAsInASentence() {
    assertThat(Say.and(List.of("length", "width", "height"))).isEqualTo("length, width and height");
    assertThat(Say.or(List.of("latex"))).isEqualTo("latex");
    assertThat(Say.or(List.of())).isEmpty();
  }
}
