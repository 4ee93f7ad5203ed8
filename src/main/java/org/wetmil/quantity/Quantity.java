package org.wetmil.quantity;

/**
 * What a column or a setting measures, and the unit it has in each family.
 *
 * <p>Figures are kept in the US unit of their quantity; conversion happens where cells are read and
 * written.
 */
public enum Quantity {
  LENGTH(Unit.FOOT, Unit.METRE),
  GIRTH(Unit.INCH, Unit.MILLIMETRE),
  FAN_WIDTH(Unit.INCH, Unit.CENTIMETRE),
  ORIFICE(Unit.THOU, Unit.MILLIMETRE),
  FILM(Unit.MIL, Unit.MICROMETRE),
  AREA(Unit.SQUARE_FOOT, Unit.SQUARE_METRE),
  VOLUME(Unit.GALLON, Unit.LITRE),
  SPREAD(Unit.SQUARE_FOOT_PER_GALLON, Unit.SQUARE_METRE_PER_LITRE),
  FLOW(Unit.GALLON_PER_MINUTE, Unit.LITRE_PER_MINUTE),
  PRESSURE(Unit.PSI, Unit.BAR),
  GUN_SPEED(Unit.INCH_PER_SECOND, Unit.CENTIMETRE_PER_SECOND),
  TIME(Unit.HOUR, Unit.HOUR),
  DENSITY(Unit.KILOGRAM_PER_LITRE, Unit.KILOGRAM_PER_LITRE),
  CONCENTRATION(Unit.GRAM_PER_LITRE, Unit.GRAM_PER_LITRE),
  VISCOSITY(Unit.PASCAL_SECOND, Unit.PASCAL_SECOND),
  TEMPERATURE(Unit.FAHRENHEIT, Unit.CELSIUS),
  AREA_RATE(Unit.SQUARE_FOOT_PER_HOUR, Unit.SQUARE_METRE_PER_HOUR),
  LENGTH_RATE(Unit.FOOT_PER_HOUR, Unit.METRE_PER_HOUR),
  SHARE(Unit.ONE, Unit.ONE),
  NUMBER(Unit.ONE, Unit.ONE),
  TEXT(Unit.ONE, Unit.ONE);

  private final Unit us;
  private final Unit metric;

  Quantity(Unit us, Unit metric) {
    this.us = us;
    this.metric = metric;
  }

  /** The unit that figures of this quantity are kept in. */
  public Unit base() {
    return us;
  }

  public Unit unit(UnitSystem system) {
    return system == UnitSystem.US ? us : metric;
  }

  /** Converts a kept figure into the unit of a family. */
  public double shown(double base, UnitSystem system) {
    return us.to(unit(system), base);
  }

  public boolean isNumber() {
    return this != TEXT;
  }
}
