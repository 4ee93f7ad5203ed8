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
 * Figures of the tables as leaves of formulas, in the units of one family of sheets. Settings and
 * rates stand in every line, so their leaves are made once.
 */
final class TableTerms {
  private final Catalogue catalogue;
  private final UnitSystem system;
  private final UnitSystem basis;
  private final Expr[] settings = new Expr[Setting.values().length];
  private final Expr[] rates = new Expr[Task.values().length];

  /**
   * @param system the units of the sheets
   * @param basis the units that Basis shows figures in
   */
  TableTerms(Catalogue catalogue, UnitSystem system, UnitSystem basis) {
    this.catalogue = catalogue;
    this.system = system;
    this.basis = basis;
  }

  UnitSystem system() {
    return system;
  }

  Expr entry(Row row, String heading) {
    Entry entry = row.get(heading);
    Quantity quantity = entry.quantity();
    Expr cell = Expr.at(EntryPlace.of(row, heading), quantity.shown(entry.number(), basis));
    return UnitFactor.scaled(
        cell, UnitFactor.si(quantity, basis) / UnitFactor.si(quantity, system));
  }

  Expr setting(Setting setting) {
    int at = setting.ordinal();
    if (settings[at] == null) {
      settings[at] = entry(catalogue.row(setting), "Value");
    }
    return settings[at];
  }

  Expr rate(Task task) {
    int at = task.ordinal();
    if (rates[at] == null) {
      rates[at] = entry(catalogue.row(task), "Rate");
    }
    return rates[at];
  }

  /** A factor of the units, which Basis shows for its own family. */
  Expr factor(UnitFactor factor) {
    double value = factor.value(system);
    return system == basis ? Expr.at(factor, value) : Expr.num(value);
  }
}
