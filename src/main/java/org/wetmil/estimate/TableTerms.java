package org.wetmil.estimate;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Task;
import org.wetmil.estimate.price.Containers;
import org.wetmil.formula.Expr;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/**
 * Figures of the tables as leaves of formulas, in the units of one family of sheets. Most stand in
 * every line, so each leaf is made once; looked up without a function for what is missing, which
 * would be an object for each of a hundred leaves a line.
 */
final class TableTerms {
  private final Catalogue catalogue;
  private final UnitSystem system;
  private final UnitSystem basis;
  private final Map<Row, Map<String, Expr>> entries = new IdentityHashMap<>();
  private final Map<Setting, Expr> settings = new EnumMap<>(Setting.class);
  private final Map<Task, Expr> rates = new EnumMap<>(Task.class);
  private final Map<UnitFactor, Expr> factors = new EnumMap<>(UnitFactor.class);
  private final Map<String, Containers> containers = new HashMap<>();

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
    Map<String, Expr> ofRow = entries.computeIfAbsent(row, key -> new HashMap<>());
    Expr known = ofRow.get(heading);
    if (known == null) {
      known = made(row, heading);
      ofRow.put(heading, known);
    }
    return known;
  }

  private Expr made(Row row, String heading) {
    Entry entry = row.get(heading);
    Quantity quantity = entry.quantity();
    Expr cell = Expr.at(EntryPlace.of(row, heading), quantity.shown(entry.number(), basis));
    return UnitFactor.scaled(
        cell, UnitFactor.si(quantity, basis) / UnitFactor.si(quantity, system));
  }

  Expr setting(Setting setting) {
    Expr known = settings.get(setting);
    if (known == null) {
      known = entry(catalogue.row(setting), "Value");
      settings.put(setting, known);
    }
    return known;
  }

  Expr rate(Task task) {
    Expr known = rates.get(task);
    if (known == null) {
      known = entry(catalogue.row(task), "Rate");
      rates.put(task, known);
    }
    return known;
  }

  /** What a coating is bought in. */
  Containers containers(Coating coating) {
    return containers.computeIfAbsent(
        coating.name(), name -> Containers.of(catalogue, coating, system));
  }

  /** A factor of the units, which Basis shows for its own family. */
  Expr factor(UnitFactor factor) {
    Expr known = factors.get(factor);
    if (known == null) {
      double value = factor.value(system);
      known = system == basis ? Expr.at(factor, value) : Expr.told(factor, value);
      factors.put(factor, known);
    }
    return known;
  }
}
