package org.wetmil.measure;

/** Guards at the door of each rule, so that a NaN or a swapped sign stops where it is made. */
final class Check {
  private Check() {}

  static void positive(String name, double value) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(name + " must be finite and above 0, but is " + value);
    }
  }

  static void notNegative(String name, double value) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(name + " must be finite and at least 0, but is " + value);
    }
  }
}
