package org.wetmil.estimate;

import java.util.LinkedHashMap;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Sprayer;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Place;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.Constants;

/**
 * The formulas of figures that no cell holds as a formula, for whoever explains a line: the film
 * aimed at, the coats that a specified film takes, and pressure and flow behind a hose.
 */
public final class Workings {
  private final FilledLine filled;
  private final Work work;
  private final Terms terms;

  /**
   * @param filled a line whose coating and surface are known
   * @param basis the units that Basis shows figures in
   */
  public Workings(Catalogue catalogue, FilledLine filled, UnitSystem basis) {
    this.filled = filled;
    this.work = filled.work();
    this.terms = new Terms(filled.line(), new TableTerms(catalogue, filled.system(), basis));
  }

  /** Each figure with its formula, in the order in which they are computed. */
  public Map<Place, Expr> formulas() {
    Map<Place, Expr> formulas = new LinkedHashMap<>();
    CoatPlan coats = filled.coats();
    if (coats.basis() == CoatPlan.Basis.SPECIFIED_FILM) {
      formulas.put(Given.COATS_WANTED, CoatPlan.wanted(work, terms));
    }
    Expr target = coats.target(work, terms, terms.filled(FilledColumn.COATS, coats.coats()));
    formulas.put(Given.TARGET, target instanceof Expr.Part part ? part.of() : target);
    Sprayer sprayer = work.sprayer();
    if (filled.followed().isTip() && sprayer != null && sprayer.hasHose()) {
      behindHose(sprayer.row(), formulas);
    }
    return formulas;
  }

  private void behindHose(Row sprayer, Map<Place, Expr> formulas) {
    GunFlow.At gun = filled.followed().gun();
    Expr density = Figures.density(work, terms);
    Expr bore = terms.entry(sprayer, "Hose bore");
    Expr loss =
        Expr.times(
                Expr.told(Given.HOSE_FACTOR, hoseFactor()),
                terms.entry(work.coating().row(), "Viscosity"),
                terms.entry(sprayer, "Hose length"),
                cell(FilledColumn.FLOW))
            .over(Expr.times(bore, bore, bore, bore));
    formulas.put(Given.HOSE_LOSS, loss);
    Expr pump = cell(FilledColumn.PRESSURE);
    Expr left = pump.minus(terms.given(Given.HOSE_LOSS, gun.lossPsi()));
    if (sprayer.get("Rise").isStated()) {
      Expr lift = Expr.told(Given.LIFT_FACTOR, liftFactor());
      formulas.put(Given.LIFT, Expr.times(lift, density, terms.entry(sprayer, "Rise")));
      double liftPsi = gun.pumpPsi() - gun.lossPsi() - gun.gunPsi();
      left = left.minus(terms.given(Given.LIFT, liftPsi));
    }
    formulas.put(Given.GUN_PRESSURE, left);
    boolean own = filled.followed() == filled.recommended();
    Expr orifice =
        own
            ? cell(FilledColumn.ORIFICE)
            : terms.given(Given.ORIFICE, filled.followed().tip().orificeThou());
    Expr atGun = terms.given(Given.GUN_PRESSURE, gun.gunPsi());
    formulas.put(FilledColumn.FLOW, Figures.flow(work, terms, gun.test(), orifice, atGun));
  }

  private Expr cell(FilledColumn column) {
    return terms.filled(column, filled.figures().get(column).number());
  }

  /** 128 / pi of Hagen-Poiseuille, in the units of the sheet. */
  private double hoseFactor() {
    double bore = si(Quantity.GIRTH);
    return 128
        / Math.PI
        * si(Quantity.LENGTH)
        * si(Quantity.FLOW)
        / (bore * bore * bore * bore)
        / si(Quantity.PRESSURE);
  }

  /** Weight of a litre of 1 kg in a column of one unit of length, in the units of the sheet. */
  private double liftFactor() {
    return si(Quantity.DENSITY)
        * Constants.GRAVITY_M_PER_S2.value()
        * si(Quantity.LENGTH)
        / si(Quantity.PRESSURE);
  }

  private double si(Quantity quantity) {
    return UnitFactor.si(quantity, terms.system());
  }
}
