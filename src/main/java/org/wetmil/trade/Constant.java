package org.wetmil.trade;

/**
 * A figure that the formulas rest on, with what is needed to judge it.
 *
 * @param name what it is, in the words of the trade
 * @param value the figure, in {@code unit}
 * @param unit its unit as printed, or "share" or "ratio" where it has none
 * @param kind how well it is founded
 * @param source where it is from; for a figure from memory, that is said
 */
public record Constant(String name, double value, String unit, Kind kind, String source) {

  /** How well a figure is founded, best first. */
  public enum Kind {
    /** An exact legal or metric definition. */
    EXACT,
    /** Printed in a source that is named. */
    PUBLISHED,
    /** Arithmetic from exact or published figures. */
    DERIVED,
    /** Common practice in the trade, no source. */
    PRACTICE,
    /** Our own starting value, which the estimator is expected to replace. */
    HOUSE
  }
}
