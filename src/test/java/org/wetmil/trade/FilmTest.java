package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;

class FilmTest {
  private static final double FT_PER_MIN_PER_MPH = 88;
  private static final double FT2_PER_ACRE = 43_560;

  static List<Published.Row> wetAndDry() {
    return Published.rows("wet-and-dry-film.csv");
  }

  static List<Published.Row> fieldSprayers() {
    return Published.rows("field-sprayer-rule.csv");
  }

  static List<Published.Row> passes() {
    return Published.rows("one-pass-film.csv");
  }

  @ParameterizedTest
  @MethodSource("wetAndDry")
  void wetFilmDriesToTheShareOfItsSolids(Published.Row row) {
    double solids = row.number("volumeSolids");
    double thinner = row.number("thinnerShare");
    double wetMil = Film.wetMil(row.number("dryMil"), solids, thinner);
    row.check(wetMil);
    assertThat(Film.dryMil(wetMil, solids, thinner)).isCloseTo(row.number("dryMil"), within(1e-12));
  }

  @ParameterizedTest
  @MethodSource("fieldSprayers")
  void aGunLaysTheFilmOfTheFieldSprayerRule(Published.Row row) {
    double ftPerMin = row.number("mph") * FT_PER_MIN_PER_MPH;
    double wetMil = Film.laidWetMil(row.number("gpm"), 1, ftPerMin / 5, row.number("spacingIn"), 0);
    row.check(wetMil * FT2_PER_ACRE / Constants.SPREAD_FT2_MIL_PER_GAL.value());
  }

  @ParameterizedTest
  @MethodSource("passes")
  void aPassLaysTheFilmOfTheTradeForm(Published.Row row) {
    double gpm = row.number("gpm");
    double fanIn = row.number("fanIn");
    double ftPerMin = row.number("ftPerMin");
    double overlap = row.number("overlap");
    row.check(Film.laidWetMil(gpm, 1, ftPerMin / 5, fanIn, overlap));
  }

  @Test
  void bothRoutesToTheTradeFormMeet() {
    double spread = Constants.SPREAD_FT2_MIL_PER_GAL.value();
    assertThat(spread * 12).isCloseTo(19_250, within(1e-9));
    assertThat(5940 * FT_PER_MIN_PER_MPH * spread / FT2_PER_ACRE).isCloseTo(19_250, within(1e-9));
  }

  /** Common practice, no source: a 317 lays 10/6 of what a 517 lays. */
  @Test
  void theSameOrificeLaysAFilmInverseToItsFan() {
    Random random = new Random(317);
    for (int i = 0; i < 1000; i++) {
      double gpm = 0.05 + random.nextDouble();
      double speed = 10 + 30 * random.nextDouble();
      TipCode narrow = new TipCode(1 + random.nextInt(9), 17);
      TipCode wide = new TipCode(1 + random.nextInt(9), 17);
      double narrowMil = Film.laidWetMil(gpm, 0.7, speed, narrow.fanIn(12), 0.5);
      double wideMil = Film.laidWetMil(gpm, 0.7, speed, wide.fanIn(12), 0.5);
      assertThat(narrowMil / wideMil)
          .isCloseTo((double) wide.fanDigit() / narrow.fanDigit(), within(1e-12));
    }
  }

  @Test
  void theSpeedFoundLaysTheFilmWanted() {
    Random random = new Random(30);
    for (int i = 0; i < 1000; i++) {
      double gpm = 0.05 + random.nextDouble();
      double wetMil = 2 + 20 * random.nextDouble();
      double overlap = 0.9 * random.nextDouble();
      double speed = Film.speedInPerS(gpm, 0.7, wetMil, 10, overlap);
      assertThat(Film.laidWetMil(gpm, 0.7, speed, 10, overlap)).isCloseTo(wetMil, within(1e-12));
    }
  }

  @Test
  void paintSprayedIsFilmOnTheSurfacePlusWhatWasLost() {
    Random random = new Random(231);
    for (int i = 0; i < 1000; i++) {
      double gpm = 0.05 + random.nextDouble();
      double stick = 0.3 + 0.7 * random.nextDouble();
      double hit = 0.3 + 0.7 * random.nextDouble();
      double speed = 10 + 30 * random.nextDouble();
      double overlap = 0.8 * random.nextDouble();

      double wetMil = Film.laidWetMil(gpm, stick, speed, 10, overlap);
      double ft2PerMin = Film.areaFt2PerMin(speed, 10, overlap, hit);
      double onSurfaceGpm = wetMil * ft2PerMin / Constants.SPREAD_FT2_MIL_PER_GAL.value();
      assertThat(onSurfaceGpm / (stick * hit)).isCloseTo(gpm, within(1e-12));
    }
  }

  @Test
  void aSpeedIsHeldIntoTheBandOfAHand() {
    assertThat(Film.heldInPerS(30, 18, 36)).isEqualTo(30);
    assertThat(Film.heldInPerS(17.9, 18, 36)).isEqualTo(18);
    assertThat(Film.heldInPerS(36.1, 18, 36)).isEqualTo(36);
    assertThatIllegalArgumentException().isThrownBy(() -> Film.heldInPerS(30, 36, 18));
  }

  @Test
  void aFanWiderThanTheWorkMissesWithTheRest() {
    assertThat(Film.narrowHit(0.9, 4, 8)).isEqualTo(0.45);
    assertThat(Film.narrowHit(0.9, 8, 8)).isEqualTo(0.9);
    assertThat(Film.narrowHit(0.9, 10, 8)).isEqualTo(0.9);
  }
}
