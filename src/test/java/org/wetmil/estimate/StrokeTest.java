package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Surface;
import org.wetmil.formula.Expr;
import org.wetmil.quantity.UnitSystem;

/** The hand on broad and on narrow work, and the units that its formulas come out in. */
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

  /**
   * Metric: pi/4 x sqrt(2 x 1e5 Pa / 1000 kg/m3) x (1 mm)2 in L/min, the film of 1 L/min over 1 cm
   * of fan and 1 cm/s in um, 1 L in 1 um over 1000 m2, and 1 cm of fan at 1 cm/s in m2/h.
   */
  @Test
  void factorsOfTheUnitsAreThoseOfTheirSizes() {
    double flow = Math.PI / 4 * Math.sqrt(2 * 1e5 / 1000) * 1e-6 * 1000 * 60;

    assertThat(UnitFactor.FLOW.value(UnitSystem.METRIC)).isCloseTo(flow, within(1e-9));
    assertThat(UnitFactor.FILM.value(UnitSystem.METRIC)).isCloseTo(1e-3 / 60 / 1e-10, within(1e-6));
    assertThat(UnitFactor.SPREAD.value(UnitSystem.METRIC)).isEqualTo(1000);
    assertThat(UnitFactor.PACE.value(UnitSystem.METRIC)).isEqualTo(0.36);
    assertThat(UnitFactor.PACE.title()).isEqualTo("Pace factor");
    assertThat(UnitFactor.PACE.meaning()).contains("area an hour");
  }

  /** Twelve inches in a foot are divided by; 0.3048 m in it is no whole number of anything. */
  @Test
  void aFactorBetweenUnitsReadsAsTheTradeSaysIt() {
    Expr girth = Expr.at(InputColumn.GIRTH, 6);

    assertThat(UnitFactor.scaled(girth, 1)).isSameAs(girth);
    assertThat(UnitFactor.scaled(girth, 1 / 12.0).print(Object::toString)).isEqualTo("GIRTH/12");
    assertThat(UnitFactor.scaled(girth, 0.3048).print(Object::toString)).isEqualTo("GIRTH*0.3048");
    assertThat(UnitFactor.scaled(girth, 12).print(Object::toString)).isEqualTo("GIRTH*12");
    assertThat(UnitFactor.scaled(girth, 1 / 12.0).value()).isEqualTo(0.5);
  }
}
