package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SHAPE;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.UnitSystem;

class OpeningsTest {

  @ParameterizedTest
  @CsvSource({
    // 20 x 9 ft wall with a door of 3 x 7 ft (1.95 m2) and a window of 1.5 x 1.5 ft (0.21 m2)
    "Net, 156.75",
    "Solid, 180",
    "IS 1200-13, 159",
    "DIN 18363, 180"
  })
  void ruleOfTheBidDecidesWhatComesOff(String rule, double expectedFt2) {
    Catalogue catalogue =
        catalogue(rule, opening("Kind", "door"), opening("Width", 1.5, "Height", 1.5));

    assertThat(fill(catalogue, wall()).base(FilledColumn.NET_AREA))
        .isCloseTo(expectedFt2, within(1e-9));
  }

  @Test
  void listedSizesStandInTheFormulaAsNumbers() {
    FilledLine line = fill(catalogue("Net", opening("Kind", "door", "Reveal", 6)), wall());

    assertThat(printed(line, FilledColumn.NET_AREA)).isEqualTo("MAX(0,LENGTH*HEIGHT-21+8.5)");
    assertThat(line.base(FilledColumn.NET_AREA)).isCloseTo(167.5, within(1e-9));
  }

  @Test
  void metricSheetGetsMetricNumbers() {
    BidLine wall =
        Bids.line(
            UnitSystem.METRIC,
            ROOM,
            "Hall",
            SURFACE,
            "walls",
            COATING,
            "latex",
            LENGTH,
            5,
            HEIGHT,
            3);
    Catalogue catalogue = catalogue("Net", UnitSystem.METRIC, opening("Width", 1, "Height", 2.1));

    FilledLine line = fill(catalogue, wall);

    assertThat(printed(line, FilledColumn.NET_AREA)).isEqualTo("MAX(0,LENGTH*HEIGHT-2.1)");
  }

  @Test
  void lumpAreaComesOffAsItStandsAndIsSaidToBeUntested() {
    BidLine wall = wall(OPENINGS, 25);

    assertThat(fill(catalogue("Net"), wall).base(FilledColumn.NET_AREA)).isEqualTo(155);
    assertThat(fill(catalogue("Net"), wall).area().lump()).isFalse();
    for (String rule : List.of("IS 1200-13", "DIN 18363")) {
      assertThat(fill(catalogue(rule), wall).base(FilledColumn.NET_AREA)).isEqualTo(155);
      assertThat(fill(catalogue(rule), wall).area().lump()).isTrue();
    }
    assertThat(fill(catalogue("Solid"), wall).base(FilledColumn.NET_AREA)).isEqualTo(180);
    assertThat(fill(catalogue("Solid"), wall).area().lump()).isFalse();
  }

  @Test
  void netAreaIsNeverUnderNothing() {
    FilledLine line = fill(catalogue("Net"), wall(OPENINGS, 181));

    assertThat(line.base(FilledColumn.NET_AREA)).isZero();
    assertThat(line.area().deducted().value()).isEqualTo(181);
  }

  @Test
  void measuringIsShownWhenAskedForAndAddsUp() {
    Catalogue catalogue =
        catalogue(
            List.of(
                row("Setting", "Show measuring", "Value", "yes"),
                row("Setting", "Measuring rule", "Value", "IS 1200-13")),
            UnitSystem.US,
            opening("Width", 8, "Height", 7, "Reveal", 6));

    FilledLine line = fill(catalogue, wall(OPENINGS, 4));

    assertThat(line.base(FilledColumn.GROSS)).isEqualTo(180);
    assertThat(line.base(FilledColumn.DEDUCTED)).isCloseTo(60, within(1e-9));
    assertThat(line.base(FilledColumn.ADDED)).isCloseTo(11, within(1e-9));
    assertThat(line.base(FilledColumn.NET_AREA)).isCloseTo(131, within(1e-9));
    assertThat(printed(line, FilledColumn.NET_AREA)).isEqualTo("MAX(0,GROSS-DEDUCTED+ADDED)");
    assertThat(FilledColumn.shown(catalogue))
        .contains(FilledColumn.GROSS, FilledColumn.DEDUCTED, FilledColumn.ADDED);
    assertThat(FilledColumn.shown(Catalogue.builtIn()))
        .doesNotContain(
            FilledColumn.GROSS,
            FilledColumn.PAINT_COST,
            FilledColumn.LABOUR_COST,
            FilledColumn.RUNNING);
  }

  @Test
  void areaIsTheSameWhetherItIsShownOrNot() {
    StatedRow[] openings = {
      opening("Kind", "door", "Count", 2, "Reveal", 5), opening("Kind", "window with sill")
    };
    for (String rule : List.of("Net", "Solid", "IS 1200-13", "DIN 18363")) {
      double plain = fill(catalogue(rule, openings), wall()).base(FilledColumn.NET_AREA);
      Catalogue showing =
          catalogue(
              List.of(
                  row("Setting", "Show measuring", "Value", "yes"),
                  row("Setting", "Measuring rule", "Value", rule)),
              UnitSystem.US,
              openings);

      assertThat(fill(showing, wall()).base(FilledColumn.NET_AREA)).isCloseTo(plain, within(1e-9));
    }
  }

  @Test
  void openingComesOffEachCoatingOfTheWallButOneLineOfEach() {
    FilledBid filled =
        Estimator.fill(
            Bids.bid(
                catalogue("Net", opening("Kind", "door")),
                UnitSystem.US,
                wall(COATING, "primer"),
                wall(),
                wall(LENGTH, 12)));

    assertThat(filled.lines().map(line -> line.base(FilledColumn.NET_AREA)))
        .containsExactly(159.0, 159.0, 108.0);
  }

  @Test
  void otherRoomsAndSurfacesKeepTheirArea() {
    FilledBid filled =
        Estimator.fill(
            Bids.bid(
                catalogue("Net", opening("Kind", "door", "Surface", "wall")),
                UnitSystem.US,
                Bids.line(ROOM, "Hall", SURFACE, "ceiling", COATING, "latex", LENGTH, 20, WIDTH, 9),
                Bids.line(ROOM, "Bath", SURFACE, "walls", COATING, "latex", LENGTH, 20, HEIGHT, 9),
                wall(ROOM, "hall")));

    assertThat(filled.lines().map(line -> line.base(FilledColumn.NET_AREA)))
        .containsExactly(180.0, 180.0, 159.0);
  }

  /** A door in no stated surface is in a wall: not in a ceiling or a railing. */
  @Test
  void openingWithoutASurfaceIsInTheFirstThatStandsUpright() {
    FilledBid filled =
        Estimator.fill(
            Bids.bid(
                catalogue("Net", opening("Kind", "door")),
                UnitSystem.US,
                Bids.line(ROOM, "Hall", SURFACE, "ceiling", COATING, "latex", LENGTH, 20, WIDTH, 9),
                Bids.line(
                    ROOM, "Hall", SURFACE, "open railing", COATING, "latex", LENGTH, 20, HEIGHT, 3),
                Bids.line(ROOM, "Hall", SURFACE, "moat", COATING, "latex", LENGTH, 20, HEIGHT, 9),
                Bids.line(ROOM, "Hall", SURFACE, "siding", COATING, "latex", LENGTH, 20, HEIGHT, 9),
                wall()));

    assertThat(filled.lines().map(line -> line.base(FilledColumn.NET_AREA)))
        .containsExactly(180.0, 120.0, Double.NaN, 159.0, 180.0);
  }

  /** A coating that is not known covers the face as another does. */
  @Test
  void openingComesOffEachCoatingBeItKnownOrNot() {
    FilledBid filled =
        Estimator.fill(
            Bids.bid(
                catalogue("Net", opening("Kind", "door")),
                UnitSystem.US,
                wall(COATING, "moss"),
                wall(COATING, "Moss "),
                wall(COATING, "tar of ours"),
                wall()));

    assertThat(filled.lines().map(line -> line.base(FilledColumn.NET_AREA)))
        .containsExactly(159.0, 180.0, 159.0, 159.0);
  }

  @Test
  void openingListedForTwoRoomsWithOneIdComesOffOnce() {
    FilledBid filled =
        Estimator.fill(
            Bids.bid(
                catalogue(
                    "IS 1200-13",
                    opening("Kind", "door", "Id", "D1"),
                    opening("Room", "Bath", "Kind", "door", "Id", "D1")),
                UnitSystem.US,
                wall(),
                wall(ROOM, "Bath")));

    assertThat(filled.lines().map(line -> line.base(FilledColumn.NET_AREA)))
        .containsExactly(159.0, 180.0);
  }

  @Test
  void listingsThatCannotBeUsedAreTold() {
    Catalogue catalogue =
        catalogue(
            "Net",
            opening("Room", "Attic", "Kind", "door"),
            opening("Width", 3),
            opening("Kind", "porthole", "Width", 1, "Height", 1));
    FilledBid filled = Estimator.fill(Bids.bid(catalogue, UnitSystem.US, wall()));

    assertThat(Openings.faulty(filled))
        .extracting(Openings.Faulty::fault)
        .containsExactly(
            Openings.Fault.NO_LINE, Openings.Fault.NO_SIZE, Openings.Fault.UNKNOWN_KIND);
    assertThat(filled.lines().findFirst().orElseThrow().base(FilledColumn.NET_AREA)).isEqualTo(179);
  }

  @Test
  void listingWithoutARoomIsAProblemOfTheTable() {
    List<TableProblem> problems = new ArrayList<>();
    Catalogue.builtIn()
        .with(
            Map.of(Tables.OPENINGS, List.of(row("Kind", "door", "Count", 2))),
            UnitSystem.US,
            problems);

    assertThat(problems).singleElement().matches(problem -> problem.expected().contains("Room"));
  }

  @Test
  void gapsInTrimGoByLength() {
    BidLine trim = Bids.line(ROOM, "Hall", SURFACE, "trim", COATING, "latex", LENGTH, 60, GIRTH, 6);
    StatedRow gap = opening("Surface", "trim", "Width", 4);
    StatedRow small = opening("Surface", "trim", "Width", 3.28);

    assertThat(fill(catalogue("Net", gap), trim).base(FilledColumn.NET_AREA))
        .isCloseTo(28, within(1e-9));
    assertThat(fill(catalogue("DIN 18363", gap, small), trim).base(FilledColumn.NET_AREA))
        .isCloseTo(28, within(1e-9));
  }

  @Test
  void openingInAFloorHasItsOwnLimit() {
    BidLine floor =
        Bids.line(ROOM, "Hall", SURFACE, "floor", COATING, "latex", LENGTH, 20, WIDTH, 9);
    StatedRow hatch = opening("Surface", "floor", "Width", 3, "Height", 3);

    assertThat(fill(catalogue("DIN 18363", hatch), floor).base(FilledColumn.NET_AREA))
        .isCloseTo(171, within(1e-9));
  }

  @Test
  void openingsInASheetComeOffFlatBeforeItIsIncreased() {
    FilledLine line = fill(catalogue("Net", opening("Kind", "door")), wall(SHAPE, "corrugated"));

    assertThat(line.base(FilledColumn.NET_AREA)).isCloseTo(1.14 * (180 - 21), within(1e-9));
  }

  @Test
  void statedAreaIsIncreasedOnlyByAShapeOfTheLine() {
    BidLine lap = Bids.line(ROOM, "Hall", SURFACE, "lap siding", COATING, "latex", AREA, 100);
    BidLine sheet =
        Bids.line(
            ROOM, "Hall", SURFACE, "siding", COATING, "latex", AREA, 100, SHAPE, "corrugated");

    assertThat(fill(catalogue("Net"), lap).base(FilledColumn.NET_AREA)).isEqualTo(100);
    assertThat(fill(catalogue("Net"), sheet).base(FilledColumn.NET_AREA))
        .isCloseTo(114, within(1e-9));
  }

  /** A door of 21 ft2 in a face that is measured flat, or as it stands: 1.10 or 1.14 of it. */
  @Test
  void openingComesOffAsTheAreaAroundItIsMeasured() {
    Catalogue door = catalogue("Net", opening("Kind", "door"));
    Object[] lap = {ROOM, "Hall", SURFACE, "lap siding", COATING, "latex", AREA, 100};
    Object[] sheet = {
      ROOM, "Hall", SURFACE, "siding", COATING, "latex", AREA, 100, SHAPE, "corrugated"
    };
    BidLine measured =
        Bids.line(ROOM, "Hall", SURFACE, "lap siding", COATING, "latex", LENGTH, 20, HEIGHT, 9);

    assertThat(fill(door, Bids.line(lap)).base(FilledColumn.NET_AREA)).isEqualTo(79);
    assertThat(fill(door, Bids.line(sheet)).base(FilledColumn.NET_AREA))
        .isCloseTo((100 - 21) * 1.14, within(1e-9));
    assertThat(fill(door, measured).base(FilledColumn.NET_AREA))
        .isCloseTo((180 - 21) * 1.10, within(1e-9));
  }

  @Test
  void shapeOfTheLineOrOfTheRuleIsKept() {
    BidLine plain = Bids.line(SURFACE, "panelled doors", COATING, "latex", COUNT, 1);
    BidLine named =
        Bids.line(SURFACE, "panelled doors", COATING, "latex", COUNT, 1, SHAPE, "louvred");

    assertThat(fill(catalogue("Net"), plain).area().shape()).isNull();
    assertThat(fill(catalogue("Net"), named).area().shape().name()).isEqualTo("louvred");
    assertThat(fill(catalogue("IS 1200-13"), plain).area().shape().name()).isEqualTo("panelled");
  }

  @ParameterizedTest
  @CsvSource({
    // one door of 3 x 7 ft, both faces: 42 ft2 flat; 54.6 is the published case
    "Net, doors, , 42",
    "IS 1200-13, doors, , 50.4",
    "Net, panelled doors, , 54.6",
    "IS 1200-13, panelled doors, , 54.6",
    "Net, doors, louvred, 75.6",
    "Net, doors, trellis, 42",
    "Net, panelled doors, fully glazed, 33.6",
    "IS 1200-13, doors, rolling shutter, 46.2"
  })
  void doorsTakeTheFactorOfTheirShape(String rule, String surface, String shape, double ft2) {
    BidLine door =
        Bids.line(
            SURFACE, surface, COATING, "oil-based", COUNT, 1, SHAPE, shape == null ? "" : shape);

    assertThat(fill(catalogue(rule), door).base(FilledColumn.NET_AREA))
        .isCloseTo(ft2, within(1e-9));
  }

  @Test
  void disputedCoefficientOfRollingShuttersIsASetting() {
    Catalogue catalogue = Bids.settings("Rolling shutter", "all over");
    BidLine door =
        Bids.line(SURFACE, "doors", COATING, "oil-based", COUNT, 1, SHAPE, "rolling shutter");

    assertThat(fill(catalogue, door).base(FilledColumn.NET_AREA)).isCloseTo(31.5, within(1e-9));
  }

  @Test
  void factorOfTheEstimatorStandsAgainstTheRule() {
    Catalogue catalogue =
        Catalogue.builtIn()
            .with(
                Map.of(
                    Tables.SETTINGS,
                    List.of(row("Setting", "Measuring rule", "Value", "IS 1200-13")),
                    Tables.SURFACES,
                    List.of(row("Surface", "doors", "Factor", 1.1))),
                UnitSystem.US,
                new ArrayList<>());
    BidLine door = Bids.line(SURFACE, "doors", COATING, "oil-based", COUNT, 1);

    assertThat(fill(catalogue, door).base(FilledColumn.NET_AREA)).isCloseTo(46.2, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"0.099, true", "0.100, true", "0.101, false"})
  void workUpToTenCentimetresGirthIsMeasuredByLength(double girthM, boolean running) {
    BidLine trim =
        Bids.line(
            UnitSystem.METRIC,
            SURFACE,
            "trim",
            COATING,
            "latex",
            LENGTH,
            12,
            COUNT,
            2,
            GIRTH,
            girthM * 1000);
    Area area = fill(catalogue("IS 1200-13"), trim).area();

    assertThat(area.running() != null).isEqualTo(running);
    if (running) {
      assertThat(area.running().value()).isEqualTo(24);
    }
    assertThat(fill(catalogue("Net"), trim).area().running()).isNull();
  }

  private static BidLine wall(Object... more) {
    List<Object> cells =
        new ArrayList<>(
            List.of(ROOM, "Hall", SURFACE, "walls", COATING, "latex", LENGTH, 20, HEIGHT, 9));
    cells.addAll(List.of(more));
    return Bids.line(cells.toArray());
  }

  private static FilledLine fill(Catalogue catalogue, BidLine line) {
    return Bids.fill(catalogue, line);
  }

  private static String printed(FilledLine line, FilledColumn column) {
    return ((Figure.Live) line.figures().get(column)).formula().print(Object::toString);
  }

  private static StatedRow opening(Object... pairs) {
    List<Object> all = new ArrayList<>(List.of(pairs));
    if (!all.contains("Room")) {
      all.addAll(List.of("Room", "Hall"));
    }
    return row(all.toArray());
  }

  private static int next = 0;

  private static StatedRow row(Object... pairs) {
    return Bids.row(next++, pairs);
  }

  private static Catalogue catalogue(String rule, StatedRow... openings) {
    return catalogue(rule, UnitSystem.US, openings);
  }

  private static Catalogue catalogue(String rule, UnitSystem system, StatedRow... openings) {
    return catalogue(List.of(row("Setting", "Measuring rule", "Value", rule)), system, openings);
  }

  private static Catalogue catalogue(
      List<StatedRow> settings, UnitSystem system, StatedRow... openings) {
    List<TableProblem> problems = new ArrayList<>();
    Catalogue catalogue =
        Catalogue.builtIn()
            .with(
                Map.of(Tables.SETTINGS, settings, Tables.OPENINGS, List.of(openings)),
                system,
                problems);
    assertThat(problems).isEmpty();
    return catalogue;
  }
}
