package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;

class FilmAcceptanceTest {

  static List<Published.Row> judged() {
    return Published.rows("film-acceptance.csv");
  }

  static List<Published.Row> areas() {
    return Published.rows("film-areas.csv");
  }

  @ParameterizedTest
  @MethodSource("judged")
  void meansAreJudgedAsThePracticeStandardIsQuoted(Published.Row row) {
    FilmAcceptance accepted = FilmAcceptance.of(row.number("low"), row.number("high"));
    double mean = row.number("mean");
    boolean outside =
        row.text("of").equals("spot")
            ? accepted.isSpotOutside(mean)
            : accepted.isUnder(mean) || accepted.isOver(mean);

    row.check(outside ? 0 : 1);
  }

  @ParameterizedTest
  @MethodSource("areas")
  void areasToMeasureGrowWithTheSurface(Published.Row row) {
    row.check(FilmAcceptance.areas(row.number("ft2")));
  }

  @Test
  void filmsThatMakeNoSenseAreRefused() {
    assertThatThrownBy(() -> FilmAcceptance.of(0, 0)).hasMessageContaining("leastMil");
    assertThatThrownBy(() -> FilmAcceptance.areas(0)).hasMessageContaining("ft2");
  }

  @Test
  void vocOfAMixtureIsThatOfItsVolumes() {
    // 1 L of 350 g/L and 0.1 L of 800 g/L are 430 g in 1.1 L
    assertThat(Voc.lessWater(350, 0.1, 800)).isCloseTo(430 / 1.1, within(1e-12));
    assertThat(Voc.readyToUse(350, 0.1, 800)).isCloseTo(430 / 1.1, within(1e-12));
    assertThat(Voc.lessWater(350, 0, 800)).isEqualTo(350);
  }

  @Test
  void waterCountsInTheProductReadyToUseAlone() {
    assertThat(Voc.lessWater(150, 0.2, 0)).isEqualTo(150);
    assertThat(Voc.readyToUse(60, 0.2, 0)).isCloseTo(50, within(1e-12));
  }
}
