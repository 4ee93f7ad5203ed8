package org.wetmil.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What values a figure may take: between two numbers in the kept unit, or one of some words.
 *
 * @param whole whether only whole numbers are taken
 */
public record Range(double low, double high, boolean whole, List<String> words) {
  static final Range ANY =
      new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, false, List.of());

  /** Reads a range as the tables write it: 4..100, 1..6 whole, yes;no. */
  public static Range of(String text) {
    String plain = text.strip();
    if (plain.isEmpty()) {
      return ANY;
    }
    int dots = plain.indexOf("..");
    if (dots >= 0) {
      boolean whole = plain.endsWith(" whole");
      String high =
          whole ? plain.substring(dots + 2, plain.length() - 6) : plain.substring(dots + 2);
      return new Range(
          Double.parseDouble(plain.substring(0, dots)), Double.parseDouble(high), whole, List.of());
    }
    return new Range(ANY.low, ANY.high, false, List.of(plain.split(";")));
  }

  public boolean holds(double value) {
    return value >= low && value <= high && (!whole || value == Math.rint(value));
  }

  /** The word of this range that equals the text in any case; any text where no words are set. */
  public Optional<String> word(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT);
    if (words.isEmpty()) {
      return Optional.of(text.strip());
    }
    return words.stream().filter(w -> w.toLowerCase(Locale.ROOT).equals(plain)).findFirst();
  }
}
