package org.wetmil.estimate.explain;

import java.util.List;
import java.util.Optional;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Place;

/**
 * One figure of a line.
 *
 * @param of a filled column, or a figure that has no cell
 * @param value in the unit of the line's sheet; NaN when it is no number
 * @param formula how it came about; empty for a choice
 * @param typed whether the estimator put the value in the place of the formula
 * @param ingredients what entered the formula, each once, in the order in which it stands there
 */
public record Step(
    Place of, double value, Optional<Expr> formula, boolean typed, List<Ingredient> ingredients) {
  public Step {
    ingredients = List.copyOf(ingredients);
  }

  /** The filled column that it stands in; empty for a figure without a cell. */
  public Optional<FilledColumn> column() {
    return of instanceof FilledColumn column ? Optional.of(column) : Optional.empty();
  }
}
