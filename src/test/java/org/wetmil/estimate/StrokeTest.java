package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Surface;

/** The hand on broad and on narrow work. */
class StrokeTest {
  private static final Catalogue TABLES = Catalogue.builtIn();
  private static final Surface WALLS = TABLES.surface("walls").orNull();
  private static final Surface TRIM = TABLES.surface("trim").orNull();

  @Test
  void joineryIsSprayedSlowerThanBroadWork() {
    assertThat(Stroke.of(WALLS, 108, TABLES)).isEqualTo(new Stroke(18, 36, 30, 0.5, false, 108));
    assertThat(Stroke.of(TRIM, 24, TABLES)).isEqualTo(new Stroke(12, 24, 20, 0.5, false, 24));
    assertThat(Stroke.slowest(WALLS)).isEqualTo(Setting.BROAD_SLOWEST);
    assertThat(Stroke.fastest(WALLS)).isEqualTo(Setting.BROAD_FASTEST);
    assertThat(Stroke.slowest(TRIM)).isEqualTo(Setting.JOINERY_SLOWEST);
    assertThat(Stroke.fastest(TRIM)).isEqualTo(Setting.JOINERY_FASTEST);
  }

  /** Work of 10 in is one stroke without overlap; what has no known width is broad. */
  @ParameterizedTest
  @CsvSource({
    "4, true",
    "10, true",
    "10.000000001, true",
    "10.001, false",
    "NaN, false",
    "0, false"
  })
  void workUpToTheWidthOfOneStrokeIsNarrow(double inches, boolean narrow) {
    Stroke stroke = Stroke.of(TRIM, inches, TABLES);

    assertThat(stroke.narrow()).isEqualTo(narrow);
    assertThat(stroke.overlap()).isEqualTo(narrow ? 0 : 0.5);
    assertThat(Double.isNaN(stroke.widthIn())).isEqualTo(!(inches > 0));
  }

  /** A fan of 12 in is inside 12 in of work; one of 9.6 in covers eight tenths of it. */
  @Test
  void aFanAsWideAsTheWorkIsInsideIt() {
    Stroke foot = Stroke.of(WALLS, 12, TABLES);
    Stroke unknown = Stroke.of(WALLS, Double.NaN, TABLES);

    assertThat(foot.isInside(12)).isTrue();
    assertThat(foot.isInside(12.01)).isFalse();
    assertThat(foot.isInside(8)).isTrue();
    assertThat(unknown.isInside(99)).isTrue();
    assertThat(foot.isCovered(12 * 0.8, 0.8)).isTrue();
    assertThat(foot.isCovered(9.59, 0.8)).isFalse();
    assertThat(foot.isCovered(10, 0.8)).isTrue();
  }
}
