package org.wetmil.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.trade.TipCode;

/**
 * The starting values as decided, written down a second time in the layout they were decided in:
 * common practice and our own judgement, from memory, except where a source is named in the table.
 */
class BuiltInTablesTest {
  private static final Catalogue TABLES = Catalogue.builtIn();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          stain        |  9 | 13 |  9 |  7 | 20 |  2.0 |  3.0 |  4.0 | 0.90 | 1200 | 1000 | 1
          lacquer      |  9 | 13 |  9 |  7 | 25 |  2.5 |  3.5 |  5.0 | 0.95 | 1400 | 1000 | 3
          oil-based    | 13 | 15 |  9 |  9 | 52 |  2.5 |  3.5 |  5.0 | 1.15 | 1800 | 1500 | 2
          latex        | 15 | 19 | 11 | 11 | 36 |  3.5 |  4.5 |  7.0 | 1.30 | 2000 | 1800 | 2
          primer       | 15 | 19 | 11 | 11 | 32 |  3.5 |  4.5 |  6.0 | 1.30 | 2000 | 1800 | 1
          dry fall     | 17 | 23 | 15 | 15 | 40 |  4.5 |  6.0 |  8.0 | 1.35 | 2000 | 1800 | 1
          two-part     | 15 | 21 | 13 | 13 | 65 |  5.0 |  8.0 | 12.0 | 1.40 | 2500 | 2000 | 2
          heavy latex  | 21 | 25 | 17 | 17 | 45 |  7.0 | 10.0 | 14.0 | 1.35 | 2300 | 2000 | 1
          smooth elastomeric|21|25|17| 17 | 45 |  7.0 | 10.0 | 14.0 | 1.35 | 2300 | 2000 | 1
          elastomeric  | 25 | 35 | 23 | 23 | 48 | 12.0 | 16.0 | 22.0 | 1.40 | 2600 | 2300 | 2
          block filler | 25 | 35 | 23 | 23 | 48 | 12.0 | 16.0 | 22.0 | 1.45 | 2500 | 2300 | 1
          """)
  void coatings(
      String name,
      int from,
      int to,
      int joinery,
      int least,
      double solidsPercent,
      double min,
      double target,
      double max,
      double density,
      double usualPsi,
      double leastPsi,
      int coats) {
    Coating coating = TABLES.coating(name).orNull();

    assertThat(
            List.of(
                coating.orificeFromThou(),
                coating.orificeToThou(),
                coating.joineryFromThou(),
                coating.leastOrificeThou(),
                coating.usualCoats()))
        .containsExactly(from, to, joinery, least, coats);
    assertThat(coating.volumeSolids()).isCloseTo(solidsPercent / 100, within(1e-15));
    assertThat(
            List.of(
                coating.wetMinMil(),
                coating.wetTargetMil(),
                coating.wetMaxMil(),
                coating.densityKgL(),
                coating.usualPsi(),
                coating.leastPsi()))
        .containsExactly(min, target, max, density, usualPsi, leastPsi);
  }

  /** Thinner density, viscosity in the hose and tip life; the filler alone fills voids. */
  @ParameterizedTest
  @CsvSource({
    "stain, 0.80, 0.02, 100",
    "lacquer, 0.80, 0.02, 100",
    "oil-based, 0.80, 0.10, 60",
    "latex, 1.00, 0.20, 40",
    "primer, 1.00, 0.20, 40",
    "dry fall, 1.00, 0.20, 40",
    "two-part, 0.80, 0.40, 60",
    "heavy latex, 1.00, 0.40, 40",
    "elastomeric, 1.00, 1.00, 20",
    "block filler, 1.00, 1.00, 20"
  })
  void thinnersHosesAndWear(String name, double thinner, double viscosity, double life) {
    Coating coating = TABLES.coating(name).orNull();

    assertThat(List.of(coating.thinnerDensityKgL(), coating.viscosityPaS(), coating.tipLifeGal()))
        .containsExactly(thinner, viscosity, life);
    assertThat(coating.fillsVoids()).isEqualTo(name.equals("block filler"));
    assertThat(coating.heavyDuty()).isEqualTo(life == 20);
    assertThat(coating.solventBorne()).isEqualTo(thinner == 0.80);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          walls | perimeter x height | height | 5 | 0.70 | 1.0 | broad | 0.20
          ceiling | length x width | lesser | 5 | 0.70 | 1.0 | broad | 0.20
          floor | length x width | lesser | 5 | 0.70 | 1.0 | broad | 0.25
          metal deck ceiling | length x width | lesser | 5 | 0.60 | 0.85 | broad | 0.20
          metal deck with open joists | length x width | lesser | 5 | 0.60 | 0.85 | broad | 0.20
          siding | length x height | height | 5 | 0.65 | 1.0 | broad | 0.25
          lap siding | length x height | height | 5 | 0.65 | 1.0 | broad | 0.25
          exterior walls | length x height | height | 5 | 0.65 | 1.0 | broad | 0.25
          soffit | length x width | width | 5 | 0.65 | 1.0 | broad | 0.25
          gable | triangle | height | 5 | 0.65 | 1.0 | broad | 0.25
          board fence | length x height | height | 5 | 0.65 | 0.95 | broad | 0.20
          trim | length x girth | girth | 4 | 0.70 | 0.90 | joinery | 0.05
          fascia | length x girth | girth | 4 | 0.70 | 0.90 | joinery | 0.05
          doors | count x size | 36 | 4 | 0.70 | 0.85 | joinery | 0.12
          panelled doors | count x size | 36 | 4 | 0.70 | 0.85 | joinery | 0.12
          door frames | count x length x girth | 6 | 4 | 0.70 | 0.90 | joinery | 0.05
          windows | count x unit | 3 | 3 | 0.70 | 0.80 | joinery | 0.05
          cabinets | count x size | 18 | 3 | 0.70 | 0.65 | joinery | 0.08
          open railing | length x height | 2 | 2 | 0.65 | 0.70 | joinery | 0.06
          exterior railing | length x height | 2 | 2 | 0.65 | 0.70 | joinery | 0.06
          columns | count x length x girth | half girth | 4 | 0.65 | 0.80 | joinery | 0.12
          pipes | count x length x girth | half girth | 3 | 0.65 | 0.70 | joinery | 0.08
          """)
  void surfaces(
      String name,
      String measuredBy,
      String narrowest,
      int fan,
      double stick,
      double hit,
      String band,
      double trigger) {
    Surface surface = TABLES.surface(name).orNull();

    assertThat(surface.measuredBy().words()).isEqualTo(measuredBy);
    assertThat(surface.row().text("Narrowest dimension")).isEqualTo(narrowest);
    assertThat(surface.widestFanDigit()).isEqualTo(fan);
    assertThat(List.of(surface.stick(), surface.hit(), surface.triggerShare()))
        .containsExactly(stick, hit, trigger);
    assertThat(surface.joinery()).isEqualTo(band.equals("joinery"));
  }

  /** Sizes of the pieces, faces and shape factors; a 3 x 7 ft door, a 2 x 2.5 ft cabinet front. */
  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      value = {
        "doors, 21, -, -, 2, 1.0",
        "panelled doors, 21, -, -, 2, 1.3",
        "door frames, -, 17, 12, 1, 1.0",
        "windows, 8, -, -, 1, 1.0",
        "cabinets, 5, -, -, 2, 1.0",
        "trim, -, -, 4, 1, 1.0",
        "fascia, -, -, 8, 1, 1.0",
        "columns, -, -, -, 1, 1.0",
        "pipes, -, -, -, 1, 1.0",
        "board fence, -, -, -, 2, 1.0",
        "open railing, -, -, -, 2, 1.0",
        "exterior railing, -, -, -, 2, 1.0",
        "siding, -, -, -, 1, 1.0",
        "lap siding, -, -, -, 1, 1.10",
        "metal deck ceiling, -, -, -, 1, 1.25",
        "metal deck with open joists, -, -, -, 1, 1.75"
      })
  void pieces(
      String name, Double unitFt2, Double unitFt, Double girthIn, double faces, double factor) {
    Surface surface = TABLES.surface(name).orNull();

    assertThat(List.of(surface.unitFt2(), surface.unitLengthFt(), surface.girthIn()))
        .containsExactly(orNaN(unitFt2), orNaN(unitFt), orNaN(girthIn));
    assertThat(List.of(surface.faces(), surface.factor())).containsExactly(faces, factor);
  }

  private static Double orNaN(Double value) {
    return value == null ? Double.NaN : value;
  }

  @ParameterizedTest
  @CsvSource({
    "COVER_FLOOR, 500",
    "TAPE_EDGE, 120",
    "MASK_OPENING, 0.20",
    "MASK_HARDWARE, 0.10",
    "UNMASK, 0.25",
    "DUST, 2000",
    "DUST_AND_WIPE, 800",
    "LIGHT_SAND, 400",
    "SCRAPE, 80",
    "CAULK, 100",
    "BACK_ROLL_SMOOTH, 450",
    "BACK_ROLL_ROUGH, 300",
    "SET_UP, 0.75",
    "CLEAN_UP, 0.75",
    "CHANGE_COATING, 0.50",
    "CHANGE_TIP, 0.05",
    "TOUCH_UP, 0.10",
    "HEIGHT_1, 1.0",
    "HEIGHT_2, 1.15",
    "HEIGHT_3, 1.35",
    "HEIGHT_OVER, 1.6"
  })
  void labourRates(Task task, double rate) {
    assertThat(TABLES.rate(task)).isEqualTo(rate);
  }

  @ParameterizedTest
  @CsvSource({
    "DISTANCE, 12",
    "OVERLAP, 0.5",
    "DISCHARGE, 0.80",
    "WASTE, 0.05",
    "BROAD_SLOWEST, 18",
    "BROAD_FASTEST, 36",
    "BROAD_EASY, 30",
    "JOINERY_SLOWEST, 12",
    "JOINERY_FASTEST, 24",
    "JOINERY_EASY, 20",
    "NARROW_WORK, 10",
    "NARROW_FIT, 0.8",
    "LEAST_PRESSURE, 1000",
    "GREATEST_PRESSURE, 3000",
    "LEAST_DISTANCE, 12",
    "GREATEST_DISTANCE, 15",
    "PUMP_RESERVE, 1.25",
    "GUNS, 1",
    "CREW, 2",
    "HOURS_A_DAY, 8",
    "WORKING_MAXIMUM, 1.25",
    "FILM_TOLERANCE, 0.25",
    "FINE_STEP, 0.05",
    "HEIGHT_STEP_1, 10",
    "HEIGHT_STEP_2, 14",
    "HEIGHT_STEP_3, 20",
    "AREA_TOLERANCE, 0.05",
    "GREATEST_WALL_HEIGHT, 40",
    "GREATEST_TRIM_GIRTH, 24",
    "SPREAD_LOW, 0.6",
    "SPREAD_HIGH, 1.6",
    "FILTER_SHARE, 0.6",
    "WORN, 0.10",
    "REPLACE, 0.25",
    "PAIL_WASTE, 0.03",
    "HOSE_RESIDUE, 0.2"
  })
  void settings(Setting setting, double value) {
    assertThat(TABLES.number(setting)).isEqualTo(value);
  }

  @ParameterizedTest
  @CsvSource({
    "smooth, 1.0, false, HOUSE",
    "textured, 1.15, true, HOUSE",
    "stucco, 1.4, true, HOUSE",
    "rough-sawn, 1.5, true, PUBLISHED",
    "open block, 1.5, true, HOUSE",
    "filled block, 1.2, true, HOUSE"
  })
  void textures(String name, double roughness, boolean rough, Kind kind) {
    Texture texture = TABLES.texture(name).orNull();

    assertThat(texture.roughness()).isEqualTo(roughness);
    assertThat(texture.rough()).isEqualTo(rough);
    assertThat(texture.row().get("Roughness").kind()).isEqualTo(kind);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          NEW | dust only | new, new work
          PRIMED | dust only | primed
          BARE | dust and wipe | bare, bare wood, bare metal, new wood, galvanized, galvanised
          BARE | dust only | new drywall, drywall, plaster, concrete, block, concrete block, brick
          PAINTED | dust and wipe; light sand | previously painted, painted, repaint, good
          PEELING | scrape and spot prime; dust and wipe | peeling, weathered, flaking, poor
          """)
  void conditions(Condition.State state, String preparation, String words) {
    for (String word : words.split(", ")) {
      Condition condition = TABLES.condition(word).orNull();

      assertThat(condition.state()).as(word).isEqualTo(state);
      assertThat(
              condition.preparation().stream().map(Task::title).collect(Collectors.joining("; ")))
          .as(word)
          .isEqualTo(preparation);
    }
  }

  /** Odd orifices of each fan, and 08, 10, 12, 14 for fans 2 to 4 inside their range. */
  @ParameterizedTest
  @CsvSource({
    "2, 07 08 09 10 11 12 13 14 15 17 19 21",
    "3, 07 08 09 10 11 12 13 14 15 17 19 21 23 25 27",
    "4, 09 10 11 12 13 14 15 17 19 21 23 25 27 29 31 33 35",
    "5, 11 13 15 17 19 21 23 25 27 29 31 33 35 37 39",
    "6, 13 15 17 19 21 23 25 27 29 31 33 35 37 39"
  })
  void stockTips(int fan, String orifices) {
    assertThat(TABLES.stockTips())
        .filteredOn(tip -> tip.fanDigit() == fan)
        .extracting(TipCode::orificeThou)
        .containsExactlyElementsOf(
            Arrays.stream(orifices.split(" ")).map(Integer::valueOf).toList());
    assertThat(TABLES.stockTips()).extracting(TipCode::fanDigit).containsOnly(2, 3, 4, 5, 6);
  }

  @ParameterizedTest
  @CsvSource({
    "alkyd, oil-based, false",
    "enamel, oil-based, true",
    "varnishes, oil-based, true",
    "Acrylic, latex, true",
    "emulsion, latex, false",
    "epoxies, two-part, false",
    "Ltx, latex, false",
    "Exterior acrylic, latex, true",
    "acrylic DTM, latex, true",
    "alkyd DTM, oil-based, false",
    "SMOOTH ELASTOMERIC, heavy latex, false",
    "latex, latex, false"
  })
  void otherWordsForCoatings(String word, String name, boolean ambiguous) {
    assertThat(TABLES.coating(word))
        .isEqualTo(new Lookup.Found<>(TABLES.coating(name).orNull(), ambiguous));
  }

  @ParameterizedTest
  @CsvSource({
    "baseboard, trim",
    "skirting, trim",
    "casing, trim",
    "crown, trim",
    "Doors, doors",
    "flush door, doors",
    "sash, windows",
    "Closet doors, doors",
    "bifold door, doors",
    "Wall, walls"
  })
  void otherWordsForSurfaces(String word, String name) {
    assertThat(TABLES.surface(word))
        .isEqualTo(new Lookup.Found<>(TABLES.surface(name).orNull(), false));
  }

  @ParameterizedTest
  @CsvSource({"latex semi-gloss", "walls and ceiling", "lat", "elastomeric latex blend"})
  void aWordInsideALongerNameIsNotAMatch(String name) {
    assertThat(TABLES.coating(name)).isInstanceOf(Lookup.Unknown.class);
    assertThat(TABLES.surface(name)).isInstanceOf(Lookup.Unknown.class);
  }

  @Test
  void nothingButADashIsABlankName() {
    assertThat(Stream.of("", " ", "-", "\u00a0", "\u2013").map(TABLES::coating))
        .allMatch(found -> found instanceof Lookup.Blank);
  }

  /** Another word leads to a row, differs from every name, and stands there once a language. */
  @ParameterizedTest
  @MethodSource("filesOfOtherWords")
  void everyOtherWordSaysSomethingNew(String file) {
    List<List<String>> words =
        BuiltIn.plain(file, OtherWords.HEADINGS).stream().map(csv -> csv.fields()).toList();

    assertThat(words)
        .extracting(word -> word.get(0) + " " + Names.key(word.get(1)))
        .doesNotHaveDuplicates();
    for (List<String> word : words) {
      assertThat(word.get(3)).isIn("", "yes", "ask");
      if (word.get(0).equals("Answers")) {
        assertThat(word.get(2)).isIn("yes", "no", "never", "first coat", "all");
        continue;
      }
      Table table = TABLES.table(Tables.find(word.get(0)).orElseThrow());
      assertThat(table.find(word.get(1))).as("%s is a name itself", word).isEmpty();
      for (String meaning : word.get(2).split(";")) {
        assertThat(table.find(meaning)).as("%s means nothing", word).isPresent();
      }
      assertThat(word.get(3).equals("ask")).isEqualTo(word.get(2).contains(";"));
    }
  }

  @Test
  void wordOfMeaningsTooFarApartStaysUnknownAndOffersThem() {
    assertThat(TABLES.coating("DTM"))
        .isEqualTo(new Lookup.Unknown<>("DTM", List.of("latex", "oil-based", "two-part")));
  }

  static Collection<String> filesOfOtherWords() {
    return OtherWords.FILES.values();
  }

  /** A surface that a language has no word for would stop every bid in it. */
  @ParameterizedTest
  @ValueSource(strings = {"other-words-de.csv", "other-words-es.csv"})
  void everyLanguageHasWordsForWhatBidsMostlyName(String file) {
    List<String> meant =
        BuiltIn.plain(file, OtherWords.HEADINGS).stream()
            .map(csv -> csv.fields().get(0) + " " + csv.fields().get(2))
            .toList();

    assertThat(meant)
        .contains(
            "Surfaces walls",
            "Surfaces ceiling",
            "Surfaces floor",
            "Surfaces exterior walls",
            "Surfaces trim",
            "Surfaces doors",
            "Surfaces door frames",
            "Surfaces windows",
            "Surfaces cabinets",
            "Surfaces columns",
            "Surfaces pipes",
            "Coatings latex",
            "Coatings oil-based",
            "Coatings primer",
            "Coatings stain",
            "Coatings lacquer",
            "Coatings two-part",
            "Coatings elastomeric",
            "Coatings block filler",
            "Conditions new",
            "Conditions primed",
            "Conditions bare",
            "Conditions painted",
            "Conditions peeling",
            "Textures smooth",
            "Textures textured",
            "Textures stucco",
            "Answers yes",
            "Answers never",
            "Answers first coat",
            "Answers all");
  }

  @ParameterizedTest
  @CsvSource({
    "Wände, walls",
    "WÄNDE, walls",
    "Waende, walls",
    "Wande, walls",
    "Fussboden, floor",
    "Fußleisten, trim",
    "Türen, doors",
    "paredes, walls",
    "Rodapié, trim",
    "rodapie, trim",
    "PUERTAS, doors"
  })
  void wordsOfOtherLanguagesMayLackTheirLetters(String word, String name) {
    assertThat(TABLES.surface(word))
        .isEqualTo(new Lookup.Found<>(TABLES.surface(name).orNull(), false));
  }

  @Test
  void misspeltEnglishIsNotOfferedAWordOfAnotherLanguage() {
    assertThat(TABLES.surface("wal")).isEqualTo(new Lookup.Unknown<>("wal", List.of("walls")));
    assertThat(TABLES.surface("Zimmerdekce"))
        .isEqualTo(new Lookup.Unknown<>("Zimmerdekce", List.of("zimmerdecke")));
  }

  /** A figure without limits could carry anything into the formulas. */
  @ParameterizedTest
  @EnumSource(Tables.class)
  void everyNumberOfATableHasLimits(Tables which) {
    for (Field field : TABLES.table(which).spec().fields()) {
      if (field.quantity() != null && field.quantity().isNumber()) {
        assertThat(Double.isFinite(field.range().low())).as(field.heading()).isTrue();
        assertThat(Double.isFinite(field.range().high())).as(field.heading()).isTrue();
      }
    }
    Map<String, Range> byRow =
        TABLES.table(which).spec().isByRow()
            ? TABLES.rows(which).stream()
                .filter(row -> Field.quantity(row.text("Quantity")).isNumber())
                .collect(Collectors.toMap(Row::name, row -> Range.of(row.text("Range"))))
            : Map.of();
    byRow.forEach((name, range) -> assertThat(Double.isFinite(range.high())).as(name).isTrue());
  }

  @Test
  void everySettingAndTaskHasARow() {
    Optional<String> blank =
        Stream.concat(
                Stream.of(Setting.values()).map(TABLES::row),
                Stream.of(Task.values()).map(TABLES::row))
            .filter(row -> row.text("Meaning").isBlank())
            .map(Row::name)
            .findFirst();

    assertThat(blank).isEmpty();
    assertThat(TABLES.rows(Tables.SETTINGS)).hasSize(Setting.values().length);
    assertThat(TABLES.rows(Tables.LABOUR_RATES)).hasSize(Task.values().length);
  }
}
