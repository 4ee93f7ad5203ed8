package org.wetmil.quantity;

/** Numbers of things in words, as in 1 line and 3 lines. */
public final class Count {
  private Count() {}

  /**
   * A number of things.
   *
   * @param one a word whose plural ends in s
   */
  public static String of(long number, String one) {
    return of(number, one, one + "s");
  }

  /** A number of things whose plural is told. */
  public static String of(long number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }
}
