package org.wetmil.estimate.explain;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Given;
import org.wetmil.estimate.TipComparison;
import org.wetmil.estimate.Workings;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Place;
import org.wetmil.quantity.UnitSystem;

/**
 * How a line came out.
 *
 * @param steps its figures in the order of computation; the tip is the step of its code
 * @param tips how the tips came out; empty where no step rests on the tip
 */
public record Explanation(FilledLine filled, List<Step> steps, Optional<TipComparison> tips) {
  /** The order of computation; the likely range is told only when it is asked for. */
  private static final List<Place> ORDER =
      List.of(
          FilledColumn.GROSS,
          FilledColumn.DEDUCTED,
          FilledColumn.ADDED,
          FilledColumn.NET_AREA,
          FilledColumn.RUNNING,
          Given.COATS_WANTED,
          FilledColumn.COATS,
          Given.TARGET,
          FilledColumn.PRESSURE,
          FilledColumn.TIP_CODE,
          Given.HOSE_LOSS,
          Given.LIFT,
          Given.GUN_PRESSURE,
          FilledColumn.FLOW,
          FilledColumn.SPEED,
          FilledColumn.WET_FILM,
          FilledColumn.DRY_FILM,
          FilledColumn.SPREAD,
          FilledColumn.PAINT,
          FilledColumn.SPRAY,
          FilledColumn.ROLL,
          FilledColumn.MASK,
          FilledColumn.PREPARE,
          FilledColumn.LABOUR,
          FilledColumn.PAINT_COST,
          FilledColumn.LABOUR_COST,
          FilledColumn.COUNTED,
          FilledColumn.PAINT_LOW,
          FilledColumn.PAINT_HIGH,
          FilledColumn.LABOUR_LOW,
          FilledColumn.LABOUR_HIGH,
          FilledColumn.COST_LOW,
          FilledColumn.COST_HIGH);

  private static final Set<FilledColumn> RANGE =
      EnumSet.range(FilledColumn.PAINT_LOW, FilledColumn.COST_HIGH);

  /** Columns that one choice fills together. */
  private static final Set<Place> OF_THE_TIP =
      Set.of(
          FilledColumn.ORIFICE, FilledColumn.FAN, FilledColumn.TIP_CODE, Given.FAN, Given.ORIFICE);

  public Explanation {
    steps = List.copyOf(steps);
  }

  /** The whole line, without its likely range. */
  public static Explanation of(Bid bid, FilledLine filled) {
    Map<Place, Step> all = all(bid, filled);
    RANGE.forEach(all::remove);
    return of(bid.catalogue(), filled, all, all.keySet());
  }

  /** What one filled figure of the line rests on, itself last. */
  public static Explanation of(Bid bid, FilledLine filled, FilledColumn asked) {
    Map<Place, Step> all = all(bid, filled);
    Set<Place> wanted = new HashSet<>();
    follow(stepOf(asked), all, wanted);
    return of(bid.catalogue(), filled, all, wanted);
  }

  /** The step that tells of a figure. */
  public static Place stepOf(Place place) {
    return OF_THE_TIP.contains(place) ? FilledColumn.TIP_CODE : place;
  }

  private static Explanation of(
      Catalogue catalogue, FilledLine filled, Map<Place, Step> all, Set<Place> wanted) {
    List<Step> steps = all.values().stream().filter(step -> wanted.contains(step.of())).toList();
    boolean tips = wanted.contains(FilledColumn.TIP_CODE) && filled.isSetUp();
    return new Explanation(
        filled, steps, tips ? Optional.of(TipComparison.of(catalogue, filled)) : Optional.empty());
  }

  private static void follow(Place place, Map<Place, Step> all, Set<Place> wanted) {
    Step step = all.get(place);
    if (step == null || !wanted.add(place)) {
      return;
    }
    step.ingredients().forEach(each -> follow(stepOf(each.place()), all, wanted));
    if (place == FilledColumn.COATS) {
      follow(Given.COATS_WANTED, all, wanted);
    } else if (place == FilledColumn.TIP_CODE) {
      follow(Given.TARGET, all, wanted);
      follow(FilledColumn.PRESSURE, all, wanted);
    }
  }

  private static Map<Place, Step> all(Bid bid, FilledLine filled) {
    UnitSystem basis = bid.system();
    Ingredients ingredients = new Ingredients(bid.catalogue(), filled, basis);
    Map<Place, Expr> workings =
        filled.isSetUp()
            ? new Workings(bid.catalogue(), filled, basis).formulas()
            : Map.<Place, Expr>of();
    Map<Place, Step> steps = new LinkedHashMap<>();
    for (Place place : ORDER) {
      Expr formula = workings.get(place);
      Figure figure = place instanceof FilledColumn column ? filled.figures().get(column) : null;
      if (figure instanceof Figure.Live live) {
        formula = live.formula();
      } else if (figure instanceof Figure.Typed typed && Double.isFinite(typed.formula().value())) {
        formula = typed.formula();
      }
      if (figure == null && formula == null) {
        continue;
      }
      List<Ingredient> in = new ArrayList<>();
      if (formula != null) {
        in.addAll(ingredients.in(formula));
      }
      if (place == FilledColumn.TIP_CODE && filled.isSetUp()) {
        in.addAll(ingredients.stated(TipBasis.of(bid.catalogue(), filled)));
      }
      double value = figure == null ? formula.value() : figure.number();
      boolean typed = figure instanceof Figure.Typed;
      steps.put(place, new Step(place, value, Optional.ofNullable(formula), typed, in));
    }
    return steps;
  }
}
