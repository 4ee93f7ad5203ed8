package org.wetmil.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/**
 * Lays the rows an estimator states over one table: cell by cell, the rest stays as it was. A cell
 * or row that cannot be used is a problem and changes nothing.
 */
final class Overlay {
  private final Catalogue catalogue;
  private final Tables which;
  private final TableSpec spec;
  private final CellEntry cells;
  private final Consistency consistency;

  /** Rows made so far, by name: a class that the estimator states serves the products under it. */
  private final Map<String, Row> made = new HashMap<>();

  Overlay(Catalogue catalogue, Tables which, UnitSystem fallback, List<TableProblem> problems) {
    this.catalogue = catalogue;
    this.which = which;
    this.spec = catalogue.table(which).spec();
    this.cells = new CellEntry(spec.name(), spec.fields().get(0).heading(), fallback, problems);
    this.consistency = new Consistency(cells);
  }

  List<Row> rows(List<StatedRow> stated) {
    List<Row> rows = new ArrayList<>();
    Map<Row, StatedRow> from = new IdentityHashMap<>();
    for (StatedRow one : once(stated)) {
      merge(one)
          .ifPresent(
              row -> {
                rows.add(row);
                from.put(row, one);
                made.put(Names.key(row.name()), row);
              });
    }
    return which == Tables.SETTINGS
        ? consistency.settings(catalogue.table(which), rows, from)
        : rows;
  }

  /** The rows that have a name, the first of each; classes before the products that name them. */
  private List<StatedRow> once(List<StatedRow> stated) {
    Map<String, Integer> seen = new HashMap<>();
    List<StatedRow> rows = new ArrayList<>();
    for (StatedRow row : stated) {
      StatedRow.StatedCell name = name(row);
      if (name == null || name.raw().isBlank()) {
        row.cells().values().stream()
            .filter(cell -> !cell.raw().isBlank())
            .findFirst()
            .ifPresent(
                cell -> cells.problem(row, cell, "a name under " + spec.fields().get(0).heading()));
        continue;
      }
      Integer first = which.isList() ? null : seen.putIfAbsent(Names.key(name.raw()), row.row());
      if (first == null) {
        rows.add(row);
      } else {
        cells.problem(row, name, "each name once; row " + first + " states it already");
      }
    }
    rows.sort(Comparator.comparing(row -> stated(row, "Class").isPresent() && !isOwnClass(row)));
    return rows;
  }

  private boolean isOwnClass(StatedRow row) {
    return Names.key(stated(row, "Class").orElseThrow().raw()).equals(Names.key(name(row).raw()));
  }

  private Optional<Row> merge(StatedRow stated) {
    StatedRow.StatedCell name = name(stated);
    Optional<StatedRow.StatedCell> className =
        which == Tables.COATINGS ? stated(stated, "Class") : Optional.empty();
    Optional<Row> under = className.isPresent() ? ofClass(className.get()) : under(name);
    if (className.isPresent() && under.isEmpty()) {
      cells.problem(stated, className.get(), "a class of coating: " + names());
      return Optional.empty();
    }
    if (under.isEmpty() && spec.isByRow()) {
      cells.problem(stated, name, "one of the names of this table" + nearest(name.raw()));
      return Optional.empty();
    }
    List<Entry> below = under.map(Row::entries).orElseGet(this::blanks);
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i < spec.fields().size(); i++) {
      entries.add(entry(stated, i, below.get(i)));
    }
    if (entries.get(0).text().isEmpty()) {
      return Optional.empty();
    }
    className.ifPresent(
        cell ->
            entries.set(
                spec.index("Class"),
                cells.text(stated, cell, below.get(spec.index("Class")).text())));
    consistency.columns(which, spec, stated, entries, below);
    if (isIncomplete(stated, entries)) {
      return Optional.empty();
    }
    String own = which.isList() ? name.raw() + " #" + stated.row() : entries.get(0).text();
    return Optional.of(new Row(spec, spec.isByRow() ? under.orElseThrow().name() : own, entries));
  }

  /** What stands under a heading: the stated cell where it can be used, else the entry below. */
  private Entry entry(StatedRow stated, int i, Entry below) {
    Field field = spec.fields().get(i);
    Optional<StatedRow.StatedCell> cell = stated(stated, field.heading());
    boolean fixed = i > 0 && spec.isByRow() && field.quantity() != null;
    if (cell.isEmpty() || fixed) {
      return below;
    }
    if (i == 0) {
      return field.quantity().isNumber()
          ? cells.read(stated, cell.get(), field, field.quantity(), field.range()).orElse(below)
          : cells.text(stated, cell.get(), cell.get().raw().strip());
    }
    Range range = spec.isByRow() ? rowRange(stated) : field.range();
    Quantity quantity = spec.isByRow() ? below.quantity() : field.quantity();
    return cells.read(stated, cell.get(), field, quantity, range).orElse(below);
  }

  /** The row of this name, or of the one name that another word for it means. */
  private Optional<Row> under(StatedRow.StatedCell name) {
    if (which.isList()) {
      return Optional.empty();
    }
    Table table = catalogue.table(which);
    return table
        .find(name.raw())
        .or(
            () ->
                OtherWords.find(which.title(), name.raw())
                    .filter(word -> !word.ambiguous())
                    .flatMap(word -> table.find(word.means())));
  }

  /** The row of a class, as the estimator states it where that is so. */
  private Optional<Row> ofClass(StatedRow.StatedCell cell) {
    Coating known = catalogue.coating(cell.raw()).orNull();
    Row built = known == null ? null : known.row();
    return Optional.ofNullable(
            made.getOrDefault(Names.key(built == null ? cell.raw() : built.name()), built))
        .map(this::fromClass);
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
          case SURFACES -> wantedOfSurface(entries.get(spec.index("Measured by")).text());
          case STOCK_TIPS -> List.of("Orifice from", "Orifice to");
          case TEXTURES -> List.of("Roughness");
          case SHAPES -> List.of("Factor", "Counts");
          case OPENING_KINDS -> List.of("Role");
          case VOC_LIMITS -> List.of("Limit", "Counted");
          case FILM_READINGS -> List.of("Reading");
          case EARLIER_WORK -> List.of("Area");
          case CONDITIONS -> List.of("Preparation", "State");
          default -> List.of();
        };
    List<String> blank =
        wanted.stream().filter(h -> !entries.get(spec.index(h)).isStated()).toList();
    blank.forEach(
        h -> cells.problem(stated, name(stated), "a value that can be used under " + h + " too"));
    return !blank.isEmpty();
  }

  private static List<String> wantedOfSurface(String measuredBy) {
    List<String> wanted =
        new ArrayList<>(
            List.of(
                "Measured by",
                "Narrowest dimension",
                "Widest fan",
                "Stick",
                "Hit",
                "Band",
                "Trigger share"));
    if (MeasuredBy.find(measuredBy).filter(MeasuredBy::goesByPiece).isPresent()) {
      wanted.add("Unit area");
    }
    return wanted;
  }

  private Range rowRange(StatedRow stated) {
    return Range.of(catalogue.table(which).get(name(stated).raw()).text("Range"));
  }

  private StatedRow.StatedCell name(StatedRow row) {
    return row.cells().get(spec.fields().get(0).heading());
  }

  private static Optional<StatedRow.StatedCell> stated(StatedRow row, String heading) {
    return Optional.ofNullable(row.cells().get(heading)).filter(cell -> !cell.raw().isBlank());
  }

  private String names() {
    return String.join(", ", catalogue.rows(which).stream().map(Row::name).toList());
  }

  private String nearest(String name) {
    List<String> near = Names.nearest(name, catalogue.rows(which).stream().map(Row::name));
    return near.isEmpty() ? "" : ": " + String.join(", ", near);
  }

  private List<Entry> blanks() {
    return spec.fields().stream().map(Overlay::blank).toList();
  }

  private static Entry blank(Field field) {
    Quantity quantity = field.quantity() == null ? Quantity.TEXT : field.quantity();
    return new Entry("", Double.NaN, quantity, field.kind(), field.source(), new Origin.BuiltIn());
  }
}
