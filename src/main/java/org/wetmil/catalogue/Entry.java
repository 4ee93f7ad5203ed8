package org.wetmil.catalogue;

import org.wetmil.quantity.Quantity;

/**
 * One value of a table, with everything that Basis says about it.
 *
 * @param text the value as written; empty when not stated
 * @param number the value in the kept unit of its quantity; NaN when it is no number
 * @param origin where it was stated
 */
public record Entry(
    String text, double number, Quantity quantity, Kind kind, String source, Origin origin) {

  public boolean isStated() {
    return !text.isEmpty();
  }

  public boolean isYes() {
    return text.equalsIgnoreCase("yes");
  }
}
