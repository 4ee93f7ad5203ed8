package org.wetmil.quantity;

import java.util.Locale;
import java.util.Optional;

/** The two families of units a bid can be written in. */
public enum UnitSystem {
  US,
  METRIC;

  /** As sentences name the units: US units, metric units. */
  public String word() {
    return this == US ? "US" : "metric";
  }

  /** Reads the word an estimator writes on a Settings row: {@code US}, {@code feet}, {@code m}. */
  public static Optional<UnitSystem> find(String word) {
    return switch (word.strip().toLowerCase(Locale.ROOT)) {
      case "us", "us customary", "imperial", "feet", "ft", "inches" -> Optional.of(US);
      case "metric", "si", "metre", "meter", "metres", "meters", "m" -> Optional.of(METRIC);
      default -> Optional.empty();
    };
  }
}
