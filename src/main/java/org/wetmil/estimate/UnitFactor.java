package org.wetmil.estimate;

import java.util.function.ToDoubleFunction;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Place;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/**
 * Factors that make the units of a formula come out, derived from the exact sizes of the units, so
 * that one declaration serves both families. Basis shows them under their names.
 */
public enum UnitFactor implements Place {
  FLOW(
      "Flow factor",
      "pi/4 x square root of 2, in the units of orifice, pressure, density and flow",
      system ->
          Math.PI
              / 4
              * Math.sqrt(2 * si(Quantity.PRESSURE, system) / si(Quantity.DENSITY, system))
              * si(Quantity.ORIFICE, system)
              * si(Quantity.ORIFICE, system)
              / si(Quantity.FLOW, system)),
  FILM(
      "Film factor",
      "film of one unit of flow over one unit of fan and of speed; 3850 is 19,250 / 5",
      system ->
          si(Quantity.FLOW, system)
              / si(Quantity.GUN_SPEED, system)
              / si(Quantity.FAN_WIDTH, system)
              / si(Quantity.FILM, system)),
  SPREAD(
      "Spread factor",
      "area that one unit of volume covers in one unit of film; handbooks print 1604 ft² mil/gal",
      system -> 1 / si(Quantity.SPREAD, system) / si(Quantity.FILM, system)),
  PACE(
      "Pace factor",
      "area an hour of one unit of fan at one unit of speed",
      system ->
          si(Quantity.GUN_SPEED, system)
              * si(Quantity.FAN_WIDTH, system)
              / si(Quantity.AREA_RATE, system));

  private final String title;
  private final String meaning;
  private final double us;
  private final double metric;

  UnitFactor(String title, String meaning, ToDoubleFunction<UnitSystem> value) {
    this.title = title;
    this.meaning = meaning;
    this.us = tidy(value.applyAsDouble(UnitSystem.US));
    this.metric = tidy(value.applyAsDouble(UnitSystem.METRIC));
  }

  public String title() {
    return title;
  }

  public String meaning() {
    return meaning;
  }

  /** The factor for formulas in these units. */
  public double value(UnitSystem system) {
    return system == UnitSystem.US ? us : metric;
  }

  /** An expression times a factor between units, or over its inverse where that is whole. */
  static Expr scaled(Expr product, double factor) {
    double tidy = factor == 1 ? 1 : tidy(factor);
    if (tidy == 1) {
      return product;
    }
    double inverse = tidy(1 / factor);
    return inverse == Math.rint(inverse)
        ? product.over(Expr.num(inverse))
        : product.times(Expr.num(tidy));
  }

  static double si(Quantity quantity, UnitSystem system) {
    return quantity.unit(system).si();
  }

  /** Takes away the last bits that unit sizes leave beside a short number: 0.36, 12, 3850. */
  private static double tidy(double value) {
    double scale = Math.pow(10, 11 - Math.floor(Math.log10(value)));
    double rounded = Math.rint(value * scale) / scale;
    return Math.abs(value - rounded) <= 4 * Math.ulp(value) ? rounded : value;
  }
}
