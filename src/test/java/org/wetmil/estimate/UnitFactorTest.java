package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.formula.Expr;
import org.wetmil.quantity.UnitSystem;

/** The numbers that make the units of a formula come out. */
class UnitFactorTest {

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

  /** Sizes of units leave a last bit beside a short number; what is not short stays as it is. */
  @Test
  void aLastBitBesideAShortNumberIsNotPrinted() {
    assertThat(printed(Math.nextUp(0.36))).isEqualTo("GIRTH*0.36");
    assertThat(printed(Math.nextDown(12.0))).isEqualTo("GIRTH*12");
    assertThat(printed(Math.nextUp(1e6))).isEqualTo("GIRTH*1000000");
    assertThat(printed(Math.nextUp(1 / 12.0))).isEqualTo("GIRTH/12");
    assertThat(printed(Math.nextDown(1.0))).isEqualTo("GIRTH");
    assertThat(printed(Math.PI)).isEqualTo("GIRTH*3.141592653589793");
    assertThat(printed(0.36 + 100 * Math.ulp(0.36))).isNotEqualTo("GIRTH*0.36");
  }

  private static String printed(double factor) {
    return UnitFactor.scaled(Expr.at(InputColumn.GIRTH, 6), factor).print(Object::toString);
  }

  private static String flow(UnitSystem sheet, UnitSystem basis) {
    BidLine line =
        Bids.line(
            sheet, InputColumn.SURFACE, "walls", InputColumn.COATING, "latex", InputColumn.AREA, 9);
    FilledLine filled =
        Estimator.fill(Bids.bid(Catalogue.builtIn(), basis, line))
            .lines()
            .findFirst()
            .orElseThrow();
    return ((Figure.Live) filled.figures().get(FilledColumn.FLOW))
        .formula()
        .print(place -> place instanceof UnitFactor ? "[factor]" : "x");
  }

  /** Basis shows the factors of its own family; a sheet of the other has them as numbers. */
  @Test
  void aFactorOfTheOtherFamilyStandsInTheFormulaAsANumber() {
    assertThat(flow(UnitSystem.US, UnitSystem.US)).startsWith("[factor]*");
    assertThat(flow(UnitSystem.METRIC, UnitSystem.METRIC)).startsWith("[factor]*");
    assertThat(flow(UnitSystem.US, UnitSystem.METRIC)).startsWith("0.0000298242770147");
    assertThat(flow(UnitSystem.METRIC, UnitSystem.US)).startsWith("0.66643");
  }
}
