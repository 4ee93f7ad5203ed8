package org.wetmil.jobs.explain;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Setup;
import org.wetmil.estimate.explain.Explanation;
import org.wetmil.estimate.explain.Ingredients;
import org.wetmil.estimate.explain.Step;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Place;
import org.wetmil.quantity.Quantity;
import org.wetmil.workbook.fill.beside.FilledCells;
import org.wetmil.workbook.opc.FileName;

/** Words an explanation: the one place where its text is made. */
final class ExplainText {
  private static final int STEP = 4;
  private static final int FURTHER = 2;

  private static final List<FilledColumn> TIP =
      List.of(FilledColumn.TIP_CODE, FilledColumn.ORIFICE, FilledColumn.FAN);

  private final Path file;
  private final Bid bid;
  private final FilledCells.Place place;
  private final FilledLine filled;
  private final Explanation explanation;
  private final List<Finding> findings;
  private final boolean isFilled;
  private final Ingredients ingredients;
  private final Page page = new Page();

  /**
   * @param isFilled whether the workbook was filled before
   */
  ExplainText(
      Path file,
      Bid bid,
      FilledCells.Place place,
      Explanation explanation,
      List<Finding> findings,
      boolean isFilled) {
    this.isFilled = isFilled;
    this.file = file;
    this.bid = bid;
    this.place = place;
    this.filled = place.line();
    this.explanation = explanation;
    this.findings = findings;
    this.ingredients = new Ingredients(bid.catalogue(), filled, bid.system());
  }

  /**
   * @param asked the cell, on a bid sheet
   * @param figure the filled column that it stands in; empty when the whole line is told
   */
  List<String> lines(Asked asked, Optional<FilledColumn> figure) {
    top(asked, figure);
    read(figure.isPresent());
    steps();
    if (figure.isPresent() && explanation.steps().isEmpty()) {
      page.gap().line(figure.get().heading() + " is blank: the findings say what is missing.");
    }
    findings();
    return page.lines();
  }

  private void top(Asked asked, Optional<FilledColumn> figure) {
    page.line(
        "%s, sheet %s, row %d: %s"
            .formatted(FileName.of(file), asked.sheet(), asked.row(), title()));
    asked
        .column()
        .flatMap(column -> figure.map(FilledColumn::heading).or(() -> input(column)))
        .ifPresent(
            heading ->
                page.line(
                    "%s is %s.%s"
                        .formatted(
                            new Asked("", asked.row(), asked.column()),
                            heading,
                            figure.isPresent() ? " This is all that it rests on." : "")));
    lacking().ifPresent(page::line);
    if (!explanation.steps().isEmpty()) {
      page.line(
          "Beside the name of a step stands what its cell shows; below it, numbers with up to six"
              + " digits. The workbook itself rounds nothing from step to step."
              + (isFilled ? "" : " Its filled cells are named as a fill would place them."));
    }
  }

  /** Why a line has no paint and no hours. */
  private Optional<String> lacking() {
    if (filled.isFilled()) {
      return Optional.empty();
    }
    List<String> lacking = new ArrayList<>();
    if (filled.work().surface() == null) {
      lacking.add("a surface that is known");
    }
    if (filled.work().coating() == null) {
      lacking.add("a coating that is known");
    }
    if (filled.area() != null) {
      filled.area().missing().forEach(column -> lacking.add(column.heading()));
      if (filled.area().isTooLarge()) {
        lacking.add("an area that a job can have");
      }
    }
    return lacking.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "The line is not filled, since it lacks " + String.join(" and ", lacking) + ".");
  }

  private Optional<String> input(int column) {
    return place.inputAt(column).map(InputColumn::heading);
  }

  private String title() {
    String surface = or(place.surface(), "no surface");
    String room = place.room().isEmpty() ? "" : " of " + place.room();
    return surface + room + " in " + or(filled.line().text(InputColumn.COATING), "no coating");
  }

  private static String or(String text, String otherwise) {
    return text.isEmpty() ? otherwise : text;
  }

  private void read(boolean restricted) {
    ReadCells cells = new ReadCells(bid.catalogue(), place);
    Set<InputColumn> wanted = EnumSet.allOf(InputColumn.class);
    if (restricted) {
      wanted.retainAll(Wanted.by(explanation.steps(), filled));
    }
    page.gap().line("What the cells say").table(2, cells.read(wanted));
    List<List<String>> assumed = cells.assumed(wanted);
    if (!assumed.isEmpty()) {
      page.gap().line("What stands in for blank cells").table(2, assumed);
    }
  }

  private void steps() {
    Sources sources = new Sources();
    Map<Place, Integer> numbers = new HashMap<>();
    Set<String> before = new HashSet<>();
    StepText words = new StepText(bid.catalogue(), place, ingredients);
    for (Step step : explanation.steps()) {
      int number = numbers.size() + 1;
      numbers.put(step.of(), number);
      page.gap().line(0, STEP, heading(number, step));
      if (step.of() == FilledColumn.TIP_CODE) {
        TipText tips = new TipText(bid.catalogue(), filled, explanation.tips().orElseThrow());
        tips.write(page, STEP);
      }
      step.formula().ifPresent(formula -> formula(step, formula));
      words.sentences(step).stream()
          .filter(before::add)
          .forEach(said -> page.line(STEP, FURTHER, said));
      sources
          .of(step.ingredients(), number)
          .forEach(said -> page.line(STEP + FURTHER, FURTHER, said));
    }
  }

  private String heading(int number, Step step) {
    String name = "%-3s ".formatted(number).replace(" ", Numbers.TIED) + ingredients.named(step);
    if (step.column().isEmpty()) {
      return name + ": " + Numbers.of(step.value(), ingredients.unit(step));
    }
    FilledColumn column = step.column().get();
    if (column == FilledColumn.TIP_CODE) {
      return name + ": " + tip(filled.recommended()) + cells(TIP);
    }
    String shown =
        Double.isNaN(step.value())
            ? "none"
            : Numbers.shown(step.value(), column, filled.system(), ingredients.unit(step));
    return name + ": " + shown + cells(List.of(column));
  }

  private String tip(Setup setup) {
    return setup.isTip()
        ? "%s, orifice %s, fan %s"
            .formatted(
                setup.tip().code(),
                Numbers.of(setup.tip().orificeThou(), Quantity.ORIFICE, filled.system()),
                Numbers.of(setup.fanIn(), Quantity.FAN_WIDTH, filled.system()))
        : "none";
  }

  private String cells(List<FilledColumn> columns) {
    String cells =
        columns.stream()
            .flatMap(column -> place.cell(column).stream())
            .collect(Collectors.joining(", "));
    return cells.isEmpty() ? "" : "  (" + cells + ")";
  }

  private void formula(Step step, Expr formula) {
    boolean nothing = formula instanceof Expr.Part && formula.value() == 0;
    if (formula instanceof Expr.Num || nothing || step.of() == FilledColumn.COUNTED) {
      return;
    }
    String unit = ingredients.unit(step);
    FormulaText numbers = FormulaText.numbers(ingredients);
    page.line(STEP, FURTHER, FormulaText.words(ingredients).write(formula));
    FormulaText.Held held = FormulaText.Held.find(formula);
    if (held == null) {
      String put = numbers.write(formula);
      String result = Numbers.of(formula.value(), unit);
      if (!put.equals(result)) {
        page.line(STEP, FURTHER, "= " + put);
      }
      page.line(STEP, FURTHER, "= " + result);
    } else {
      page.line(STEP, FURTHER, "= " + numbers.write(held.inner()));
      double inner = held.inner().value();
      String came = "= " + Numbers.of(inner, unit);
      page.line(
          STEP,
          FURTHER,
          inner == formula.value()
              ? came + numbers.inside(held)
              : came
                  + ", taken as "
                  + Numbers.of(formula.value(), unit)
                  + ", since it is "
                  + numbers.limits(held));
    }
    if (step.typed()) {
      page.line(
          STEP,
          FURTHER,
          "You put "
              + Numbers.of(step.value(), unit)
              + " in the place of this formula; the steps after it follow that.");
    }
  }

  private void findings() {
    page.gap();
    if (findings.isEmpty()) {
      page.line("No findings on this line.");
      return;
    }
    page.line("Findings on this line");
    for (Finding finding : findings) {
      String severity = finding.severity().name().toLowerCase(Locale.ROOT);
      page.line(2, 2, severity + " " + finding.check() + ": " + finding.message());
      page.line(4, 0, "What to do: " + Checks.get(finding.check()).advice());
    }
  }
}
