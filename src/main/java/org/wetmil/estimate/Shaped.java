package org.wetmil.estimate;

import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Shape;
import org.wetmil.formula.Expr;
import org.wetmil.measure.MeasuringRule;

/**
 * What takes the flat area of a line to the area that is painted.
 *
 * <p>A shape that the line names comes first. Under IS 1200-13 a surface that bears the name of a
 * shape, such as doors, takes its coefficient, unless the estimator states a factor for it. Else
 * the surface's own factor holds.
 */
final class Shaped {
  private final Terms terms;
  private final Row surface;
  private final Shape shape;
  private final boolean named;

  private Shaped(Terms terms, Row surface, Shape shape, boolean named) {
    this.terms = terms;
    this.surface = surface;
    this.shape = shape;
    this.named = named;
  }

  static Shaped of(Work work, Terms terms, Catalogue catalogue, MeasuringRule rule) {
    Row surface = work.surface().row();
    if (work.shape() != null) {
      return new Shaped(terms, surface, work.shape(), true);
    }
    boolean own = surface.get("Factor").origin().isYours();
    Shape byRule =
        rule == MeasuringRule.IS_1200_13 && !own
            ? catalogue.shape(work.surface().name()).orNull()
            : null;
    return new Shaped(terms, surface, byRule, false);
  }

  /** Null where the surface's own factor holds. */
  Shape shape() {
    return shape;
  }

  /** A stated area is taken as it is, unless the line itself names a shape beside it. */
  Expr flat(Expr stated) {
    return named ? stated.times(factor()) : stated;
  }

  /** Area from the dimensions: faces and factor, as far as they are stated. */
  Expr all(Expr one) {
    Entry faces = surface.get("Faces");
    Expr sides =
        faces.isStated() && !(shape != null && shape.allOver())
            ? one.times(terms.entry(surface, "Faces"))
            : one;
    return hasFactor() ? sides.times(factor()) : sides;
  }

  /** What an opening takes off: sheets are measured flat, openings off, and then increased. */
  Expr sheet(Expr opening, boolean stated) {
    return hasFactor() && (named || !stated) ? opening.times(factor()) : opening;
  }

  private boolean hasFactor() {
    return shape != null || surface.get("Factor").isStated();
  }

  private Expr factor() {
    return shape == null ? terms.entry(surface, "Factor") : terms.entry(shape.row(), "Factor");
  }
}
