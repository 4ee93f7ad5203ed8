package org.wetmil.audit.stats;

/**
 * The values that a figure is likely to have.
 *
 * @param low lower end; NaN where there were too few numbers to say
 * @param high upper end; NaN where there were too few numbers to say
 */
public record Interval(double low, double high) {
  /** Too few numbers to say. */
  public static final Interval UNKNOWN = new Interval(Double.NaN, Double.NaN);

  /** The confidence that every interval of the audit has. */
  public static final double CONFIDENCE = 0.95;

  /** Around a middle, the same distance on both sides. */
  public static Interval around(double middle, double halfWidth) {
    return Double.isNaN(halfWidth) ? UNKNOWN : new Interval(middle - halfWidth, middle + halfWidth);
  }

  public boolean isKnown() {
    return !Double.isNaN(low);
  }

  public boolean holds(double value) {
    return value >= low && value <= high;
  }

  /** Whether the whole interval lies to one side of a value; false when it is not known. */
  public boolean excludes(double value) {
    return isKnown() && !holds(value);
  }

  /** An interval of natural logs as one of ratios. */
  public Interval exp() {
    return new Interval(Math.exp(low), Math.exp(high));
  }
}
