package org.wetmil.quantity;

/** What a unit measures; only units of one dimension convert into each other. */
public enum Dimension {
  LENGTH,
  AREA,
  VOLUME,
  SPREAD,
  FLOW,
  PRESSURE,
  SPEED,
  TIME,
  DENSITY,
  VISCOSITY,
  TEMPERATURE,
  AREA_RATE,
  LENGTH_RATE,
  RATIO
}
