package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.WIDTH;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The setups that the built-in tables are meant to give (our own expectation, worked by hand). */
class DefaultSetupsTest {

  @ParameterizedTest
  @CsvSource({
    "walls, latex, 517",
    "siding, block filler, 531",
    "trim, latex, 212",
    "doors, oil-based, 410",
    "cabinets, lacquer, 309"
  })
  void usualWorkGetsTheUsualTip(String surface, String coating, String code) {
    FilledLine filled =
        Bids.fill(
            Bids.line(
                SURFACE, surface, COATING, coating, LENGTH, 20, WIDTH, 15, HEIGHT, 9, COUNT, 4));

    assertThat(filled.recommended().tip().code()).isEqualTo(code);
  }

  @Test
  void latexWallsComeOutAtTheSpreadAndThePaceOfTheTrade() {
    FilledLine filled =
        Bids.fill(Bids.line(SURFACE, "walls", COATING, "latex", AREA, 1000, HEIGHT, 9));

    assertThat(filled.base(FilledColumn.SPREAD)).isCloseTo(237, within(0.5));
    double coats = filled.base(FilledColumn.COATS);
    assertThat(1000 * coats / filled.base(FilledColumn.SPRAY)).isCloseTo(810, within(5.0));
    assertThat(filled.figures().get(FilledColumn.PAINT).number())
        .isCloseTo(1000 * coats / filled.base(FilledColumn.SPREAD), within(1e-12));
  }
}
