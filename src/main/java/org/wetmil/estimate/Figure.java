package org.wetmil.estimate;

import java.util.Optional;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Written;

/** What stands in a filled cell, in the unit of its sheet. */
public sealed interface Figure {

  /** A choice: a number that follows nothing. */
  record Choice(double number) implements Figure {}

  /** A choice in words, such as a tip code that is none. */
  record Word(String text) implements Figure {}

  /** A closed form: the formula, and the value that it comes to. */
  record Live(Expr formula, double value) implements Figure {
    public Live(Expr formula) {
      this(formula, formula.value());
    }
  }

  /**
   * What the estimator put in the place of the formula.
   *
   * @param formula what would stand there otherwise
   * @param own the formula that comes to the number; empty when the number was typed, or stands
   *     alone since the formula cannot be written again
   */
  record Typed(double number, Expr formula, Optional<Written> own) implements Figure {}

  /** Nothing: an input is missing, and a finding says which. */
  record Empty() implements Figure {}

  /** The number in the cell; NaN when there is none. A choice and what was typed say their own. */
  default double number() {
    return this instanceof Live live ? live.value() : Double.NaN;
  }
}
