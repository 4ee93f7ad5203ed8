package org.wetmil.estimate;

import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Setting;
import org.wetmil.formula.Expr;
import org.wetmil.trade.Film;

/**
 * How many coats, and the wet film that each is to have.
 *
 * @param coats whole coats, 1 to {@value #MOST}
 * @param basis what the number rests on
 * @param targetMil wet film aimed at in each coat
 * @param wantedMil wet film that the specified total would want of each coat, before it is held
 *     into the coating's range; NaN without a specified total
 */
public record CoatPlan(int coats, Basis basis, double targetMil, double wantedMil) {
  /** More coats than anybody lays; more is a slip that a finding names (house). */
  public static final int MOST = 99;

  /** A last bit of a double must not make another coat (house). */
  private static final double ROUNDING = 1e-9;

  /** No film is thinner than a molecule; less is a slip that a finding names (house). */
  private static final double LEAST_MIL = 1e-6;

  /** What the number of coats rests on. */
  public enum Basis {
    STATED,
    SPECIFIED_FILM,
    USUAL
  }

  static CoatPlan of(Work work, Catalogue catalogue) {
    Coating coating = work.coating();
    double stated = work.line().number(InputColumn.COATS);
    double totalDryMil = work.line().number(InputColumn.SPECIFIED_FILM);
    boolean specified = totalDryMil >= LEAST_MIL;
    int coats;
    Basis basis;
    if (stated >= 1) {
      // a part of a coat is painted as a whole one; a finding says so
      coats = (int) Math.ceil(Math.min(stated, MOST) - ROUNDING);
      basis = Basis.STATED;
    } else if (specified) {
      coats = wanted(work, catalogue, totalDryMil);
      basis = Basis.SPECIFIED_FILM;
    } else {
      coats = coating.usualCoats();
      basis = Basis.USUAL;
    }
    if (!specified) {
      return new CoatPlan(coats, basis, coating.wetTargetMil(), Double.NaN);
    }
    double wantedMil =
        Film.wetMil(totalDryMil / coats, coating.volumeSolids(), work.thinnerShare());
    double held = Math.max(coating.wetMinMil(), Math.min(coating.wetMaxMil(), wantedMil));
    return new CoatPlan(coats, basis, held, wantedMil);
  }

  /**
   * Coats that a total dry film takes: total / (VS x working maximum / (1 + t)), rounded up, where
   * the working maximum is the lesser of the coating's greatest wet film and 1.25 x its target
   * (house).
   */
  public static int wanted(Work work, Catalogue catalogue, double totalDryMil) {
    Coating coating = work.coating();
    double workingMil =
        Math.min(
            coating.wetMaxMil(),
            catalogue.number(Setting.WORKING_MAXIMUM) * coating.wetTargetMil());
    double dryMil = Film.dryMil(workingMil, coating.volumeSolids(), work.thinnerShare());
    return (int) Math.min(MOST, Math.max(1, Math.ceil(totalDryMil / dryMil - ROUNDING)));
  }

  /** The target as a formula: from the specified total where there is one. */
  Expr target(Work work, Terms terms, Expr coatsCell) {
    var row = work.coating().row();
    if (Double.isNaN(wantedMil)) {
      return terms.entry(row, "Wet film target");
    }
    Expr total = terms.input(InputColumn.SPECIFIED_FILM);
    Expr solids = terms.entry(row, "Volume solids");
    Expr wanted = thinned(work, terms, total).over(solids.times(coatsCell));
    Expr held =
        Expr.max(
            terms.entry(row, "Wet film min"), Expr.min(terms.entry(row, "Wet film max"), wanted));
    return new Expr.Part(Given.TARGET, held);
  }

  /** The coats that a specified total takes, before they are rounded up, as a formula. */
  static Expr wanted(Work work, Terms terms) {
    var row = work.coating().row();
    Expr most =
        Expr.min(
            terms.entry(row, "Wet film max"),
            terms.setting(Setting.WORKING_MAXIMUM).times(terms.entry(row, "Wet film target")));
    Expr total = thinned(work, terms, terms.input(InputColumn.SPECIFIED_FILM));
    return total.over(terms.entry(row, "Volume solids").times(most));
  }

  /** A volume or film times (1 + thinner), where there is thinner. */
  static Expr thinned(Work work, Terms terms, Expr of) {
    return work.thinnerShare() > 0
        ? of.times(Expr.num(1).plus(terms.input(InputColumn.THINNER)))
        : of;
  }
}
