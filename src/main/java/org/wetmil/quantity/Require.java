package org.wetmil.quantity;

/** Guards at the door of each formula, so that a NaN or a swapped sign stops where it is made. */
public final class Require {
  private Require() {}

  public static void positive(String name, double value) {
    within(name, value, value > 0 && Double.isFinite(value), "finite and above 0");
  }

  public static void notNegative(String name, double value) {
    within(name, value, value >= 0 && Double.isFinite(value), "finite and at least 0");
  }

  public static void finite(String name, double value) {
    within(name, value, Double.isFinite(value), "finite");
  }

  /** A share above 0 and at most 1: solids, stick, hit, transfer efficiency. */
  public static void share(String name, double value) {
    within(name, value, value > 0 && value <= 1, "above 0 and at most 1");
  }

  /** A share of at least 0 and below 1: overlap, waste. */
  public static void loss(String name, double value) {
    within(name, value, value >= 0 && value < 1, "at least 0 and below 1");
  }

  /** A value within two ends, which belong to it. */
  public static void between(String name, double value, double least, double most) {
    within(name, value, value >= least && value <= most, least + " to " + most);
  }

  private static void within(String name, double value, boolean holds, String range) {
    if (!holds) {
      throw new IllegalArgumentException(name + " must be " + range + ", but is " + value);
    }
  }
}
