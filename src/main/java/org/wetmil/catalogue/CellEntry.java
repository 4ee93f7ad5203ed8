package org.wetmil.catalogue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Reads one cell of the estimator's tables; what cannot be used becomes a problem. */
final class CellEntry {
  private static final int LEAST_ORIFICE_THOU = 5;
  private static final int GREATEST_ORIFICE_THOU = 61;

  private final String table;
  private final UnitSystem fallback;
  private final List<TableProblem> problems;

  CellEntry(String table, UnitSystem fallback, List<TableProblem> problems) {
    this.table = table;
    this.fallback = fallback;
    this.problems = problems;
  }

  void problem(StatedRow stated, StatedRow.StatedCell cell, String expected) {
    problems.add(new TableProblem(table, stated.sheet(), cell.address(), cell.raw(), expected));
  }

  /** The cell as a value of this quantity and range; empty, with a problem, when it is none. */
  Optional<Entry> read(
      StatedRow stated, StatedRow.StatedCell cell, Field field, Quantity quantity, Range range) {
    return quantity.isNumber()
        ? number(stated, cell, quantity, range)
        : word(stated, cell, field, range);
  }

  private Optional<Entry> number(
      StatedRow stated, StatedRow.StatedCell cell, Quantity quantity, Range range) {
    if (Double.isNaN(cell.number())) {
      problem(stated, cell, "a number");
      return Optional.empty();
    }
    Unit unit = unit(quantity, cell);
    if (unit.dimension() != quantity.base().dimension()) {
      problem(stated, cell, "a value in " + quantity.unit(fallback).symbol());
      return Optional.empty();
    }
    double number = unit.to(quantity.base(), cell.number());
    if (!range.holds(number)) {
      problem(stated, cell, shown(quantity, range));
      return Optional.empty();
    }
    double live = cell.trueNumber() ? cell.number() : Double.NaN;
    Origin origin = stated.origin(cell, unit, live);
    return Optional.of(
        new Entry(cell.raw().strip(), number, quantity, Kind.YOURS, stated.source(), origin));
  }

  /**
   * The unit a number is in. A share may be typed as 36, 36 % or 0.36, also under a heading that
   * says %: only a sign in the cell makes a percentage of a number up to 1.
   */
  private Unit unit(Quantity quantity, StatedRow.StatedCell cell) {
    if (quantity == Quantity.SHARE && isRatio(cell.unit())) {
      boolean signed = !cell.trueNumber() && cell.raw().contains("%");
      boolean over = cell.number() > 1 && !(cell.trueNumber() && cell.share());
      return signed || over ? Unit.PERCENT : Unit.ONE;
    }
    return cell.unit() == null ? quantity.unit(fallback) : cell.unit();
  }

  private static boolean isRatio(Unit unit) {
    return unit == null || unit.dimension() == Unit.ONE.dimension();
  }

  private Optional<Entry> word(
      StatedRow stated, StatedRow.StatedCell cell, Field field, Range range) {
    Optional<String> word =
        switch (field.heading()) {
          case "Measured by" -> MeasuredBy.find(cell.raw()).map(MeasuredBy::words);
          case "Narrowest dimension" -> narrowest(cell);
          case "Preparation" -> preparation(cell.raw());
          case "Even orifices" -> orifices(cell.raw());
          default -> range.word(cell.raw()).or(() -> range.word(Answers.plain(cell.raw())));
        };
    if (word.isEmpty()) {
      String meant =
          range.words().isEmpty() ? field.meaning() : "one of " + String.join(", ", range.words());
      problem(stated, cell, field.heading().equals("Preparation") ? Condition.expected() : meant);
    }
    return word.map(text -> text(stated, cell, text));
  }

  /** A cell whose text is taken as it stands. */
  Entry text(StatedRow stated, StatedRow.StatedCell cell, String text) {
    Unit unit = cell.unit() == null ? Unit.ONE : cell.unit();
    Origin origin = stated.origin(cell, unit, Double.NaN);
    return new Entry(text, Double.NaN, Quantity.TEXT, Kind.YOURS, stated.source(), origin);
  }

  /** A dimension's name, or a width in the unit of a girth, kept as inches. */
  private Optional<String> narrowest(StatedRow.StatedCell cell) {
    if (Double.isNaN(cell.number())) {
      return Narrowest.find(cell.raw()).map(found -> cell.raw().strip());
    }
    Unit unit = cell.unit() == null ? Quantity.GIRTH.unit(fallback) : cell.unit();
    return unit.dimension() == Unit.INCH.dimension() && cell.number() > 0
        ? Optional.of(Double.toString(unit.to(Unit.INCH, cell.number())))
        : Optional.empty();
  }

  private static Optional<String> preparation(String raw) {
    return Condition.tasks(raw).map(tasks -> raw.strip());
  }

  private static Optional<String> orifices(String raw) {
    boolean good =
        Arrays.stream(raw.split(";"))
            .map(String::strip)
            .allMatch(
                part ->
                    part.matches("\\d{1,2}")
                        && Integer.parseInt(part) >= LEAST_ORIFICE_THOU
                        && Integer.parseInt(part) <= GREATEST_ORIFICE_THOU);
    return good ? Optional.of(raw.strip()) : Optional.empty();
  }

  private String shown(Quantity quantity, Range range) {
    return "a %s from %s to %s %s"
        .formatted(
            range.whole() ? "whole number" : "value",
            plain(quantity.shown(range.low(), fallback)),
            plain(quantity.shown(range.high(), fallback)),
            quantity.unit(fallback).symbol())
        .strip();
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
