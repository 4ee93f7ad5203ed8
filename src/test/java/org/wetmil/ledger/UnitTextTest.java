package org.wetmil.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitTextTest {

  /** Published: NIST Handbook 44, Appendix C: 1 gal = 4 qt = 8 pt = 231 in³ = 3.785411784 L. */
  @ParameterizedTest
  @CsvSource({"gal, 1", "qt, 4", "pt, 8", "L, 3.785411784", "mL, 3785.411784"})
  void aGallonHoldsThePublishedNumberOfOtherUnits(String unit, double inAGallon) {
    assertThat(1 / UnitText.gallons(unit, "").orElseThrow())
        .isCloseTo(inAGallon, within(5e-10 * inAGallon));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "gallons | 1",
        "Gal. | 1",
        "GL | 1",
        "GA | 1",
        "case (4 x 1 gal) | 4",
        "kit of 2 gal | 2",
        "pail of 5 gal | 5",
        "5 gal pail | 5",
        "5-gal | 5",
        "5gal | 5",
        "Pail (5 gal) | 5",
        "can, 1 qt | 0.25",
        "1/2 pt | 0.0625",
        "4 x 1 gal | 4",
        "drum 55 gal | 55",
        "2.5 gal | 2.5"
      })
  void aContainerHoldsWhatItSays(String unit, double gallons) {
    assertThat(UnitText.gallons(unit, "").orElseThrow()).isCloseTo(gallons, offset(1e-12));
  }

  @Test
  void aContainerWithoutASizeHoldsWhatTheDescriptionSays() {
    assertThat(UnitText.gallons("EA", "Latex eggshell 5 gal").orElseThrow()).isEqualTo(5);
    assertThat(UnitText.gallons("", "Latex eggshell 1GAL white 1 gal").orElseThrow()).isEqualTo(1);
    assertThat(UnitText.gallons("pail", "Dry fall, 2.5 mil, 5 gal").orElseThrow()).isEqualTo(5);
  }

  @Test
  void aSizeThatIsMissingOrNotClearIsNotGuessed() {
    assertThat(UnitText.gallons("pail", "Latex eggshell")).isEmpty();
    assertThat(UnitText.gallons("ea", "Latex 5 gal, was 1 gal")).isEmpty();
    assertThat(UnitText.gallons("roll", "Tape 5 gal")).isEmpty();
    assertThat(UnitText.gallons("lb", "")).isEmpty();
    assertThat(UnitText.gallons("5 gal roller", "")).isEmpty();
  }

  @Test
  void aQuantityMayNameItsUnitItself() {
    Ledgers.Read read =
        Ledgers.read(
            "Item,Quantity (gal),Amount", "latex,5 qt,10", "latex,3,30", "latex,2 rolls,5");

    assertThat(read.lines().get(0).volumeGal()).isEqualTo(1.25);
    assertThat(read.lines().get(1).volumeGal()).isEqualTo(3);
    assertThat(read.lines().get(2).quantity()).isNull();
  }
}
