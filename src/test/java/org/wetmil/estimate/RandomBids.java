package org.wetmil.estimate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Random lines as an estimator might state them, with tables of his own; the seed says all. */
public final class RandomBids {
  private static final List<String> COATINGS =
      Stream.concat(
              Catalogue.builtIn().rows(Tables.COATINGS).stream().map(Row::name),
              Stream.of("House Matt"))
          .toList();
  private static final List<String> SURFACES =
      Catalogue.builtIn().rows(Tables.SURFACES).stream().map(Row::name).toList();
  private static final List<String> CONDITIONS =
      Catalogue.builtIn().rows(Tables.CONDITIONS).stream().map(Row::name).toList();
  private static final List<String> TEXTURES =
      Catalogue.builtIn().rows(Tables.TEXTURES).stream().map(Row::name).toList();

  private final Random random;
  private final List<Catalogue> catalogues;

  public RandomBids(long seed) {
    this.random = new Random(seed);
    this.catalogues = IntStream.range(0, 40).mapToObj(i -> catalogue()).toList();
  }

  /** One line with its tables and the units of Basis. */
  public record Sample(Catalogue catalogue, UnitSystem basis, BidLine line) {
    public FilledLine fill() {
      return fill(line);
    }

    FilledLine fill(BidLine other) {
      return Estimator.fill(Bids.bid(catalogue, basis, other)).lines().findFirst().orElseThrow();
    }
  }

  public Sample next() {
    Catalogue catalogue = catalogues.get(random.nextInt(catalogues.size()));
    UnitSystem basis = UnitSystem.values()[random.nextInt(2)];
    return new Sample(catalogue, basis, line());
  }

  BidLine line() {
    UnitSystem system = UnitSystem.values()[random.nextInt(2)];
    List<Object> cells = new ArrayList<>();
    add(cells, 1, InputColumn.SURFACE, pick(SURFACES));
    add(cells, 1, InputColumn.COATING, pick(COATINGS));
    add(cells, 0.6, InputColumn.CONDITION, pick(CONDITIONS));
    add(cells, 0.4, InputColumn.TEXTURE, pick(TEXTURES));
    add(cells, 0.3, InputColumn.BACK_ROLL, pick(List.of("never", "first coat", "all")));
    add(cells, 0.4, InputColumn.SPRAYER, pick(List.of("Small", "Hosed", "Big", "Unknown")));
    add(cells, 0.2, InputColumn.INCLUDE, pick(List.of("no", "yes", " NO ", "0")));
    add(cells, 0.5, InputColumn.TIP, pick(List.of("517", "211", "625", "539", "409", "311")));
    number(cells, system, 0.8, InputColumn.LENGTH, 2, 80);
    number(cells, system, 0.6, InputColumn.WIDTH, 0.3, 40);
    number(cells, system, 0.7, InputColumn.HEIGHT, 0.4, 30);
    number(cells, system, 0.3, InputColumn.AREA, 10, 3000);
    number(cells, system, 0.3, InputColumn.OPENINGS, 0, 200);
    number(cells, system, 0.3, InputColumn.GIRTH, 1, 40);
    add(cells, 0.4, InputColumn.COUNT, 1 + random.nextInt(12));
    add(cells, 0.3, InputColumn.COATS, 1 + random.nextInt(4));
    number(cells, system, 0.3, InputColumn.SPECIFIED_FILM, 0.5, 30);
    number(cells, system, 0.4, InputColumn.PRESSURE, 800, 3300);
    number(cells, system, 0.3, InputColumn.THINNER, 0, 0.3);
    number(cells, system, 0.3, InputColumn.MASK_EDGE, 0, 200);
    add(cells, 0.3, InputColumn.MASK_OPENINGS, random.nextInt(9));
    BidLine line = Bids.line(system, cells.toArray());
    Map<InputColumn, InputValue> values = new EnumMap<>(line.values());
    values.replaceAll(this::asTyped);
    return new BidLine("Bid", 5, system, random.nextInt(4) == 0, values);
  }

  /** Some numbers stand in another unit, and some in a text that no formula may point at. */
  private InputValue asTyped(InputColumn column, InputValue value) {
    if (!value.hasNumber() || random.nextInt(3) > 0) {
      return value;
    }
    List<Unit> units =
        Arrays.stream(Unit.values())
            .filter(unit -> unit.dimension() == value.unit().dimension())
            .toList();
    Unit unit = pick(units);
    double cell = value.unit().to(unit, value.cellNumber());
    double number = unit.to(column.quantity().base(), cell);
    double live = random.nextBoolean() ? cell : Double.NaN;
    return new InputValue(value.state(), value.raw(), number, number, number, live, unit, "");
  }

  /** A number in the unit of the sheet. */
  private void number(
      List<Object> cells,
      UnitSystem system,
      double share,
      InputColumn column,
      double low,
      double high) {
    double base = low + (high - low) * random.nextDouble();
    add(cells, share, column, column.quantity().shown(base, system));
  }

  private void add(List<Object> cells, double share, InputColumn column, Object value) {
    if (random.nextDouble() < share) {
      cells.addAll(List.of(column, value));
    }
  }

  private <T> T pick(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  /** Some tables of the estimator's own over the built-in ones. */
  private Catalogue catalogue() {
    Map<Tables, List<StatedRow>> stated = new EnumMap<>(Tables.class);
    stated.put(
        Tables.COATINGS,
        List.of(
            Bids.row(
                0,
                "Coating",
                "House Matt",
                "Class",
                "latex",
                "Volume solids",
                41,
                "Density",
                1.41,
                "Wet film target",
                between(4, 6))));
    stated.put(
        Tables.SPRAYERS,
        List.of(
            Bids.row(
                0,
                "Sprayer",
                "Small",
                "Greatest flow",
                between(0.05, 0.4),
                "Greatest orifice",
                17,
                "Greatest pressure",
                1900),
            Bids.row(
                1,
                "Sprayer",
                "Hosed",
                "Hose bore",
                between(0.18, 0.5),
                "Hose length",
                between(25, 300),
                "Rise",
                between(-30, 60),
                "Greatest pressure",
                2600),
            Bids.row(2, "Sprayer", "Big", "Greatest flow", 3, "Guns", 2)));
    List<StatedRow> settings = new ArrayList<>();
    setting(settings, 0.5, "Figures follow", "Planned");
    setting(settings, 0.3, "Measuring rule", "Solid");
    setting(settings, 0.3, "Distance", between(8, 16));
    setting(settings, 0.3, "Overlap", between(0, 0.7));
    setting(settings, 0.3, "Waste", between(0, 0.2));
    setting(settings, 0.3, "Discharge coefficient", between(0.6, 0.95));
    setting(settings, 0.3, "Broad easy", between(20, 34));
    setting(settings, 0.2, "Pump reserve", between(1, 2));
    setting(settings, 0.2, "Back-roll", "all");
    setting(settings, 0.2, "Height step 1", between(6, 13));
    stated.put(Tables.SETTINGS, settings);
    if (random.nextInt(3) == 0) {
      stated.put(
          Tables.TIPS_ON_HAND,
          Arrays.stream(new String[] {"517", "519", "411", "309", "213", "531", "1017", "312"})
              .filter(code -> random.nextBoolean())
              .map(
                  code ->
                      Bids.row(
                          Integer.parseInt(code),
                          "Tip",
                          code,
                          "Count",
                          random.nextInt(3),
                          "Fit",
                          pick(List.of("A", "B"))))
              .toList());
      stated.put(
          Tables.GUARDS_ON_HAND,
          List.of(
              Bids.row(0, "Guard", "first", "Fits taken", "A", "Sprayer", "Small"),
              Bids.row(1, "Guard", "second", "Fits taken", "B; C")));
    }
    if (random.nextInt(3) == 0) {
      stated.put(
          Tables.BUCKET_TESTS,
          List.of(
              Bids.row(0, "Tip", "517", "Coating", "latex", "Pressure", 1850, "Flow", 0.28),
              Bids.row(1, "Tip", "313", "Coating", "alkyd", "Pressure", 1600, "Flow", 0.15)));
    }
    if (random.nextInt(3) == 0) {
      stated.put(
          Tables.LABOUR_RATES,
          List.of(Bids.row(0, "Task", "dust and wipe", "Rate", between(500, 900))));
      stated.put(Tables.TEXTURES, List.of(Bids.row(0, "Texture", "smooth", "Roughness", 1.05)));
    }
    List<TableProblem> problems = new ArrayList<>();
    Catalogue catalogue = Catalogue.builtIn().with(stated, UnitSystem.US, problems);
    if (!problems.isEmpty()) {
      throw new IllegalStateException(problems.toString());
    }
    return catalogue;
  }

  private void setting(List<StatedRow> rows, double share, String name, Object value) {
    if (random.nextDouble() < share) {
      rows.add(Bids.row(rows.size(), "Setting", name, "Value", value));
    }
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }
}
