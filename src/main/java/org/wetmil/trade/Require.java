package org.wetmil.trade;

/** Guards at the door of each formula, so that a NaN or a swapped sign stops where it is made. */
final class Require {
  private Require() {}

  static void positive(String name, double value) {
    within(name, value, value > 0 && Double.isFinite(value), "finite and above 0");
  }

  static void notNegative(String name, double value) {
    within(name, value, value >= 0 && Double.isFinite(value), "finite and at least 0");
  }

  static void finite(String name, double value) {
    within(name, value, Double.isFinite(value), "finite");
  }

  /** A share above 0 and at most 1: solids, stick, hit, transfer efficiency. */
  static void share(String name, double value) {
    within(name, value, value > 0 && value <= 1, "above 0 and at most 1");
  }

  /** A share of at least 0 and below 1: overlap, waste. */
  static void loss(String name, double value) {
    within(name, value, value >= 0 && value < 1, "at least 0 and below 1");
  }

  static void between(String name, double value, double least, double most) {
    within(name, value, value >= least && value <= most, least + " to " + most);
  }

  private static void within(String name, double value, boolean holds, String range) {
    if (!holds) {
      throw new IllegalArgumentException(name + " must be " + range + ", but is " + value);
    }
  }
}
