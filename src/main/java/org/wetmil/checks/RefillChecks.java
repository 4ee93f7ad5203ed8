package org.wetmil.checks;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Quoted;
import org.wetmil.estimate.EarlierCells;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.formula.Written;
import org.wetmil.quantity.Quantity;

/** What somebody changed in a filled workbook before it was filled again. */
final class RefillChecks {
  /** Numbers that differ by less are the same after a change of units. */
  private static final double SAME = 1e-9;

  static final List<Check> ALL =
      List.of(
          new Check(
              "overridden-by-hand",
              Severity.WARNING,
              "A number or formula of yours stands over a filled formula",
              "A number follows nothing, and all figures after it rest on it.",
              Kind.HOUSE,
              "the cells of the earlier fill",
              "Fill with --refresh to have the formula back, or leave yours.",
              Rule.ofCells(RefillChecks::overridden)),
          new Check(
              "choice-replaced",
              Severity.NOTE,
              "A tip, coats or a pressure is another than the cell held",
              "An input has changed since the last fill, or the cell was typed over.",
              Kind.HOUSE,
              "the cells of the earlier fill",
              "If it was typed, state it under Tip, Coats, Pressure or Include, where it is kept.",
              Rule.ofLine(RefillChecks::replaced)),
          ReaderChecks.remark(
              "basis-typed-over",
              Severity.NOTE,
              "A value on Basis is yours",
              "It holds for every line, and for every later fill of this workbook.",
              "Empty the cell on Basis to have the former value back."),
          ReaderChecks.remark(
              "typed-on-our-sheet",
              Severity.WARNING,
              "Something was written where the next fill writes anew",
              "Sheets that a fill adds, and its column Findings, are written anew by the next; only"
                  + " this finding keeps it.",
              "Write it under Notes beside your lines, or on a sheet of your own."));

  private RefillChecks() {}

  private static Stream<Fault> overridden(Line line) {
    EarlierCells earlier = line.filled().line().earlier();
    if (earlier.isEmpty()) {
      return Stream.empty();
    }
    return Stream.of(FilledColumn.values())
        .filter(EarlierCells::isFormula)
        .flatMap(column -> overridden(line, earlier, column).stream());
  }

  private static Optional<Fault> overridden(Line line, EarlierCells earlier, FilledColumn column) {
    Figure figure = line.filled().figures().getOrDefault(column, new Figure.Empty());
    if (earlier.words().containsKey(column)) {
      String word = Quoted.of(earlier.words().get(column));
      return line.found(
          null,
          word,
          "",
          "%s held the text %s, which is replaced.".formatted(column.heading(), word));
    }
    double typed = earlier.typed(column);
    if (Double.isNaN(typed)) {
      return Optional.empty();
    }
    Written own = earlier.written().get(column);
    if (figure instanceof Figure.Typed kept) {
      String said = said(line, column, kept.number());
      double formula = kept.formula().value();
      String limit = Double.isFinite(formula) ? said(line, column, formula) : "";
      String instead = limit.isEmpty() ? "nothing can be computed" : "the formula gives " + limit;
      return line.found(
          null, said, limit, kept(column, own, kept.own().isPresent(), said) + instead + ".");
    }
    double shown = column.quantity().shown(typed, line.system());
    if (isSame(shown, figure.number())) {
      return Optional.empty();
    }
    String said = said(line, column, shown);
    return line.found(
        null,
        said,
        "",
        own == null
            ? "%s was typed by hand as %s, which the formula replaces."
                .formatted(column.heading(), said)
            : "%s held a formula of yours, %s, which came to %s and which ours replaces."
                .formatted(column.heading(), formula(own), said));
  }

  private static String kept(FilledColumn column, Written own, boolean again, String said) {
    if (own == null) {
      return column.heading() + " was typed by hand: " + said + " stands, where ";
    }
    String formula = column.heading() + " holds a formula of yours, " + formula(own);
    return again
        ? formula + ": " + said + " stands, where "
        : formula + ", which points at what is made anew: its value " + said + " stands, where ";
  }

  private static String formula(Written own) {
    return Quoted.of("=" + own.text());
  }

  private static Optional<Fault> replaced(Line line) {
    EarlierCells earlier = line.filled().line().earlier();
    if (earlier.isEmpty()) {
      return Optional.empty();
    }
    List<String> before = new ArrayList<>();
    List<String> now = new ArrayList<>();
    Set<FilledColumn> held = EnumSet.copyOf(EarlierCells.CHOICES);
    if (earlier.numbers().containsKey(FilledColumn.COATS)) {
      // 0 is no word of the estimator's where the line lacked something at the last fill
      held.add(FilledColumn.COUNTED);
    }
    for (FilledColumn column : held) {
      Figure figure = line.filled().figures().getOrDefault(column, new Figure.Empty());
      String was = was(line, earlier, column);
      String is = is(line, column, figure);
      boolean same =
          was.equals(is)
              || isSame(
                  column
                      .quantity()
                      .shown(earlier.numbers().getOrDefault(column, Double.NaN), line.system()),
                  figure.number());
      if (!was.isEmpty() && !same) {
        before.add(column.heading().toLowerCase(Locale.ROOT) + " " + was);
        now.add(is.isEmpty() ? "none" : is);
      }
    }
    if (before.isEmpty()) {
      return Optional.empty();
    }
    String measured = String.join(", ", before);
    String limit = String.join(", ", now);
    return line.found(
        null, measured, limit, "The cells held %s; this fill gives %s.".formatted(measured, limit));
  }

  private static String was(Line line, EarlierCells earlier, FilledColumn column) {
    Double number = earlier.numbers().get(column);
    return number == null
        ? earlier.words().getOrDefault(column, "")
        : said(line, column, column.quantity().shown(number, line.system()));
  }

  private static String is(Line line, FilledColumn column, Figure figure) {
    if (figure instanceof Figure.Word word) {
      return word.text();
    }
    return Double.isNaN(figure.number()) ? "" : said(line, column, figure.number());
  }

  private static boolean isSame(double one, double other) {
    return Math.abs(one - other) <= SAME * Math.abs(other);
  }

  /** A figure in the unit of its sheet, with its unit. */
  private static String said(Line line, FilledColumn column, double shown) {
    if (column.quantity() == Quantity.TEXT) {
      return Say.number(shown, 0);
    }
    double base = column.quantity().unit(line.system()).to(column.quantity().base(), shown);
    return line.say(column.quantity(), base);
  }
}
