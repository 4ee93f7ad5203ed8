package org.wetmil.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.TipCode;

/** The estimator's rows over the built-in tables: what is taken, and what becomes a problem. */
class OverlayTest {
  private final List<TableProblem> problems = new ArrayList<>();

  private Catalogue with(Tables table, StatedRow... rows) {
    return with(UnitSystem.US, table, rows);
  }

  private Catalogue with(UnitSystem system, Tables table, StatedRow... rows) {
    return Catalogue.builtIn().with(Map.of(table, List.of(rows)), system, problems);
  }

  /** A row of true numbers and texts: pairs of heading and value, cells A2, B2, ... */
  private static StatedRow row(int row, Object... pairs) {
    Map<String, StatedRow.StatedCell> cells = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      String address = (char) ('A' + i / 2) + Integer.toString(row);
      Object value = pairs[i + 1];
      cells.put(
          (String) pairs[i],
          value instanceof StatedRow.StatedCell cell
              ? cell
              : value instanceof Number number
                  ? cell(address, value.toString(), number.doubleValue(), null, false)
                  : new StatedRow.StatedCell(
                      address, value.toString(), Double.NaN, null, false, false));
    }
    return new StatedRow("Mine", row, cells);
  }

  private static StatedRow.StatedCell cell(
      String address, String raw, double number, Unit unit, boolean percentFormat) {
    return new StatedRow.StatedCell(address, raw, number, unit, true, percentFormat);
  }

  private void assertProblem(String address, String raw, String expected) {
    assertThat(problems)
        .anySatisfy(
            problem -> {
              assertThat(problem.sheet()).isEqualTo("Mine");
              assertThat(problem.address()).isEqualTo(address);
              assertThat(problem.raw()).isEqualTo(raw);
              assertThat(problem.expected()).contains(expected);
            });
  }

  @Test
  void aProductTakesFromItsClassWhatItsRowLeavesBlank() {
    Coating coating =
        with(
                Tables.COATINGS,
                row(2, "Coating", "Harbour Matt", "Class", "latex paint", "Volume solids", 41))
            .coating("harbour matt")
            .orNull();

    assertThat(problems).isEmpty();
    assertThat(coating.volumeSolids()).isCloseTo(0.41, within(1e-15));
    assertThat(coating.wetTargetMil()).isEqualTo(4.5);
    assertThat(coating.className()).isEqualTo("latex");
    assertThat(coating.row().get("Volume solids").origin().text()).isEqualTo("Mine!C2");
    assertThat(coating.row().get("Wet film target").origin().text()).isEqualTo("class latex");
    assertThat(coating.row().get("Volume solids").kind()).isEqualTo(Kind.YOURS);
  }

  @Test
  void aClassStatedOnTheSheetServesItsProductsWhereverItStands() {
    Catalogue tables =
        with(
            Tables.COATINGS,
            row(2, "Coating", "Harbour Matt", "Class", "latex"),
            row(3, "Coating", "Harbour Silk", "Class", "Harbour Matt"),
            row(4, "Coating", "Latex", "Wet film target", 5));

    assertThat(problems).isEmpty();
    assertThat(tables.coating("Harbour Matt").orNull().wetTargetMil()).isEqualTo(5);
    assertThat(tables.coating("Harbour Silk").orNull().wetTargetMil()).isEqualTo(5);
    assertThat(tables.coating("Harbour Silk").orNull().className()).isEqualTo("latex");
  }

  @Test
  void anotherWordForAClassStandsForItUnlessItIsAmbiguous() {
    Catalogue tables =
        with(
            Tables.COATINGS,
            row(2, "Coating", "alkyd", "Volume solids", 50),
            row(3, "Coating", "enamel", "Volume solids", 50));

    assertThat(tables.coating("alkyd").orNull().wetTargetMil()).isEqualTo(3.5);
    assertThat(problems).hasSize(1);
    assertProblem("A3", "enamel", "Class");
  }

  @Test
  void aProductOfAnUnknownClassIsLeftOut() {
    Catalogue tables =
        with(Tables.COATINGS, row(2, "Coating", "Harbour Matt", "Class", "matt stuff"));

    assertThat(tables.coating("Harbour Matt").orNull()).isNull();
    assertProblem("B2", "matt stuff", "a class of coating: stain, lacquer");
  }

  @ParameterizedTest
  @CsvSource({
    "Wet film min, 6, Wet film target",
    "Wet film target, 8, Wet film max",
    "Wet film max, 3, Wet film min",
    "Orifice from, 21, Orifice to",
    "Orifice to, 13, Orifice from",
    "Orifice joinery from, 21, Orifice to",
    "Orifice least, 17, Orifice from",
    "Least pressure, 2100, Usual pressure",
    "Usual pressure, 1500, Least pressure"
  })
  void figuresThatContradictTheRestOfTheirRowGoBackToTheClass(
      String heading, double value, String against) {
    Coating latex = Catalogue.builtIn().coating("latex").orNull();
    Coating coating =
        with(
                Tables.COATINGS,
                row(2, "Coating", "Odd", "Class", "latex", heading, value, "Density", 1.4))
            .coating("Odd")
            .orNull();

    assertThat(problems).hasSize(1);
    assertProblem("C2", Double.toString(value), against);
    assertThat(coating.row().number(heading)).isEqualTo(latex.row().number(heading));
    assertThat(coating.densityKgL()).isEqualTo(1.4);
  }

  @Test
  void figuresThatFitTogetherAreTakenThoughNoneFitsTheClass() {
    Coating coating =
        with(
                Tables.COATINGS,
                row(
                    2,
                    "Coating",
                    "Thick",
                    "Class",
                    "latex",
                    "Wet film min",
                    8,
                    "Wet film target",
                    8,
                    "Wet film max",
                    8))
            .coating("Thick")
            .orNull();

    assertThat(problems).isEmpty();
    assertThat(coating.wetMinMil()).isEqualTo(8);
  }

  @Test
  void settingsThatContradictEachOtherStayAsTheyWere() {
    Catalogue tables =
        with(
            Tables.SETTINGS,
            row(2, "Setting", "Broad slowest", "Value", 40),
            row(3, "Setting", "Joinery slowest", "Value", 14),
            row(4, "Setting", "Height step 2", "Value", 25));

    assertThat(tables.number(Setting.BROAD_SLOWEST)).isEqualTo(18);
    assertThat(tables.number(Setting.JOINERY_SLOWEST)).isEqualTo(14);
    assertThat(tables.number(Setting.HEIGHT_STEP_2)).isEqualTo(14);
    assertThat(problems).hasSize(2);
    assertProblem("B2", "40", "Broad slowest, Broad easy, Broad fastest");
    assertProblem("B4", "25", "Height step 1, Height step 2, Height step 3");
  }

  /** 36, 36 % and 0.36 are one share, whatever the heading says. */
  @Test
  void aShareMayBeTypedInThreeWays() {
    StatedRow.StatedCell signed =
        new StatedRow.StatedCell("C2", "36 %", 36, Unit.PERCENT, false, false);
    List<Object> typed =
        List.of(
            36,
            0.36,
            cell("C2", "36", 36, Unit.PERCENT, false),
            cell("C2", "0.36", 0.36, Unit.PERCENT, false),
            cell("C2", "36 %", 0.36, null, true),
            cell("C2", "36 %", 0.36, Unit.PERCENT, true),
            signed);
    for (Object value : typed) {
      Catalogue tables =
          with(
              Tables.COATINGS, row(2, "Coating", "One", "Class", "primer", "Volume solids", value));

      assertThat(tables.coating("One").orNull().volumeSolids())
          .as("%s", value)
          .isCloseTo(0.36, within(1e-15));
    }
    assertThat(problems).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"136", "-0.1", "0", "0.01"})
  void aShareOutOfRangeIsAProblemAndTheValueBelowStays(double value) {
    Catalogue tables =
        with(Tables.COATINGS, row(2, "Coating", "One", "Class", "primer", "Volume solids", value));

    assertThat(tables.coating("One").orNull().volumeSolids()).isEqualTo(0.32);
    assertThat(problems).hasSize(1);
    assertProblem("C2", Double.toString(value), "from 0.02 to 1");
  }

  @Test
  void figuresAreReadInTheirOwnUnits() {
    Coating coating =
        with(
                UnitSystem.METRIC,
                Tables.COATINGS,
                row(
                    2,
                    "Coating",
                    "Metric",
                    "Class",
                    "latex",
                    "Wet film target",
                    127,
                    "Orifice from",
                    0.38,
                    "Usual pressure",
                    cell("E2", "2100", 2100, Unit.PSI, false)))
            .coating("Metric")
            .orNull();

    assertThat(problems).isEmpty();
    assertThat(coating.wetTargetMil()).isCloseTo(5, within(1e-12));
    assertThat(coating.orificeFromThou()).isEqualTo(15);
    assertThat(coating.usualPsi()).isEqualTo(2100);
  }

  @Test
  void aUnitOfAnotherKindIsAProblem() {
    with(
        Tables.COATINGS,
        row(
            2,
            "Coating",
            "One",
            "Class",
            "latex",
            "Density",
            cell("C2", "11 lb", 11, Unit.PSI, false)));

    assertProblem("C2", "11 lb", "a value in kg/L");
  }

  @ParameterizedTest
  @CsvSource({
    "Preparation, dust and polish, 'none, or some of dust only'",
    "Preparation, tape and paper an edge, 'none, or some of dust only'",
    "State, shiny, 'one of new, primed, bare, painted, peeling'",
    "Rough, perhaps, 'one of yes, no'"
  })
  void aWordThatAConditionDoesNotKnowIsAProblem(String heading, String word, String expected) {
    Catalogue tables =
        with(
            Tables.CONDITIONS,
            row(2, "Condition", "peeling", heading, word),
            row(3, "Condition", "glossy", "State", "Painted", "Preparation", "None"));

    assertProblem("B2", word, expected);
    assertThat(tables.condition("peeling").orNull().state()).isEqualTo(Condition.State.PEELING);
    assertThat(tables.condition("peeling").orNull().preparation())
        .containsExactly(Task.SCRAPE, Task.DUST_AND_WIPE);
    assertThat(tables.condition("glossy").orNull().preparation()).isEmpty();
    assertThat(tables.condition("glossy").orNull().state()).isEqualTo(Condition.State.PAINTED);
  }

  @Test
  void aNewConditionWithoutAStateThatCanBeUsedIsLeftOut() {
    Catalogue tables =
        with(
            Tables.CONDITIONS,
            row(2, "Condition", "sooty", "State", "sooty", "Preparation", "dust and wipe"));

    assertThat(tables.condition("sooty").orNull()).isNull();
    assertProblem("B2", "sooty", "one of new");
    assertProblem("A2", "sooty", "under State");
  }

  @Test
  void aNewSurfaceNeedsWhatItsFormulasNeed() {
    Catalogue tables =
        with(
            Tables.SURFACES,
            row(2, "Surface", "shutters", "Stick", 0.6),
            row(3, "Surface", "walls", "Measured by", "count × unit"),
            row(4, "Surface", "baseboard", "Girth", 6),
            row(5, "Surface", "floor", "Band", "BROAD", "Widest fan", 4.5));

    assertThat(tables.surface("shutters").orNull()).isNull();
    assertThat(tables.surface("walls").orNull().measuredBy())
        .isEqualTo(MeasuredBy.PERIMETER_X_HEIGHT);
    assertThat(tables.surface("baseboard").orNull().girthIn()).isEqualTo(6);
    assertThat(tables.surface("trim").orNull().girthIn()).isEqualTo(4);
    assertThat(tables.surface("floor").orNull().widestFanDigit()).isEqualTo(5);
    assertProblem("A2", "shutters", "under Trigger share");
    assertProblem("A3", "walls", "under Unit area");
    assertProblem("C5", "4.5", "a whole number from 1 to 12");
  }

  @Test
  void theNarrowestDimensionMayBeAWidthInAnyUnit() {
    Object millimetres = cell("B2", "914.4", 914.4, Unit.MILLIMETRE, false);
    Catalogue tables =
        with(
            Tables.SURFACES,
            row(2, "Surface", "doors", "Narrowest dimension", millimetres),
            row(3, "Surface", "windows", "Narrowest dimension", "Half-girth"),
            row(4, "Surface", "cabinets", "Narrowest dimension", "the edge"));

    Narrowest.Fixed fixed = (Narrowest.Fixed) tables.surface("doors").orNull().narrowest();
    assertThat(fixed.inches()).isCloseTo(36, within(1e-12));
    assertThat(tables.surface("windows").orNull().narrowest()).isEqualTo(Narrowest.Of.HALF_GIRTH);
    assertThat(problems).hasSize(1);
    assertProblem("B4", "the edge", "narrowest dimension");
  }

  @Test
  void aNameTwiceOrMissingIsAProblem() {
    Catalogue tables =
        with(
            Tables.SETTINGS,
            row(2, "Setting", "Waste", "Value", 7),
            row(3, "Setting", "waste", "Value", 9),
            row(4, "Setting", "", "Value", 9),
            row(5, "Setting", "Wast", "Value", 9));

    assertThat(tables.number(Setting.WASTE)).isEqualTo(0.07);
    assertProblem("A3", "waste", "row 2");
    assertProblem("B4", "9", "a name under Setting");
    assertProblem("A5", "Wast", "Waste");
  }

  @Test
  void stockTipsCanBeChangedAndWrongOnesAreProblems() {
    Catalogue tables =
        with(
            Tables.STOCK_TIPS,
            row(2, "Fan digit", 6, "Orifice to", 15, "Even orifices", "14; 16"),
            row(3, "Fan digit", "five", "Orifice to", 15),
            row(4, "Fan digit", 5, "Even orifices", "10;x"),
            row(5, "Fan digit", 8, "Orifice from", 21));

    assertThat(tables.stockTips())
        .filteredOn(tip -> tip.fanDigit() == 6)
        .extracting(TipCode::orificeThou)
        .containsExactly(13, 14, 15);
    assertProblem("A3", "five", "a number");
    assertProblem("B4", "10;x", "even orifices");
    assertProblem("A5", "8", "Orifice to");
  }

  @Test
  void tipsAndTestsThatCannotBeReadAreProblems() {
    with(
        Tables.TIPS_ON_HAND,
        row(2, "Tip", "017", "Count", 2),
        row(3, "Tip", 517, "Count", 1.5),
        row(4, "Tip", 517));
    assertProblem("A2", "017", "a tip code");
    assertProblem("B3", "1.5", "a whole number");
    assertThat(problems).hasSize(2);

    problems.clear();
    with(
        Tables.BUCKET_TESTS,
        row(2, "Tip", 517, "Coating", "latex", "Pressure", 2000),
        row(3, "Tip", 517, "Coating", "lotex", "Pressure", 2000, "Flow", 0.3));
    assertProblem("A2", "517", "a flow");
    assertProblem("A3", "517", "a coating");
    assertThat(problems).hasSize(2);
  }

  @Test
  void anOrificeRatedInMillimetresTakesTheTipItMeans() {
    Sprayer sprayer =
        with(
                UnitSystem.METRIC,
                Tables.SPRAYERS,
                row(2, "Sprayer", "Old Faithful", "Greatest orifice", 0.53))
            .sprayer("old faithful")
            .orNull();

    assertThat(sprayer.greatestOrificeThou()).isEqualTo(21);
  }

  /** Whatever stands in the cells of whatever table: problems, never an exception. */
  @Test
  void noRowOfAnyTableBreaksTheCatalogue() {
    Random random = new Random(20250);
    List<String> words =
        List.of(
            "",
            " ",
            "latex",
            "walls",
            "yes",
            "12' 6\"",
            "-",
            "none",
            "517",
            "5;7",
            "#REF!",
            "new",
            "count x unit",
            "height",
            "Waste",
            "dust only",
            "2",
            "smooth",
            "broad",
            "\u00a0",
            "x");
    double[] numbers = {0, -1, 0.36, 1, 2, 5, 17, 36, 100, 2000, 1e9, 1e308, -1e308, 1e-300, 4.5};
    Unit[] units = Unit.values();
    for (int i = 0; i < 3000; i++) {
      Tables table = Tables.values()[random.nextInt(Tables.values().length)];
      TableSpec spec = Catalogue.builtIn().table(table).spec();
      List<StatedRow> rows = new ArrayList<>();
      for (int r = 0; r < 1 + random.nextInt(3); r++) {
        Map<String, StatedRow.StatedCell> cells = new LinkedHashMap<>();
        for (Field field : spec.fields()) {
          if (random.nextInt(3) > 0) {
            boolean number = random.nextBoolean();
            double value = number ? numbers[random.nextInt(numbers.length)] : Double.NaN;
            List<Row> known = Catalogue.builtIn().rows(table);
            boolean name =
                field == spec.fields().get(0) && !known.isEmpty() && random.nextBoolean();
            String raw =
                name
                    ? known.get(random.nextInt(known.size())).name()
                    : number ? Double.toString(value) : words.get(random.nextInt(words.size()));
            Unit unit = random.nextInt(4) == 0 ? units[random.nextInt(units.length)] : null;
            cells.put(
                field.heading(),
                new StatedRow.StatedCell(
                    "A1", raw, value, unit, number && random.nextBoolean(), random.nextBoolean()));
          }
        }
        rows.add(new StatedRow("Mine", r + 2, cells));
      }
      UnitSystem system = UnitSystem.values()[random.nextInt(2)];
      Catalogue tables = Catalogue.builtIn().with(Map.of(table, rows), system, problems);

      assertThat(tables.rows(table))
          .hasSizeGreaterThanOrEqualTo(Catalogue.builtIn().rows(table).size());
    }
    assertThat(problems).isNotEmpty();
  }
}
