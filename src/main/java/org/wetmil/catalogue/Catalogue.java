package org.wetmil.catalogue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.TipCode;

/** Everything that a bid assumes: the built-in tables with the estimator's rows laid over them. */
public final class Catalogue {
  private static final Catalogue BUILT_IN = loadBuiltIn();

  private final Map<Tables, Table> tables;
  private final Row[] settings = new Row[Setting.values().length];
  private final Entry[] values = new Entry[Setting.values().length];
  private final Row[] rates = new Row[Task.values().length];
  private final Map<List<String>, Row> losses = new HashMap<>();
  private final Shelf<Coating> coatings;
  private final Shelf<Surface> surfaces;
  private final Shelf<Sprayer> sprayers;
  private final Shelf<Condition> conditions;
  private final Shelf<Texture> textures;
  private final Shelf<Shape> shapes;
  private final Shelf<OpeningKind> openingKinds;
  private final List<ListedOpening> openings;
  private final OnHand onHand;
  private final Map<String, BucketTest> tests = new HashMap<>();

  private Catalogue(Map<Tables, Table> tables, List<TableProblem> problems) {
    this.tables = tables;
    for (Setting setting : Setting.values()) {
      Row row = table(Tables.SETTINGS).get(setting.title());
      settings[setting.ordinal()] = row;
      values[setting.ordinal()] = row.get("Value");
    }
    for (Task task : Task.values()) {
      rates[task.ordinal()] = table(Tables.LABOUR_RATES).get(task.title());
    }
    coatings = shelf(Tables.COATINGS, Coating::of);
    surfaces = shelf(Tables.SURFACES, Surface::of);
    sprayers = shelf(Tables.SPRAYERS, Sprayer::of);
    conditions = shelf(Tables.CONDITIONS, Condition::of);
    textures = shelf(Tables.TEXTURES, Texture::of);
    shapes = shelf(Tables.SHAPES, Shape::of);
    openingKinds = shelf(Tables.OPENING_KINDS, OpeningKind::of);
    rows(Tables.LOSSES).forEach(loss -> addLoss(loss, problems));
    openings = rows(Tables.OPENINGS).stream().map(ListedOpening::of).toList();
    onHand = OnHand.of(this, problems);
    onHand
        .tests()
        .forEach(test -> tests.put(testKey(test.coating(), test.tip().orificeThou()), test));
  }

  private <T> Shelf<T> shelf(Tables which, Function<Row, T> view) {
    return new Shelf<>(table(which), view);
  }

  private void addLoss(Row loss, List<TableProblem> problems) {
    Coating coating = coating(loss.text("Coating")).orNull();
    Surface surface = surface(loss.text("Surface")).orNull();
    if (coating != null && surface != null && loss.get("Stick").isStated()) {
      losses.put(List.of(coating.name(), surface.name()), loss);
    } else if (loss.get("Coating").origin() instanceof Origin.Cell at && !at.isElsewhere()) {
      // one of another workbook may be for a coating that this bid does not use
      problems.add(
          new TableProblem(
              Tables.LOSSES.title(),
              at.sheet(),
              at.address(),
              loss.text("Coating"),
              "a coating, a surface and a Stick, each as the tables name it"));
    }
  }

  /** The tables that come with the program. */
  public static Catalogue builtIn() {
    return BUILT_IN;
  }

  /**
   * These tables with the estimator's rows laid over them.
   *
   * @param stated rows read from the estimator's sheets, by table
   * @param fallback units of cells that state none
   * @param problems takes what cannot be used
   */
  public Catalogue with(
      Map<Tables, List<StatedRow>> stated, UnitSystem fallback, List<TableProblem> problems) {
    if (stated.values().stream().allMatch(List::isEmpty)) {
      return this;
    }
    Map<Tables, Table> merged = new EnumMap<>(tables);
    stated.forEach(
        (which, rows) -> {
          Overlay overlay = new Overlay(this, which, fallback, problems);
          merged.put(which, table(which).with(overlay.rows(rows)));
        });
    return new Catalogue(merged, problems);
  }

  /** These tables with the rows of some as given. */
  public Catalogue withRows(Map<Tables, List<Row>> given) {
    Map<Tables, Table> changed = new EnumMap<>(tables);
    given.forEach((which, rows) -> changed.put(which, new Table(table(which).spec(), rows)));
    return new Catalogue(changed, new ArrayList<>());
  }

  public Table table(Tables which) {
    return tables.get(which);
  }

  public Lookup<Coating> coating(String name) {
    return coatings.look(name);
  }

  boolean isCoating(String name) {
    return coating(name).orNull() != null;
  }

  public Lookup<Surface> surface(String name) {
    return surfaces.look(name);
  }

  /** A surface under a coating: where Losses states how much of it stays on there, that holds. */
  public Lookup<Surface> surface(String name, Coating coating) {
    Lookup<Surface> found = surface(name);
    if (losses.isEmpty() || coating == null || !(found instanceof Lookup.Found<Surface> known)) {
      return found;
    }
    Row loss = losses.get(List.of(coating.name(), known.value().name()));
    return loss == null ? found : new Lookup.Found<>(known.value().with(loss), known.ambiguous());
  }

  public Lookup<Sprayer> sprayer(String name) {
    return sprayers.look(name);
  }

  public Lookup<Condition> condition(String name) {
    return conditions.look(name);
  }

  public Lookup<Texture> texture(String name) {
    return textures.look(name);
  }

  /** A shape; of the two printed coefficients of a rolling shutter, the one that is set. */
  public Lookup<Shape> shape(String name) {
    boolean disputed = !name.isEmpty() && Names.key(name).equals("rolling shutter");
    return shapes.look(disputed ? name + " " + text(Setting.ROLLING_SHUTTER) : name);
  }

  public Lookup<OpeningKind> openingKind(String name) {
    return openingKinds.look(name);
  }

  /** Openings listed one by one, in the order of their sheet. */
  public List<ListedOpening> openings() {
    return openings;
  }

  public List<Row> rows(Tables which) {
    return table(which).rows();
  }

  public Row row(Setting setting) {
    return settings[setting.ordinal()];
  }

  public Entry entry(Setting setting) {
    return values[setting.ordinal()];
  }

  /** A setting's number in the kept unit of its quantity; NaN when not stated. */
  public double number(Setting setting) {
    return entry(setting).number();
  }

  public String text(Setting setting) {
    return entry(setting).text();
  }

  /** The values or words that a setting takes, in the kept unit of its quantity. */
  public Range range(Setting setting) {
    return Range.of(row(setting).text("Range"));
  }

  public Row row(Task task) {
    return rates[task.ordinal()];
  }

  /** A labour rate in the kept unit of its quantity. */
  public double rate(Task task) {
    return row(task).number("Rate");
  }

  /** The contractor's own tips; empty when the workbook lists none. */
  public List<TipOnHand> tipsOnHand() {
    return onHand.tips();
  }

  /** Tips to choose from where none are listed as on hand. */
  public List<TipCode> stockTips() {
    return onHand.stock();
  }

  /** Whether a tip of this fit seats in a guard for the sprayer; true where fits do not matter. */
  public boolean isGuarded(String fit, String sprayer) {
    return fit.isBlank()
        || onHand.guards().isEmpty()
        || onHand.guards().stream().anyMatch(guard -> guard.takes(fit, sprayer));
  }

  /** The test that tells the flow of an orifice with a coating. */
  public Optional<BucketTest> bucketTest(Coating coating, int orificeThou) {
    return tests.isEmpty()
        ? Optional.empty()
        : Optional.ofNullable(tests.get(testKey(coating.name(), orificeThou)));
  }

  private String testKey(String coatingName, int orificeThou) {
    Coating known = coating(coatingName).orNull();
    return Names.key(known == null ? coatingName : known.name()) + " " + orificeThou;
  }

  /** Other trade words that mean a row of a table, as {@link Names#key} gives them. */
  public List<String> otherNames(Tables which, String name) {
    String key = Names.key(name);
    return OtherWords.of(which.title()).stream()
        .filter(word -> Names.key(word.means()).equals(key))
        .map(OtherWords.Word::key)
        .toList();
  }

  /**
   * A name as a language says it, for who does not read the one that it was typed in. A word that
   * says more than the name of its row, as a crown moulding does, stands beside it in brackets.
   *
   * @param typed a name or another word for it
   * @param language ISO 639 code
   * @return as typed where it is of that language, or the language has no word for it
   */
  public String said(Tables which, String typed, String language) {
    Optional<Row> row = table(which).find(typed);
    Optional<OtherWords.Word> other =
        row.isPresent() ? Optional.empty() : OtherWords.find(which.title(), typed);
    String from = other.map(OtherWords.Word::language).orElse(OtherWords.ENGLISH);
    if (from.equals(language) || (row.isEmpty() && other.isEmpty())) {
      return typed;
    }
    String name = other.map(OtherWords.Word::means).orElse(typed);
    Optional<String> word =
        language.equals(OtherWords.ENGLISH)
            ? table(which).find(name).map(Row::name)
            : OtherWords.first(which.title(), name, language);
    return word.map(said -> other.isPresent() ? said + " (" + typed + ")" : said).orElse(typed);
  }

  private static Catalogue loadBuiltIn() {
    Map<Tables, Table> tables = new EnumMap<>(Tables.class);
    for (Tables which : Tables.values()) {
      tables.put(which, which.load());
    }
    return new Catalogue(tables, new ArrayList<>());
  }
}
