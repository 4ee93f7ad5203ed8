package org.wetmil.audit.past;

import java.util.Locale;
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

  /** The word as a sentence or a heading begins with it. */
  public String title() {
    return word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1);
  }

  public Quantity quantity() {
    return quantity;
  }
}
