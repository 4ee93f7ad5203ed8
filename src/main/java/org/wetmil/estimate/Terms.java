package org.wetmil.estimate;

import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Task;
import org.wetmil.formula.Expr;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/**
 * The leaves of one line's formulas, each in the units of the line's sheet.
 *
 * <p>A cell of the line is pointed at only when it holds a true number; otherwise the value as read
 * stands in the formula.
 */
final class Terms {
  private final BidLine line;
  private final Catalogue catalogue;
  private final UnitSystem basis;

  /**
   * @param basis the units that Basis shows figures in
   */
  Terms(BidLine line, Catalogue catalogue, UnitSystem basis) {
    this.line = line;
    this.catalogue = catalogue;
    this.basis = basis;
  }

  UnitSystem system() {
    return line.system();
  }

  /** A cell of the line in the unit of its quantity; it must hold a number. */
  Expr input(InputColumn column) {
    InputValue value = line.get(column);
    Quantity quantity = column.quantity();
    if (!value.isLive()) {
      return Expr.num(quantity.shown(value.number(), system()));
    }
    Expr cell = Expr.at(column, value.cellNumber());
    return UnitFactor.scaled(cell, value.unit().si() / quantity.unit(system()).si());
  }

  /** A figure of the tables. */
  Expr entry(Row row, String heading) {
    Entry entry = row.get(heading);
    Quantity quantity = entry.quantity();
    Expr cell = Expr.at(EntryPlace.of(row, heading), quantity.shown(entry.number(), basis));
    return UnitFactor.scaled(
        cell, UnitFactor.si(quantity, basis) / UnitFactor.si(quantity, system()));
  }

  Expr setting(Setting setting) {
    return entry(catalogue.row(setting), "Value");
  }

  Expr rate(Task task) {
    return entry(catalogue.row(task), "Rate");
  }

  /** A factor of the units, which Basis shows for its own family. */
  Expr factor(UnitFactor factor) {
    double value = factor.value(system());
    return system() == basis ? Expr.at(factor, value) : Expr.num(value);
  }

  /** A filled cell of the line, whose value is in the sheet's unit. */
  Expr filled(FilledColumn column, double shown) {
    return Expr.at(column, shown);
  }

  /** A choice that stands in the formula as a number. */
  Expr literal(double base, Quantity quantity) {
    return Expr.num(quantity.shown(base, system()));
  }
}
