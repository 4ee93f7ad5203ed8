package org.wetmil.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Lays the rows an estimator states over one table: cell by cell, the rest stays as it was. */
final class Overlay {
  private final Catalogue catalogue;
  private final Tables which;
  private final TableSpec spec;
  private final UnitSystem fallback;
  private final List<TableProblem> problems;

  Overlay(Catalogue catalogue, Tables which, UnitSystem fallback, List<TableProblem> problems) {
    this.catalogue = catalogue;
    this.which = which;
    this.spec = catalogue.table(which).spec();
    this.fallback = fallback;
    this.problems = problems;
  }

  List<Row> rows(List<StatedRow> stated) {
    List<Row> rows = new ArrayList<>();
    stated.forEach(row -> merge(row).ifPresent(rows::add));
    return rows;
  }

  private Optional<Row> merge(StatedRow stated) {
    StatedRow.StatedCell name = stated.cells().get(spec.fields().get(0).heading());
    if (name == null || name.raw().isBlank()) {
      nameless(stated);
      return Optional.empty();
    }
    Optional<Row> under = under(stated, name);
    if (under.isEmpty() && spec.isByRow()) {
      String near =
          String.join(
              ", ", Names.nearest(name.raw(), catalogue.rows(which).stream().map(Row::name)));
      problem(stated, name, "one of the names of this table" + (near.isEmpty() ? "" : ": " + near));
      return Optional.empty();
    }
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < spec.fields().size(); i++) {
      Field field = spec.fields().get(i);
      Entry below = under.isPresent() ? under.get().entries().get(i) : blank(field);
      StatedRow.StatedCell cell = stated.cells().get(field.heading());
      boolean states = cell != null && !cell.raw().isBlank();
      // the name itself was looked up above; a range of its row says nothing about it
      boolean taken = states && i > 0 && !isFixed(field);
      entries.add(taken ? entry(stated, field, below, cell) : below);
    }
    String own = which.isList() ? name.raw() + " #" + stated.row() : name.raw().strip();
    entries.set(0, text(stated, name, spec.fields().get(0)));
    if (!spec.isByRow() && under.isEmpty() && !which.isList() && isIncomplete(stated, entries)) {
      return Optional.empty();
    }
    return Optional.of(
        new Row(spec, under.isPresent() && spec.isByRow() ? under.get().name() : own, entries));
  }

  /** A row that says something but not of what is not passed over in silence. */
  private void nameless(StatedRow stated) {
    stated.cells().values().stream()
        .filter(cell -> !cell.raw().isBlank())
        .findFirst()
        .ifPresent(cell -> problem(stated, cell, spec.fields().get(0).heading() + " beside it"));
  }

  /** A table by row keeps what a value measures; only the value itself can be stated. */
  private boolean isFixed(Field field) {
    return spec.isByRow() && field.quantity() != null;
  }

  /** The row whose figures fill what the stated row leaves blank. */
  private Optional<Row> under(StatedRow stated, StatedRow.StatedCell name) {
    if (which.isList()) {
      return Optional.empty();
    }
    StatedRow.StatedCell className = stated.cells().get("Class");
    if (which == Tables.COATINGS && className != null && !className.raw().isBlank()) {
      Coating base = catalogue.coating(className.raw()).orNull();
      if (base == null) {
        String classes = String.join(", ", catalogue.rows(which).stream().map(Row::name).toList());
        problem(stated, className, "a class of coating: " + classes);
        return Optional.empty();
      }
      return Optional.of(fromClass(base.row()));
    }
    return catalogue.table(which).find(name.raw());
  }

  private Row fromClass(Row row) {
    Origin origin = new Origin.FromClass(row.name());
    return new Row(
        spec,
        row.name(),
        row.entries().stream()
            .map(e -> new Entry(e.text(), e.number(), e.quantity(), e.kind(), e.source(), origin))
            .toList());
  }

  private boolean isIncomplete(StatedRow stated, List<Entry> entries) {
    List<String> wanted =
        switch (which) {
          case COATINGS -> List.of("Class");
          case SURFACES ->
              List.of(
                  "Measured by",
                  "Narrowest",
                  "Widest fan",
                  "Stick",
                  "Hit",
                  "Band",
                  "Trigger share");
          case TEXTURES -> List.of("Roughness");
          case SHAPES -> List.of("Factor", "Counts");
          case OPENING_KINDS -> List.of("Role");
          case CONDITIONS -> List.of("Preparation", "State");
          default -> List.of();
        };
    boolean incomplete = false;
    for (String heading : wanted) {
      if (!entries.get(spec.index(heading)).isStated()) {
        StatedRow.StatedCell name = stated.cells().get(spec.fields().get(0).heading());
        problem(stated, name, "a value under " + heading + ", since this row is a new one");
        incomplete = true;
      }
    }
    return incomplete;
  }

  private Entry entry(StatedRow stated, Field field, Entry below, StatedRow.StatedCell cell) {
    Quantity quantity = spec.isByRow() ? below.quantity() : field.quantity();
    Range range = spec.isByRow() ? rowRange(stated) : field.range();
    if (!quantity.isNumber()) {
      return word(stated, field, range, below, cell);
    }
    if (Double.isNaN(cell.number())) {
      problem(stated, cell, "a number");
      return below;
    }
    Unit unit = unit(quantity, cell);
    if (unit.dimension() != quantity.base().dimension()) {
      problem(stated, cell, "a value in " + quantity.unit(fallback).symbol());
      return below;
    }
    double number = unit.to(quantity.base(), cell.number());
    if (!range.holds(number)) {
      problem(stated, cell, "a value " + shown(quantity, range));
      return below;
    }
    double live = cell.trueNumber() ? cell.number() : Double.NaN;
    Origin origin = new Origin.Cell(stated.sheet(), cell.address(), unit, live);
    return new Entry(cell.raw(), number, quantity, Kind.YOURS, "your sheet", origin);
  }

  private Entry word(
      StatedRow stated, Field field, Range range, Entry below, StatedRow.StatedCell cell) {
    Optional<String> word = range.word(cell.raw());
    boolean good =
        word.isPresent()
            && switch (field.heading()) {
              case "Measured by" -> MeasuredBy.find(cell.raw()).isPresent();
              case "Narrowest" -> isNarrowest(cell.raw());
              case "Band" -> cell.raw().strip().matches("(?i)broad|joinery");
              default -> true;
            };
    if (!good) {
      problem(
          stated,
          cell,
          range.words().isEmpty() ? field.meaning() : "one of " + String.join(", ", range.words()));
      return below;
    }
    Entry text = text(stated, cell, field);
    return new Entry(
        word.get(), text.number(), text.quantity(), text.kind(), text.source(), text.origin());
  }

  private static boolean isNarrowest(String text) {
    try {
      Narrowest.of(text);
      return true;
    } catch (NumberFormatException e) {
      return false;
    }
  }

  /** A share typed over 1 without a percent sign is a percentage: 36 is 0.36. */
  private Unit unit(Quantity quantity, StatedRow.StatedCell cell) {
    if (quantity == Quantity.SHARE) {
      return cell.unit() == Unit.PERCENT || (!cell.share() && cell.number() > 1)
          ? Unit.PERCENT
          : Unit.ONE;
    }
    return cell.unit() == null ? quantity.unit(fallback) : cell.unit();
  }

  private Range rowRange(StatedRow stated) {
    String name = stated.cells().get(spec.fields().get(0).heading()).raw();
    return Range.of(catalogue.table(which).get(name).text("Range"));
  }

  private String shown(Quantity quantity, Range range) {
    return "from %s to %s %s"
        .formatted(
            plain(quantity.shown(range.low(), fallback)),
            plain(quantity.shown(range.high(), fallback)),
            quantity.unit(fallback).symbol())
        .strip();
  }

  private static String plain(double value) {
    return java.math.BigDecimal.valueOf(value)
        .round(new java.math.MathContext(4))
        .stripTrailingZeros()
        .toPlainString();
  }

  private Entry text(StatedRow stated, StatedRow.StatedCell cell, Field field) {
    Unit unit = cell.unit() == null ? Unit.ONE : cell.unit();
    Origin origin = new Origin.Cell(stated.sheet(), cell.address(), unit, Double.NaN);
    Quantity quantity = field.quantity() == null ? Quantity.TEXT : field.quantity();
    return new Entry(cell.raw().strip(), Double.NaN, quantity, Kind.YOURS, "your sheet", origin);
  }

  private static Entry blank(Field field) {
    Quantity quantity = field.quantity() == null ? Quantity.TEXT : field.quantity();
    return new Entry("", Double.NaN, quantity, field.kind(), field.source(), new Origin.BuiltIn());
  }

  private void problem(StatedRow stated, StatedRow.StatedCell cell, String expected) {
    problems.add(
        new TableProblem(spec.name(), stated.sheet(), cell.address(), cell.raw(), expected));
  }
}
