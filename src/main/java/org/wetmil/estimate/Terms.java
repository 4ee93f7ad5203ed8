package org.wetmil.estimate;

import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Task;
import org.wetmil.estimate.price.Containers;
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
  private final TableTerms tables;

  Terms(BidLine line, TableTerms tables) {
    this.line = line;
    this.tables = tables;
  }

  UnitSystem system() {
    return tables.system();
  }

  /** A cell of the line in the unit of its quantity; it must hold a number. */
  Expr input(InputColumn column) {
    InputValue value = line.get(column);
    Quantity quantity = column.quantity();
    if (!value.isLive()) {
      return Expr.told(column, quantity.shown(value.number(), system()));
    }
    Expr cell = Expr.at(column, value.cellNumber());
    return UnitFactor.scaled(cell, value.unit().si() / quantity.unit(system()).si());
  }

  /** A figure of the tables. */
  Expr entry(Row row, String heading) {
    return tables.entry(row, heading);
  }

  Expr setting(Setting setting) {
    return tables.setting(setting);
  }

  Expr rate(Task task) {
    return tables.rate(task);
  }

  Containers containers(Coating coating) {
    return tables.containers(coating);
  }

  /** A factor of the units. */
  Expr factor(UnitFactor factor) {
    return tables.factor(factor);
  }

  /** A filled cell of the line, whose value is in the sheet's unit. */
  Expr filled(FilledColumn column, double shown) {
    return Expr.at(column, shown);
  }

  /** A figure without a cell of its own, which stands in the formula as a number. */
  Expr given(Given given, double base) {
    return Expr.told(given, given.quantity().shown(base, system()));
  }
}
