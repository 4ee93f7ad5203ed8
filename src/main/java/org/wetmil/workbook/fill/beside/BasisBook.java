package org.wetmil.workbook.fill.beside;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Field;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.EntryPlace;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.UnitFactor;
import org.wetmil.formula.Place;
import org.wetmil.formula.Written;
import org.wetmil.quantity.UnitSystem;

/**
 * The figures that Basis lists, one a row, and where each stands, so that formulas can point there.
 */
public final class BasisBook {
  private final UnitSystem system;
  private final List<Item> items = new ArrayList<>();
  private final Map<Place, String> names = new HashMap<>();
  private final Map<Place, String> addresses = new HashMap<>();

  /**
   * One figure.
   *
   * @param entry null for a factor of the units
   * @param name the workbook name that formulas use; empty when they use the address
   */
  public record Item(
      String table,
      String row,
      String figure,
      Place place,
      Entry entry,
      double factor,
      Kind kind,
      String source,
      String meaning,
      String name) {}

  public BasisBook(FilledBid filled) {
    this.system = filled.bid().system();
    Catalogue catalogue = filled.bid().catalogue();
    Set<Row> coatings = new LinkedHashSet<>();
    Set<Row> surfaces = new LinkedHashSet<>();
    Set<Row> textures = new LinkedHashSet<>();
    Set<Row> conditions = new LinkedHashSet<>();
    Set<Row> sprayers = new LinkedHashSet<>();
    Set<Row> shapes = new LinkedHashSet<>();
    filled
        .lines()
        .filter(line -> line.area() != null && line.area().shape() != null)
        .forEach(line -> shapes.add(line.area().shape().row()));
    filled
        .lines()
        .forEach(line -> collect(line, coatings, surfaces, textures, conditions, sprayers));
    List<Row> named = namedByOwnFormulas(filled);
    coatings.addAll(of(named, Tables.COATINGS));
    surfaces.addAll(of(named, Tables.SURFACES));
    shapes.addAll(of(named, Tables.SHAPES));
    textures.addAll(of(named, Tables.TEXTURES));
    conditions.addAll(of(named, Tables.CONDITIONS));
    sprayers.addAll(of(named, Tables.SPRAYERS));
    coatings.forEach(this::table);
    surfaces.forEach(this::table);
    catalogue.rows(Tables.LOSSES).forEach(this::table);
    shapes.forEach(this::table);
    textures.forEach(this::table);
    conditions.forEach(this::table);
    sprayers.forEach(this::table);
    catalogue.openings().stream()
        .map(opening -> catalogue.openingKind(opening.kind()).orNull())
        .filter(Objects::nonNull)
        .distinct()
        .forEach(kind -> table(kind.row()));
    catalogue.rows(Tables.TIPS_ON_HAND).forEach(this::table);
    catalogue.rows(Tables.GUARDS_ON_HAND).forEach(this::table);
    catalogue.rows(Tables.BUCKET_TESTS).forEach(this::table);
    catalogue.rows(Tables.LABOUR_RATES).forEach(row -> named(row, "Rate"));
    catalogue.rows(Tables.SETTINGS).forEach(row -> named(row, "Value"));
    for (UnitFactor factor : UnitFactor.values()) {
      add(
          new Item(
              "Units",
              factor.title(),
              "Value",
              factor,
              null,
              factor.value(system),
              Kind.DERIVED,
              "exact sizes of the units",
              factor.meaning(),
              "wm_" + factor.name().toLowerCase(Locale.ROOT) + "_factor"));
    }
  }

  private static void collect(
      FilledLine line,
      Set<Row> coatings,
      Set<Row> surfaces,
      Set<Row> textures,
      Set<Row> conditions,
      Set<Row> sprayers) {
    var work = line.work();
    if (work.coating() != null) {
      coatings.add(work.coating().row());
    }
    if (work.surface() != null) {
      surfaces.add(work.surface().row());
    }
    if (work.texture() != null) {
      textures.add(work.texture().row());
    }
    if (work.condition() != null) {
      conditions.add(work.condition().row());
    }
    if (work.sprayer() != null) {
      sprayers.add(work.sprayer().row());
    }
  }

  /** Rows that formulas of the estimator in filled cells point at, which no line may use. */
  private static List<Row> namedByOwnFormulas(FilledBid filled) {
    Catalogue catalogue = filled.bid().catalogue();
    return filled
        .lines()
        .flatMap(line -> line.figures().values().stream())
        .filter(Figure.Typed.class::isInstance)
        .flatMap(figure -> ((Figure.Typed) figure).own().stream())
        .flatMap(Written::places)
        .filter(EntryPlace.class::isInstance)
        .flatMap(place -> ((EntryPlace) place).row(catalogue).stream())
        .toList();
  }

  private static List<Row> of(List<Row> rows, Tables which) {
    return rows.stream().filter(row -> row.spec().name().equals(which.title())).toList();
  }

  public UnitSystem system() {
    return system;
  }

  public List<Item> items() {
    return items;
  }

  /** Says where an item stands; called once the page is laid out. */
  public void settle(Item item, String address) {
    addresses.put(item.place(), address);
  }

  /** What a formula writes for a figure: its name where it has one, else its cell. */
  public String reference(Place place) {
    String name = names.get(place);
    return name != null ? name : addresses.get(place);
  }

  /** The name that formulas use for a figure; empty where they use its address. */
  Optional<String> name(Place place) {
    return Optional.ofNullable(names.get(place));
  }

  /** What a formula writes for a setting; null where it is not stated. */
  public String reference(Setting setting) {
    return reference(new EntryPlace(Tables.SETTINGS.title(), setting.title(), "Value"));
  }

  private void table(Row row) {
    for (int i = 1; i < row.entries().size(); i++) {
      Field field = row.spec().fields().get(i);
      Entry entry = row.entries().get(i);
      if (entry.isStated() && !field.heading().equals("Practice")) {
        add(item(row, field, entry, ""));
      }
    }
  }

  /** A setting or rate that is stated gets a name, so that formulas read well. */
  private void named(Row row, String heading) {
    Entry entry = row.get(heading);
    if (entry.isStated()) {
      String name = entry.quantity().isNumber() ? "wm_" + word(row.name()) : "";
      Field field = row.spec().fields().get(row.spec().index("Meaning"));
      add(
          new Item(
              row.spec().name(),
              row.name(),
              heading,
              new EntryPlace(row.spec().name(), row.name(), heading),
              entry,
              Double.NaN,
              entry.kind(),
              entry.source(),
              row.text(field.heading()),
              name));
    }
  }

  private Item item(Row row, Field field, Entry entry, String name) {
    return new Item(
        row.spec().name(),
        row.name(),
        field.heading(),
        new EntryPlace(row.spec().name(), row.name(), field.heading()),
        entry,
        Double.NaN,
        entry.kind(),
        entry.source(),
        field.meaning(),
        name);
  }

  private void add(Item item) {
    items.add(item);
    if (!item.name().isEmpty()) {
      names.put(item.place(), item.name());
    }
  }

  /** A workbook name: letters, digits and underscores only. */
  static String word(String title) {
    return title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_").replaceAll("_$", "");
  }
}
