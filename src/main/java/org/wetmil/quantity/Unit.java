package org.wetmil.quantity;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Every unit that Wetmil reads or prints, with its size in SI base units.
 *
 * <p>The sizes are exact by definition (published: the international foot of 0.3048 m, the US
 * gallon of 231 cubic inches, the pound-force of 4.4482216152605 N); nothing here is rounded.
 */
public enum Unit {
  FOOT(
      Dimension.LENGTH,
      Si.FOOT,
      "ft",
      "foot",
      "feet",
      "'",
      "lf",
      "lin ft",
      "lin. ft",
      "linear ft",
      "linear feet",
      "lnft"),
  INCH(Dimension.LENGTH, Si.INCH, "in", "inch", "inches", "\"", "''"),
  THOU(Dimension.LENGTH, Si.INCH / 1000, "thou", "thousandths", "0.001 in"),
  MIL(Dimension.LENGTH, Si.INCH / 1000, "mil", "mils"),
  METRE(Dimension.LENGTH, 1, "m", "metre", "meter", "metres", "meters", "lm"),
  CENTIMETRE(
      Dimension.LENGTH, 0.01, "cm", "centimetre", "centimeter", "centimetres", "centimeters"),
  MILLIMETRE(
      Dimension.LENGTH, 0.001, "mm", "millimetre", "millimeter", "millimetres", "millimeters"),
  MICROMETRE(Dimension.LENGTH, 1e-6, "µm", "um", "μm", "micron", "microns", "micrometre"),
  SQUARE_FOOT(
      Dimension.AREA,
      Si.FOOT * Si.FOOT,
      "ft²",
      "ft2",
      "sf",
      "sq ft",
      "sqft",
      "sq. ft.",
      "sq.ft.",
      "sq. ft",
      "square foot",
      "square feet"),
  SQUARE_METRE(
      Dimension.AREA,
      1,
      "m²",
      "m2",
      "sqm",
      "sq m",
      "sq. m.",
      "sq. m",
      "square metre",
      "square metres",
      "square meter",
      "square meters",
      "qm"),
  SQUARE_YARD(Dimension.AREA, 9 * Si.FOOT * Si.FOOT, "yd²", "yd2", "sy", "sq yd"),
  GALLON(Dimension.VOLUME, Si.GALLON, "gal", "gallon", "gallons", "gals", "us gal"),
  QUART(Dimension.VOLUME, Si.GALLON / 4, "qt", "quart", "quarts"),
  PINT(Dimension.VOLUME, Si.GALLON / 8, "pt", "pint", "pints"),
  LITRE(Dimension.VOLUME, 0.001, "L", "l", "litre", "liter", "litres", "liters", "ltr"),
  MILLILITRE(Dimension.VOLUME, 1e-6, "mL", "ml", "millilitre", "milliliter"),
  SQUARE_FOOT_PER_GALLON(
      Dimension.SPREAD, Si.FOOT * Si.FOOT / Si.GALLON, "ft²/gal", "ft2/gal", "sf/gal"),
  SQUARE_METRE_PER_LITRE(Dimension.SPREAD, 1000, "m²/L", "m2/l", "m²/l"),
  GALLON_PER_MINUTE(Dimension.FLOW, Si.GALLON / 60, "gpm", "gal/min"),
  LITRE_PER_MINUTE(Dimension.FLOW, 0.001 / 60, "L/min", "l/min", "lpm"),
  PSI(Dimension.PRESSURE, Si.PSI, "psi", "lb/in²"),
  BAR(Dimension.PRESSURE, 1e5, "bar"),
  MEGAPASCAL(Dimension.PRESSURE, 1e6, "MPa", "mpa"),
  INCH_PER_SECOND(Dimension.SPEED, Si.INCH, "in/s", "in/sec", "ips"),
  CENTIMETRE_PER_SECOND(Dimension.SPEED, 0.01, "cm/s"),
  HOUR(Dimension.TIME, 3600, "h", "hr", "hrs", "hour", "hours"),
  MINUTE(Dimension.TIME, 60, "min", "minute", "minutes"),
  KILOGRAM_PER_LITRE(Dimension.DENSITY, 1000, "kg/L", "kg/l", "g/ml"),
  GRAM_PER_LITRE(Dimension.DENSITY, 1, "g/L", "g/l"),
  POUND_PER_GALLON(Dimension.DENSITY, Si.POUND / Si.GALLON, "lb/gal"),
  PASCAL_SECOND(Dimension.VISCOSITY, 1, "Pa·s", "pa.s", "pa s", "pas"),
  SQUARE_FOOT_PER_HOUR(Dimension.AREA_RATE, Si.FOOT * Si.FOOT / 3600, "ft²/h", "ft2/h", "sf/h"),
  SQUARE_METRE_PER_HOUR(Dimension.AREA_RATE, 1.0 / 3600, "m²/h", "m2/h"),
  FOOT_PER_HOUR(Dimension.LENGTH_RATE, Si.FOOT / 3600, "ft/h"),
  METRE_PER_HOUR(Dimension.LENGTH_RATE, 1.0 / 3600, "m/h"),
  FAHRENHEIT(Dimension.TEMPERATURE, 5.0 / 9, "°F", "f", "deg f"),
  CELSIUS(Dimension.TEMPERATURE, 1, "°C", "c", "deg c"),
  ONE(Dimension.RATIO, 1, ""),
  PERCENT(Dimension.RATIO, 0.01, "%", "percent", "pct");

  private static final Map<String, Unit> BY_SPELLING = new HashMap<>();

  static {
    for (Unit unit : values()) {
      // of two units that share a word the first has it
      unit.spellings.forEach(word -> BY_SPELLING.putIfAbsent(word, unit));
      BY_SPELLING.putIfAbsent(unit.symbol.toLowerCase(Locale.ROOT), unit);
    }
    BY_SPELLING.remove("");
  }

  private final Dimension dimension;
  private final double si;
  private final String symbol;
  private final List<String> spellings;

  Unit(Dimension dimension, double si, String symbol, String... spellings) {
    this.dimension = dimension;
    this.si = si;
    this.symbol = symbol;
    this.spellings = List.of(spellings);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** Size in SI base units (m, m², m³, s, Pa, ...); for temperatures the size of one degree. */
  public double si() {
    return si;
  }

  public String symbol() {
    return symbol;
  }

  /**
   * Converts a value; exact to the last bit when both units are the same.
   *
   * @throws IllegalArgumentException when the dimensions differ
   */
  public double to(Unit target, double value) {
    if (this == target) {
      return value;
    }
    if (dimension != target.dimension) {
      throw new IllegalArgumentException("cannot convert " + this + " to " + target);
    }
    if (dimension == Dimension.TEMPERATURE) {
      return this == FAHRENHEIT ? (value - 32) * 5 / 9 : value * 9 / 5 + 32;
    }
    return value * si / target.si;
  }

  /** Finds a unit by its symbol or another spelling, in any case, surrounding spaces ignored. */
  public static Optional<Unit> find(String word) {
    return Optional.ofNullable(BY_SPELLING.get(word.strip().toLowerCase(Locale.ROOT)));
  }

  /** Sizes that several units share; a nested class because enum constants come first. */
  private static final class Si {
    static final double INCH = 0.0254;
    static final double FOOT = 0.3048;
    static final double GALLON = 231 * INCH * INCH * INCH;
    static final double POUND = 0.45359237;
    static final double PSI = POUND * 9.80665 / (INCH * INCH);
  }
}
