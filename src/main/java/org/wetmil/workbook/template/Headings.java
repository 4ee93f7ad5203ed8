package org.wetmil.workbook.template;

import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Headings with the unit that their column is to be written in. */
final class Headings {
  private Headings() {}

  static String of(String heading, Quantity quantity, UnitSystem system) {
    String symbol = symbol(quantity, system);
    return symbol.isEmpty() ? heading : heading + " (" + symbol + ")";
  }

  /** The unit that an estimator writes; shares are written in per cent. */
  static Unit unit(Quantity quantity, UnitSystem system) {
    return quantity == Quantity.SHARE ? Unit.PERCENT : quantity.unit(system);
  }

  /** Its symbol; empty for words and plain numbers. */
  static String symbol(Quantity quantity, UnitSystem system) {
    return unit(quantity, system).symbol();
  }
}
