package org.wetmil.estimate.explain;

import java.util.Optional;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Kind;
import org.wetmil.formula.Place;

/**
 * A number that entered a formula.
 *
 * @param name what the formula in words calls it
 * @param unit symbol of the unit that the number is in; empty when it has none
 * @param owner the row of a table that it is a figure of, with the table; empty for all else
 * @param constant what Basis says of it; empty for a cell of the line
 */
public record Ingredient(
    Place place, String name, double value, String unit, String owner, Optional<Said> constant) {

  /** What is said of a constant: how surely it is known, where it is from, where it was stated. */
  public record Said(Kind kind, String source, String where) {
    static Said of(Entry entry) {
      return new Said(entry.kind(), entry.source(), entry.origin().text());
    }
  }
}
