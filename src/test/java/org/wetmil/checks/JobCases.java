package org.wetmil.checks;

import static org.wetmil.checks.Case.bid;
import static org.wetmil.checks.Case.row;
import static org.wetmil.checks.Case.tables;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.BACK_ROLL;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.MASK_EDGE;
import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.TEXTURE;
import static org.wetmil.estimate.InputColumn.THINNER;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.EarlierCells;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.Remark;
import org.wetmil.quantity.UnitSystem;

/** Cases of the checks on words, paint, the sheet as a whole, the reader and safety. */
final class JobCases {
  private JobCases() {}

  static List<Case> all() {
    List<Case> cases = new ArrayList<>();
    words(cases);
    paint(cases);
    sheets(cases);
    reader(cases);
    safety(cases);
    limits(cases);
    refilled(cases);
    return cases;
  }

  private static void refilled(List<Case> cases) {
    cases.add(Case.of("overridden-by-hand", held(FilledColumn.NET_AREA, 500), held(null, 0)));
    BidLine line = room(COATING, "latex");
    double coats = bid(line).lines().findFirst().orElseThrow().base(FilledColumn.COATS);
    cases.add(
        Case.of(
            "choice-replaced",
            held(FilledColumn.COATS, coats + 1),
            held(FilledColumn.COATS, coats)));
  }

  /** A line whose cell of an earlier fill holds a number. */
  private static BidLine held(FilledColumn column, double number) {
    Map<FilledColumn, Double> numbers = column == null ? Map.of() : Map.of(column, number);
    return room(COATING, "latex").with(new EarlierCells(numbers, Map.of(), Map.of(), true));
  }

  private static void words(List<Case> cases) {
    cases.add(Case.of("ambiguous-coating", room(COATING, "enamel"), room(COATING, "oil enamel")));
    cases.add(Case.of("unknown-condition", room(CONDITION, "peelin"), room(CONDITION, "peeling")));
    cases.add(Case.of("unknown-texture", room(TEXTURE, "stuco"), room(TEXTURE, "stucco")));
    cases.add(
        new Case(
            "unknown-sprayer",
            bid(ThinCases.rig("Guns", 1), room(SPRAYER, "rick")),
            bid(ThinCases.rig("Guns", 1), room(SPRAYER, "Rig"))));
    cases.add(
        Case.of("unknown-back-roll", room(BACK_ROLL, "maybe"), room(BACK_ROLL, "First coat")));
    cases.add(Case.of("unknown-include", room(INCLUDE, "later"), room(INCLUDE, "No")));
  }

  private static void paint(List<Case> cases) {
    cases.add(
        new Case(
            "class-values",
            bid(product("Wet film target", 4.5), room(COATING, "top coat")),
            bid(product("Volume solids", 38), room(COATING, "top coat"))));
    cases.add(Case.of("share-out-of-range", room(THINNER, 1.01), room(THINNER, 1)));
    cases.add(Case.of("thinner-past-limit", room(THINNER, 0.11), room(THINNER, 0.10)));
    // 4.5 mil wet of the class over 1.6 is 2.81 mil
    cases.add(new Case("spread-implausible", filmed(2.8), filmed(2.85)));
    cases.add(
        Case.of(
            "texture-not-stated",
            room(SURFACE, "siding"),
            room(SURFACE, "siding", TEXTURE, "smooth")));
    cases.add(Case.of("texture-not-stated", room(CONDITION, "brick"), room(CONDITION, "drywall")));
    cases.add(
        Case.of(
            "shape-and-roughness",
            room(SURFACE, "lap siding", TEXTURE, "rough-sawn"),
            room(SURFACE, "siding", TEXTURE, "rough-sawn")));
    cases.add(
        Case.of(
            "filler-texture",
            room(COATING, "block filler", TEXTURE, "open block"),
            room(COATING, "block filler", TEXTURE, "smooth")));
    cases.add(
        new Case(
            "primer-missing",
            bid(room(CONDITION, "bare"), room(SURFACE, "ceiling", COATING, "primer")),
            bid(room(CONDITION, "bare"), room(COATING, "primer", CONDITION, "bare"))));
  }

  private static void sheets(List<Case> cases) {
    cases.add(new Case("sheet-without-units", units(false), units(true)));
    cases.add(
        new Case(
            "duplicate-line",
            bid(room(), room(ROOM, "OFFICE 1")),
            bid(room(), room(ROOM, "Office 2"))));
    cases.add(new Case("duplicate-line", bid(room(), room()), bid(room(), room(HEIGHT, 9.5))));
    cases.add(Case.of("floor-not-known", room(LENGTH, "", WIDTH, "", AREA, 600), room(AREA, 630)));
    cases.add(Case.of("masking-nowhere", room(), room(MASK_EDGE, 0)));
    cases.add(new Case("value-not-live", bid(Bids.typed(room(), LENGTH)), bid(room())));
  }

  private static void reader(List<Case> cases) {
    cases.add(
        new Case(
            "table-value",
            read(new TableProblem("Coatings", "Coatings", "C4", "lots", "a number."), null),
            bid(room())));
    for (String id :
        List.of(
            "heading-twice",
            "heading-ambiguous",
            "heading-read-as",
            "heading-not-read",
            "unit-from-text",
            "units-mixed",
            "table-left-out",
            "row-left-out",
            "section-titles",
            "rows-hidden",
            "sheet-left-out",
            "columns-moved",
            "formula-not-computed",
            "basis-typed-over",
            "typed-on-our-sheet")) {
      cases.add(
          new Case(
              id,
              read(null, new Remark(id, "Bid", "C4", "", "What the reader saw.")),
              bid(room())));
    }
  }

  private static void safety(List<Case> cases) {
    cases.add(
        new Case(
            "safety-latch",
            bid(Bids.settings("Least atomising pressure", 300), pressed(1000)),
            bid(Bids.settings("Least atomising pressure", 300), pressed(999))));
    cases.add(
        Case.of(
            "solvent-indoors",
            room(COATING, "oil-based"),
            room(COATING, "oil-based", SURFACE, "siding")));
    cases.add(new Case("lead-paint", built(1977, 6.1), built(1977, 6)));
    cases.add(new Case("lead-paint", built(1977, 6.1), built(1978, 6.1)));
    cases.add(new Case("lead-paint", outside(20.1), outside(20)));
    // 4 ft2 and 4 ft2 in one room within 30 days are 8
    cases.add(new Case("lead-paint", after("2026-03-01"), after("2026-02-28")));
    // 70 F and 65 % have a dew point of 57.69 F
    cases.add(new Case("dew-point", damp(62.6), damp(62.7)));
    cases.add(
        new Case(
            "gun-distance",
            bid(Bids.settings("Distance", 15.5), room()),
            bid(Bids.settings("Distance", 15), room())));
  }

  private static void limits(List<Case> cases) {
    // 5 mil is accepted from 4 to 6 mil on average, a spot from 3.2 to 7.2 mil
    cases.add(new Case("film-average", read(5, 3.99, 3.99, 3.99), read(5, 4, 4, 4)));
    cases.add(new Case("film-average", read(5, 6.01, 6.01, 6.01), read(5, 6, 6, 6)));
    cases.add(new Case("film-spot", read(5, 3.19, 3.19, 3.19), read(5, 3.2, 3.2, 3.2)));
    cases.add(new Case("film-spot", read(5, 7.21, 7.2, 7.2), read(5, 7.2, 7.2, 7.2)));
    Object[] spots = new Object[30];
    for (int i = 0; i < 15; i++) {
      spots[2 * i] = Tables.FILM_READINGS;
      spots[2 * i + 1] = reading(5 + i % 2, "Spot", "spot " + i / 3, "Note", i);
    }
    // 15 readings in 5 spots judge a surface up to 100 ft2
    cases.add(
        new Case(
            "film-readings-few",
            bid(tables(spots), room(AREA, 100.1, SPECIFIED_FILM, 5)),
            bid(tables(spots), room(AREA, 100, SPECIFIED_FILM, 5))));
    cases.add(
        new Case(
            "film-not-judged",
            bid(tables(Tables.FILM_READINGS, reading(4)), room()),
            bid(tables(Tables.FILM_READINGS, reading(4)), room(SPECIFIED_FILM, 5))));
    cases.add(
        new Case(
            "film-not-judged",
            bid(tables(Tables.FILM_READINGS, reading(4)), room(ROOM, "Other", SPECIFIED_FILM, 5)),
            bid(tables(Tables.FILM_READINGS, reading(4)), room(SPECIFIED_FILM, 5))));
    cases.add(new Case("voc-over-limit", voc(380.1, "US nonflat", 0), voc(380, "US nonflat", 0)));
    // water is not counted: thinning changes nothing
    cases.add(new Case("voc-over-limit", voc(250.1, "US flat", 0.1), voc(250, "US flat", 0.1)));
    cases.add(
        new Case(
            "voc-not-judged", voc(250, "flat as can be", 0), voc(250, "US flat; US nonflat", 0)));
  }

  private static FilledBid read(double specifiedMil, double... mils) {
    Object[] pairs = new Object[2 * mils.length];
    for (int i = 0; i < mils.length; i++) {
      pairs[2 * i] = Tables.FILM_READINGS;
      pairs[2 * i + 1] = reading(mils[i], "Spot", "one", "Note", i);
    }
    return bid(tables(pairs), room(SPECIFIED_FILM, specifiedMil));
  }

  private static StatedRow reading(double mil, Object... more) {
    List<Object> cells =
        new ArrayList<>(List.of("Room", "Office 1", "Surface", "walls", "Reading", mil));
    cells.addAll(List.of(more));
    return row(cells.toArray());
  }

  private static FilledBid voc(double gramsPerLitre, String category, double thinner) {
    return bid(
        product("Volume solids", 38, "VOC", gramsPerLitre, "VOC category", category),
        room(COATING, "top coat", THINNER, thinner));
  }

  private static BidLine pressed(double psi) {
    return room(PRESSURE, psi);
  }

  private static Catalogue product(Object... figures) {
    Object[] all = new Object[figures.length + 4];
    System.arraycopy(new Object[] {"Coating", "top coat", "Class", "latex"}, 0, all, 0, 4);
    System.arraycopy(figures, 0, all, 4, figures.length);
    return tables(Tables.COATINGS, row(all));
  }

  private static FilledBid filmed(double wetMil) {
    return bid(
        product(
            "Wet film target", wetMil, "Wet film min", 1, "Orifice from", 9, "Orifice least", 9),
        room(COATING, "top coat"));
  }

  private static FilledBid units(boolean stated) {
    Bid bid = Bids.bid(room());
    BidSheet sheet = bid.sheets().get(0);
    return bid(
        new Bid(
            bid.job(),
            bid.system(),
            bid.catalogue(),
            List.of(
                new BidSheet(
                    sheet.name(), sheet.system(), stated, sheet.columnUnits(), sheet.lines())),
            List.of(),
            List.of()));
  }

  private static FilledBid read(TableProblem problem, Remark remark) {
    Bid bid = Bids.bid(room());
    return bid(
        new Bid(
            bid.job(),
            UnitSystem.US,
            bid.catalogue(),
            bid.sheets(),
            problem == null ? List.of() : List.of(problem),
            remark == null ? List.of() : List.of(remark)));
  }

  private static FilledBid built(int year, double ft2) {
    return bid(
        Bids.settings("Year built", year),
        room(AREA, ft2 - 2, CONDITION, "peeling"),
        room(SURFACE, "ceiling", AREA, 2, CONDITION, "painted"),
        room(ROOM, "Office 2", AREA, 3, CONDITION, "peeling"));
  }

  /** Work that begins on 31 March, after other work in the same room. */
  private static FilledBid after(String date) {
    return bid(
        tables(
            Tables.SETTINGS,
            row("Setting", "Year built", "Value", 1977),
            Tables.SETTINGS,
            row("Setting", "Work begins", "Value", "2026-03-31"),
            Tables.EARLIER_WORK,
            row("Room", "office 1", "Area", 4, "Date", date)),
        room(AREA, 4, CONDITION, "peeling"));
  }

  private static FilledBid outside(double ft2) {
    return bid(
        Bids.settings("Year built", 1950),
        room(SURFACE, "siding", AREA, ft2 - 5, CONDITION, "weathered"),
        room(ROOM, "Garage", SURFACE, "siding", AREA, 5, CONDITION, "weathered"));
  }

  private static FilledBid damp(double surfaceF) {
    return bid(
        Bids.settings("Air temperature", 70, "Humidity", 65, "Surface temperature", surfaceF),
        room());
  }
}
