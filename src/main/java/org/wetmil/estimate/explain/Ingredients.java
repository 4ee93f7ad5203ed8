package org.wetmil.estimate.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.EntryPlace;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Given;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.UnitFactor;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Place;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Tells of each number in a formula what it is, in which unit, and what it rests on. */
public final class Ingredients {
  private static final Set<Place> AMOUNTS =
      Set.of(
          FilledColumn.PAINT_COST,
          FilledColumn.LABOUR_COST,
          FilledColumn.COST_LOW,
          FilledColumn.COST_HIGH);

  private final Catalogue catalogue;
  private final FilledLine filled;
  private final UnitSystem basis;

  /**
   * @param basis the units that Basis shows figures in
   */
  public Ingredients(Catalogue catalogue, FilledLine filled, UnitSystem basis) {
    this.catalogue = catalogue;
    this.filled = filled;
    this.basis = basis;
  }

  /** Figures of tables and settings that a choice rests on, those that are stated. */
  List<Ingredient> stated(List<EntryPlace> places) {
    return places.stream()
        .filter(place -> place.row(catalogue).isPresent())
        .map(place -> of(place, shown(place)))
        .toList();
  }

  private double shown(EntryPlace place) {
    Entry entry = place.row(catalogue).orElseThrow().get(place.heading());
    return entry.quantity().shown(entry.number(), basis);
  }

  /** What a formula is made of, each once; of a choice between two the part that applies. */
  List<Ingredient> in(Expr formula) {
    Map<Place, Ingredient> found = new LinkedHashMap<>();
    collect(formula, found);
    return new ArrayList<>(found.values());
  }

  private void collect(Expr expr, Map<Place, Ingredient> found) {
    if (expr instanceof Expr.At at) {
      found.putIfAbsent(at.place(), of(at));
    } else if (expr instanceof Expr.Part part) {
      found.putIfAbsent(part.place(), of(part));
    } else {
      expr.parts().forEach(each -> collect(each, found));
    }
  }

  /** What a step is called. */
  public String named(Step step) {
    return of(step.of(), step.value()).name();
  }

  /** The unit of a step's value. */
  public String unit(Step step) {
    return of(step.of(), step.value()).unit();
  }

  /** A cell that a formula points at, in the unit that the cell is in. */
  public Ingredient of(Expr.At at) {
    if (at.place() instanceof InputColumn input) {
      String unit = filled.line().get(input).unit().symbol();
      return new Ingredient(input, input.heading(), at.value(), unit, "", Optional.empty());
    }
    return of(at.place(), at.value());
  }

  /** A part that has a name. */
  public Ingredient of(Expr.Part part) {
    return of(part.place(), part.value());
  }

  /** A figure in the unit of the line's sheet; of a table in that of Basis. */
  Ingredient of(Place place, double value) {
    if (place instanceof InputColumn input) {
      return plain(place, input.heading(), value, input.quantity());
    }
    if (place instanceof FilledColumn column) {
      return plain(place, column.heading(), value, column.quantity());
    }
    if (place instanceof UnitFactor factor) {
      Ingredient.Said said =
          new Ingredient.Said(Kind.DERIVED, factor.meaning(), "exact sizes of the units");
      return new Ingredient(place, factor.title(), value, "", "", Optional.of(said));
    }
    if (place instanceof Given given) {
      return plain(place, given.title(), value, given.quantity());
    }
    return ofTable((EntryPlace) place, value);
  }

  private Ingredient plain(Place place, String name, double value, Quantity quantity) {
    String unit =
        AMOUNTS.contains(place)
            ? currency()
            : place == Given.PRICE
                ? each(Quantity.VOLUME.unit(filled.system()))
                : quantity.unit(filled.system()).symbol();
    return new Ingredient(place, name, value, unit, "", Optional.empty());
  }

  private Ingredient ofTable(EntryPlace place, double value) {
    Entry entry =
        place
            .row(catalogue)
            .map(row -> row.get(place.heading()))
            .orElseThrow(() -> new IllegalStateException("the tables do not state " + place));
    boolean byRow =
        place.table().equals(Tables.SETTINGS.title())
            || place.table().equals(Tables.LABOUR_RATES.title());
    return new Ingredient(
        place,
        byRow ? capital(place.row()) : place.heading(),
        value,
        place.row().equals(Setting.LABOUR_RATE.title())
            ? each(Unit.HOUR)
            : entry.quantity().unit(basis).symbol(),
        byRow ? place.table() : place.table() + ", " + place.row(),
        Optional.of(Ingredient.Said.of(entry)));
  }

  private String currency() {
    return catalogue.text(Setting.CURRENCY);
  }

  /** An amount for each unit of something. */
  private String each(Unit unit) {
    return currency().isEmpty() ? "per " + unit.symbol() : currency() + "/" + unit.symbol();
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
