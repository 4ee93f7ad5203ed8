package org.wetmil.catalogue;

import java.util.Locale;
import org.wetmil.quantity.Quantity;

/**
 * One declared column of a table.
 *
 * @param heading the heading without a unit
 * @param quantity what it measures; null where each row says so itself
 * @param range values taken, in the kept unit
 * @param kind how surely the built-in values are known
 * @param source where they come from
 * @param meaning what the figure does
 */
public record Field(
    String heading, Quantity quantity, Range range, Kind kind, String source, String meaning) {

  static Field of(String declaration) {
    String[] parts = declaration.split("\\|", -1);
    if (parts.length != 6) {
      throw new IllegalArgumentException("six parts wanted in: " + declaration);
    }
    return new Field(
        parts[0].strip(),
        parts[1].strip().equals("by row") ? null : quantity(parts[1]),
        Range.of(parts[2]),
        Kind.of(parts[3]),
        parts[4].strip(),
        parts[5].strip());
  }

  static Quantity quantity(String word) {
    return Quantity.valueOf(word.strip().toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
