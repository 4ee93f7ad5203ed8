package org.wetmil.jobs.explain;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.explain.Ingredient;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/** Numbers as an explanation writes them. */
final class Numbers {
  /** Keeps a number and its unit on one line; wrapping makes it a plain space. */
  static final String TIED = "\u00A0";

  /** Digits that a pocket calculator is given; more where the whole part has more. */
  private static final int DIGITS = 6;

  private static final int FACTOR_DIGITS = 10;

  private Numbers() {}

  /** To six digits, without zeros that say nothing. */
  static String plain(double value) {
    return plain(value, DIGITS);
  }

  /** The size of one unit in another, which most often has an end. */
  static String exact(double factor) {
    return plain(factor, FACTOR_DIGITS);
  }

  private static String plain(double value, int digits) {
    if (!Double.isFinite(value)) {
      return "none";
    }
    BigDecimal exact = BigDecimal.valueOf(value);
    int whole = exact.precision() - exact.scale();
    BigDecimal rounded =
        exact.round(new MathContext(Math.max(digits, whole), RoundingMode.HALF_UP));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** With its unit. */
  static String of(double value, String unit) {
    return plain(value) + (unit.isEmpty() ? "" : TIED + unit);
  }

  static String of(Ingredient ingredient) {
    return of(ingredient.value(), ingredient.unit());
  }

  /** A kept figure in the unit of a family. */
  static String of(double base, Quantity quantity, UnitSystem system) {
    return of(quantity.shown(base, system), quantity.unit(system).symbol());
  }

  /** A kept figure to four digits, for comparing. */
  static String brief(double base, Quantity quantity, UnitSystem system) {
    double shown = quantity.shown(base, system);
    double four =
        Double.isFinite(shown)
            ? BigDecimal.valueOf(shown)
                .round(new MathContext(4, RoundingMode.HALF_UP))
                .doubleValue()
            : shown;
    return of(four, quantity.unit(system).symbol());
  }

  /** As the cell shows it. */
  static String shown(double value, FilledColumn column, UnitSystem system, String unit) {
    String number =
        BigDecimal.valueOf(value)
            .setScale(column.decimals(system), RoundingMode.HALF_UP)
            .toPlainString();
    return unit.isEmpty() ? number : number + TIED + unit;
  }
}
