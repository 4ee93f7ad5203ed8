package org.wetmil.jobs.explain;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Quoted;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.CoatPlan;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Given;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Openings;
import org.wetmil.estimate.Pressure;
import org.wetmil.estimate.Work;
import org.wetmil.estimate.explain.Ingredients;
import org.wetmil.estimate.explain.Step;
import org.wetmil.formula.Expr;
import org.wetmil.measure.MeasuringRule;
import org.wetmil.measure.Taken;
import org.wetmil.quantity.Quantity;
import org.wetmil.workbook.fill.beside.FilledCells;

/** The sentences of a step beside its formula: what was chosen, and by which rule. */
final class StepText {
  private final Catalogue catalogue;
  private final FilledLine filled;
  private final FilledCells.Place place;
  private final Ingredients ingredients;

  StepText(Catalogue catalogue, FilledCells.Place place, Ingredients ingredients) {
    this.catalogue = catalogue;
    this.filled = place.line();
    this.place = place;
    this.ingredients = ingredients;
  }

  List<String> sentences(Step step) {
    List<String> said = new ArrayList<>();
    if (step.of() instanceof FilledColumn column) {
      said.addAll(of(column, step));
    } else if (step.of() == Given.HOSE_LOSS) {
      said.add(
          "Hose factor: 128 ÷ π in the units here (Hagen-Poiseuille). Flow and hose loss depend on"
              + " each other and were found together.");
      if (!filled.followed().gun().laminar()) {
        said.add("The flow is not laminar: the loss is a lower bound.");
      }
    } else if (step.of() == Given.LIFT) {
      said.add("Lift factor: the weight of the paint in the hose, in the units here.");
    }
    step.formula().ifPresent(formula -> compared(formula, said));
    return said;
  }

  private List<String> of(FilledColumn column, Step step) {
    boolean nothing = step.formula().filter(Expr.Num.class::isInstance).isPresent();
    return switch (column) {
      case NET_AREA -> openings();
      case DEDUCTED -> nothing ? List.of("Nothing comes off.") : List.of();
      case ADDED -> step.value() == 0 ? List.of("Nothing is added.") : List.of();
      case COATS -> List.of(coats());
      case PRESSURE -> List.of(pressure());
      case FLOW -> flow();
      case SPEED -> speed();
      case ROLL ->
          nothing
              ? List.of(
                  "Not back-rolled: nothing asks for it; unasked, bare or rough walls alone are"
                      + " rolled, after the first coat.")
              : List.of();
      case MASK ->
          nothing
              ? List.of("Nothing to mask is stated, and the floor is not covered on this line.")
              : step.ingredients().stream().anyMatch(each -> each.place() == Given.FLOOR)
                  ? List.of("Floor of the room: the first line of the room that has both sides.")
                  : List.of();
      case PREPARE ->
          nothing
              ? List.of(
                  filled.work().condition() == null
                      ? "No condition is stated, so nothing is prepared."
                      : "This condition needs no preparation.")
              : List.of();
      case PAINT_COST -> List.of(price());
      case COUNTED -> List.of(counted(step));
      case PAINT_LOW, PAINT_HIGH, LABOUR_LOW, LABOUR_HIGH, COST_LOW, COST_HIGH ->
          List.of(
              "The ratio comes from the settings Transfer, Film, Kept and Trigger range; one line"
                  + " of ten is beyond.");
      default -> List.of();
    };
  }

  private List<String> openings() {
    List<String> said = new ArrayList<>();
    MeasuringRule rule = Openings.rule(catalogue);
    said.add(
        "Measuring rule " + rule.title() + ": " + rule.meaning() + " (" + rule.source() + ").");
    if (filled.area().lump()) {
      said.add("Openings stated as one sum come off as typed: the rule wants the size of each.");
    }
    for (Openings.Placed each : filled.area().listed()) {
      String unit = Quantity.AREA.unit(filled.system()).symbol();
      double added = each.added(filled.system());
      said.add(
          "Opening listed: %s %s: %s off%s; %s."
              .formatted(
                  Numbers.plain(each.listed().count()),
                  each.listed().kind().isBlank() ? "opening" : each.listed().kind(),
                  Numbers.of(each.deducted(filled.system()), unit),
                  added > 0 ? ", reveals of " + Numbers.of(added, unit) + " added" : "",
                  why(each.taken().why())));
    }
    return said;
  }

  private static String why(Taken.Why why) {
    return switch (why) {
      case MEASURED_OVER -> "measured over";
      case DEDUCTED -> "it comes off whole";
      case ONE_FACE -> "the one deduction of two faces falls on this one";
      case HALF -> "the one deduction of two faces is shared";
      case OTHER_FACE -> "the one deduction of two faces falls on the other";
      case OTHER_REVEAL_UNKNOWN -> "taken off whole, the other side's reveal is not known";
    };
  }

  private String cell(InputColumn column) {
    return place.cells(column).isEmpty() ? "" : " in " + place.cells(column).get(0);
  }

  private String coats() {
    CoatPlan plan = filled.coats();
    if (plan.basis() == CoatPlan.Basis.STATED) {
      double stated = filled.line().number(InputColumn.COATS);
      return Numbers.plain(stated)
          + " stated"
          + cell(InputColumn.COATS)
          + (stated == plan.coats() ? "." : "; a part of a coat is painted as a whole one.");
    }
    if (plan.basis() == CoatPlan.Basis.SPECIFIED_FILM) {
      return "The coats that the specified film takes, rounded up to whole coats.";
    }
    return "Not stated: " + usual("Usual coats") + ".";
  }

  /** A figure of the coating with what it rests on. */
  private String usual(String heading) {
    Work work = filled.work();
    Entry entry = work.coating().row().get(heading);
    return heading
        + " of "
        + work.coating().name()
        + ", "
        + Numbers.of(entry.number(), entry.quantity(), filled.system())
        + " ("
        + Sources.said(entry.kind(), entry.source(), entry.origin().text())
        + ")";
  }

  private String pressure() {
    Pressure pressure = Pressure.of(filled.work(), catalogue);
    double stated = filled.line().number(InputColumn.PRESSURE);
    if (pressure.own()) {
      String said = psi(stated) + " stated" + cell(InputColumn.PRESSURE);
      if (pressure.psi() < stated) {
        return said + ", held to the sprayer's rating of " + psi(pressure.psi()) + ".";
      }
      return said
          + (pressure.atGun() ? " at the gun; what hose and lift take is added." : " at the pump.");
    }
    String why =
        Double.isNaN(stated)
            ? "Not stated: "
            : psi(stated)
                + " is outside what airless spraying takes ("
                + psi(catalogue.number(Setting.LEAST_PRESSURE))
                + " to "
                + psi(catalogue.number(Setting.GREATEST_PRESSURE))
                + "): ";
    boolean held = pressure.psi() < filled.work().coating().usualPsi();
    return why
        + usual("Usual pressure")
        + (held ? ", held to the sprayer's rating of " + psi(pressure.psi()) : "")
        + ".";
  }

  private String price() {
    Row coating = filled.work().coating().row();
    Entry sizes = coating.get("Container sizes");
    Entry price = coating.get("Price");
    return "Cheapest price: of the sizes %s at %s (%s), each price over its size."
        .formatted(
            sizes.isStated() ? sizes.text() : "of the settings",
            price.text(),
            Sources.said(price.kind(), price.source(), price.origin().text()));
  }

  private String psi(double psi) {
    return Numbers.of(psi, Quantity.PRESSURE, filled.system());
  }

  private List<String> flow() {
    if (!filled.followed().isTip()) {
      return List.of("No tip serves: this is the flow that lays the target film at the easy pace.");
    }
    return filled.followed().gun().test() == null
        ? List.of()
        : List.of("By your bucket test of this orifice with this coating.");
  }

  private List<String> speed() {
    if (!filled.followed().isTip()) {
      return List.of("No tip serves: the easy pace of the settings is assumed.");
    }
    if (filled.stroke().narrow()) {
      String width = Numbers.of(filled.stroke().widthIn(), Quantity.FAN_WIDTH, filled.system());
      return List.of(
          "The work is %s wide, no wider than Narrow work in the settings: one stroke, no overlap."
              .formatted(width));
    }
    return List.of();
  }

  private String counted(Step step) {
    if (step.value() > 0) {
      return "The line counts in the totals: "
          + (filled.line().text(InputColumn.INCLUDE).isEmpty()
              ? "Include is blank."
              : "Include says " + include() + ".");
    }
    return filled.isFilled()
        ? "The line is left out of the totals: Include says " + include() + "."
        : "The line is not filled, so it does not count in the totals.";
  }

  private String include() {
    return Quoted.of(filled.line().text(InputColumn.INCLUDE));
  }

  /** Which of several figures applies, where one is chosen by a comparison. */
  private void compared(Expr expr, List<String> said) {
    Expr.IfAtMost test = find(expr);
    if (test == null) {
      return;
    }
    FormulaText words = FormulaText.words(ingredients);
    FormulaText numbers = FormulaText.numbers(ingredients);
    List<String> over = new ArrayList<>();
    Expr at = test;
    String most = "";
    while (at instanceof Expr.IfAtMost step) {
      String limit = words.write(step.right()) + " (" + numbers.write(step.right()) + ")";
      if (step.holds()) {
        most = "at most " + limit;
      } else {
        over.clear();
        over.add("over " + limit);
      }
      at = step.applies();
    }
    if (!most.isEmpty()) {
      over.add(most);
    }
    said.add(
        words.write(test.left())
            + " "
            + numbers.write(test.left())
            + " is "
            + String.join(" and ", over)
            + ": "
            + words.write(at)
            + " "
            + numbers.write(at)
            + ".");
  }

  private static Expr.IfAtMost find(Expr expr) {
    if (expr instanceof Expr.IfAtMost test) {
      return test;
    }
    for (Expr part : expr.parts()) {
      Expr.IfAtMost found = find(part);
      if (found != null) {
        return found;
      }
    }
    return null;
  }
}
