package org.wetmil.estimate;

import org.wetmil.formula.Place;
import org.wetmil.quantity.Quantity;

/** Figures that stand in formulas as numbers, since no cell holds them; named to explain them. */
public enum Given implements Place {
  TARGET("Target film", Quantity.FILM),
  FAN("Fan of the tip followed", Quantity.FAN_WIDTH),
  ORIFICE("Orifice of the tip followed", Quantity.ORIFICE),
  EASY_PACE("Easy pace", Quantity.GUN_SPEED),
  WORK_WIDTH("Width of the work", Quantity.FAN_WIDTH),
  FLOOR("Floor of the room", Quantity.AREA),
  OPENINGS("Openings listed", Quantity.AREA),
  REVEALS("Reveals listed", Quantity.AREA),
  COATS_WANTED("Coats that the film takes", Quantity.NUMBER),
  GUN_PRESSURE("Pressure at the gun", Quantity.PRESSURE),
  HOSE_LOSS("Hose loss", Quantity.PRESSURE),
  LIFT("Lift to the gun", Quantity.PRESSURE),
  HOSE_FACTOR("Hose factor", Quantity.NUMBER),
  LIFT_FACTOR("Lift factor", Quantity.NUMBER),
  PRICE("Cheapest price of the paint", Quantity.NUMBER),
  PAINT_RATIO("Ratio for paint", Quantity.NUMBER),
  SPRAY_RATIO("Ratio for spraying less 1", Quantity.NUMBER),
  COST_RATIO("Ratio for cost less 1", Quantity.NUMBER);

  private final String title;
  private final Quantity quantity;

  Given(String title, Quantity quantity) {
    this.title = title;
    this.quantity = quantity;
  }

  public String title() {
    return title;
  }

  public Quantity quantity() {
    return quantity;
  }
}
