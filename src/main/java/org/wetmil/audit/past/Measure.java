package org.wetmil.audit.past;

import org.wetmil.quantity.Quantity;

/** What is compared, each apart from the other. */
public enum Measure {
  /** Coating in US gallons, unthinned. */
  PAINT("paint", Quantity.VOLUME),
  /** Person-hours. */
  HOURS("hours", Quantity.TIME);

  private final String word;
  private final Quantity quantity;

  Measure(String word, Quantity quantity) {
    this.word = word;
    this.quantity = quantity;
  }

  public String word() {
    return word;
  }

  public Quantity quantity() {
    return quantity;
  }
}
