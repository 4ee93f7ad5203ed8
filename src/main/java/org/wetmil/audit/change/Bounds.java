package org.wetmil.audit.change;

import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Range;
import org.wetmil.catalogue.TableSpec;
import org.wetmil.catalogue.Tables;

/**
 * Values that a figure can have on a wall.
 *
 * @param low least, kept unit
 * @param high greatest, kept unit
 */
record Bounds(double low, double high) {
  /** Greatest share of the paint sprayed that can stay on the work: some always drifts (house). */
  static final double GREATEST_TRANSFER = 0.95;

  /** What the table itself takes. */
  static Bounds of(Catalogue catalogue, Tables table, String column) {
    TableSpec spec = catalogue.table(table).spec();
    Range range = spec.fields().get(spec.index(column)).range();
    return new Bounds(range.low(), range.high());
  }

  Bounds atMost(double most) {
    return new Bounds(low, Math.min(high, most));
  }

  double hold(double value) {
    return Math.max(low, Math.min(high, value));
  }

  boolean holds(double value) {
    return value >= low && value <= high;
  }
}
