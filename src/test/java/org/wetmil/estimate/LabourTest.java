package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.FilledColumn.MASK;
import static org.wetmil.estimate.FilledColumn.PAINT;
import static org.wetmil.estimate.FilledColumn.PREPARE;
import static org.wetmil.estimate.FilledColumn.ROLL;
import static org.wetmil.estimate.FilledColumn.SPRAY;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;

/** The hours of a line, with the starting rates (our own judgement). */
class LabourTest {

  private static FilledLine line(String surface, Object... more) {
    return line(Catalogue.builtIn(), surface, more);
  }

  private static FilledLine line(Catalogue tables, String surface, Object... more) {
    return Bids.fill(tables, WorkedLines.latex(surface, more));
  }

  /** Hours over 800 ft2: dusted at 2000, wiped at 800, sanded at 400, scraped at 80 ft2/h. */
  @ParameterizedTest
  @CsvSource({
    "new, 0.4",
    "primed, 0.4",
    "drywall, 0.4",
    "brick, 0.4",
    "bare wood, 1.0",
    "bare, 1.0",
    "painted, 3.0",
    "good, 3.0",
    "flaking, 11.0",
    "shiny, 0.0",
    "'', 0.0"
  })
  void preparationFollowsTheConditionOverTheNetAreaOnce(String condition, double hours) {
    FilledLine filled =
        line(
            "ceiling",
            InputColumn.CONDITION,
            condition,
            InputColumn.AREA,
            800,
            InputColumn.COATS,
            3);

    assertThat(filled.base(PREPARE)).isCloseTo(hours, within(1e-12));
  }

  /** 200 ft at 100 ft/h on top of 200 x 4/12 = 66.7 ft2 of preparation. */
  @ParameterizedTest
  @CsvSource({
    "trim, bare, 2.0",
    "trim, peeling, 2.0",
    "trim, painted, 0.0",
    "trim, new, 0.0",
    "siding, bare, 0.0"
  })
  void wornTrimIsCaulkedOverItsLength(String surface, String condition, double hours) {
    FilledLine with =
        line(
            surface,
            InputColumn.CONDITION,
            condition,
            InputColumn.LENGTH,
            100,
            InputColumn.COUNT,
            2,
            InputColumn.HEIGHT,
            9);
    double area = with.base(FilledColumn.NET_AREA);
    double prepared =
        switch (condition) {
          case "bare" -> area / 800;
          case "peeling" -> area / 80 + area / 800;
          case "painted" -> area / 800 + area / 400;
          default -> area / 2000;
        };

    assertThat(with.base(PREPARE) - prepared).isCloseTo(hours, within(1e-12));
  }

  /** 6 doors at 0.10 h, taken down again 25 %. */
  @ParameterizedTest
  @CsvSource({
    "doors, painted, 0.75",
    "panelled doors, bare, 0.75",
    "doors, new, 0.0",
    "doors, primed, 0.0",
    "doors, '', 0.0",
    "windows, painted, 0.0",
    "cabinets, painted, 0.0"
  })
  void hardwareIsMaskedOnDoorsThatAreNotNew(String surface, String condition, double hours) {
    assertThat(line(surface, InputColumn.CONDITION, condition, InputColumn.COUNT, 6).base(MASK))
        .isCloseTo(hours, within(1e-12));
  }

  /** 900 ft2 at 450 smooth, 300 rough, for each coat rolled of two. */
  @ParameterizedTest
  @CsvSource({
    "walls, bare, '', '', 2.0",
    "walls, drywall, '', '', 2.0",
    "walls, painted, '', '', 0.0",
    "walls, painted, stucco, '', 3.0",
    "walls, painted, filled block, '', 3.0",
    "walls, painted, smooth, '', 0.0",
    "exterior walls, bare, '', '', 2.0",
    "ceiling, bare, stucco, '', 0.0",
    "siding, bare, rough-sawn, '', 0.0",
    "walls, bare, stucco, Never, 0.0",
    "walls, bare, stucco, no, 0.0",
    "ceiling, new, '', First-coat, 2.0",
    "ceiling, new, '', yes, 2.0",
    "ceiling, new, '', all, 4.0",
    "ceiling, new, stucco, All coats, 6.0",
    "walls, bare, '', perhaps, 2.0"
  })
  void backRolling(String surface, String condition, String texture, String word, double hours) {
    FilledLine filled =
        line(
            surface,
            InputColumn.CONDITION,
            condition,
            InputColumn.TEXTURE,
            texture,
            InputColumn.BACK_ROLL,
            word,
            InputColumn.AREA,
            900);

    assertThat(filled.base(ROLL)).isCloseTo(hours, within(1e-12));
  }

  @Test
  void aSettingRollsWhereTheLineSaysNothing() {
    Catalogue tables = Bids.settings("Back-roll", "ALL");

    assertThat(line(tables, "ceiling", InputColumn.AREA, 900).base(ROLL))
        .isCloseTo(4, within(1e-12));
    assertThat(
            line(tables, "ceiling", InputColumn.AREA, 900, InputColumn.BACK_ROLL, "never")
                .base(ROLL))
        .isZero();
  }

  /** 120 ft of edge 1 h, 5 openings 1 h, floor 20 x 15 at 500 0.6 h; 12 ft is x 1.15; + 25 %. */
  @Test
  void maskingGrowsWithTheHeightButTheFloorDoesNot() {
    FilledLine filled =
        line(
            "walls",
            InputColumn.LENGTH,
            20,
            InputColumn.WIDTH,
            15,
            InputColumn.HEIGHT,
            12,
            InputColumn.MASK_EDGE,
            120,
            InputColumn.MASK_OPENINGS,
            5);

    assertThat(filled.base(MASK)).isCloseTo((0.6 + 2 * 1.15) * 1.25, within(1e-12));
  }

  @Test
  void roughnessMultipliesPaintAndSprayHoursAlike() {
    FilledLine smooth = line("walls", InputColumn.AREA, 500);
    FilledLine stucco = line("walls", InputColumn.AREA, 500, InputColumn.TEXTURE, "stucco");
    FilledLine unknown = line("walls", InputColumn.AREA, 500, InputColumn.TEXTURE, "velvet");

    assertThat(stucco.base(PAINT) / smooth.base(PAINT)).isCloseTo(1.4, within(1e-12));
    assertThat(stucco.base(SPRAY) / smooth.base(SPRAY)).isCloseTo(1.4, within(1e-12));
    assertThat(unknown.base(PAINT)).isEqualTo(smooth.base(PAINT));
    assertThat(unknown.base(ROLL)).isZero();
  }

  @Test
  void aFillersFilmIncludesTheVoids() {
    Object[] cells = {
      InputColumn.SURFACE, "walls", InputColumn.COATING, "block filler", InputColumn.AREA, 500
    };
    Object[] rough = Arrays.copyOf(cells, 8);
    rough[6] = InputColumn.TEXTURE;
    rough[7] = "open block";

    assertThat(Bids.fill(Bids.line(rough)).base(PAINT))
        .isEqualTo(Bids.fill(Bids.line(cells)).base(PAINT));
    assertThat(Bids.fill(Bids.line(rough)).base(SPRAY))
        .isEqualTo(Bids.fill(Bids.line(cells)).base(SPRAY));
  }

  /** A blank cell means the row "smooth", also where the estimator changes it. */
  @Test
  void aBlankTextureIsTheRowSmooth() {
    Catalogue tables =
        Bids.with(Tables.TEXTURES, List.of(Bids.row(0, "Texture", "Smooth", "Roughness", 1.1)));
    FilledLine built = line("walls", InputColumn.AREA, 500, InputColumn.CONDITION, "painted");
    FilledLine changed =
        line(tables, "walls", InputColumn.AREA, 500, InputColumn.CONDITION, "painted");

    assertThat(changed.base(PAINT) / built.base(PAINT)).isCloseTo(1.1, within(1e-12));
    assertThat(changed.base(ROLL)).isZero();
  }

  @Test
  void withAHoseTheWasteIsThatOfThePails() {
    Catalogue tables =
        Bids.with(
            Tables.SPRAYERS,
            List.of(
                Bids.row(0, "Sprayer", "Hosed", "Hose bore", 0.5, "Hose length", 1),
                Bids.row(1, "Sprayer", "Half", "Hose bore", 0.5)));
    double spread = line(tables, "walls", InputColumn.AREA, 9).base(FilledColumn.SPREAD);
    FilledLine hosed = line(tables, "walls", InputColumn.AREA, 9, InputColumn.SPRAYER, "hosed");
    FilledLine half = line(tables, "walls", InputColumn.AREA, 9, InputColumn.SPRAYER, "half");

    assertThat(hosed.base(FilledColumn.SPREAD) / spread).isCloseTo(0.97 / 0.95, within(1e-12));
    assertThat(half.base(FilledColumn.SPREAD)).isEqualTo(spread);
  }

  private static List<FilledLine> room(BidLine... lines) {
    return Estimator.fill(Bids.bid(lines)).lines().toList();
  }

  private static double[] masks(List<FilledLine> lines) {
    return lines.stream().mapToDouble(line -> line.base(MASK)).toArray();
  }

  /** 20 x 15 ft at 500 ft2/h, taken up again 25 %: 0.75 h. */
  @Test
  void theFloorOfARoomIsCoveredOnceOnItsFirstWallsOrCeiling() {
    List<FilledLine> lines =
        room(
            WorkedLines.latex("trim", InputColumn.ROOM, "Hall", InputColumn.LENGTH, 70),
            WorkedLines.latex(
                "walls", InputColumn.ROOM, "Hall", InputColumn.LENGTH, 70, InputColumn.HEIGHT, 9),
            WorkedLines.latex(
                "ceiling",
                InputColumn.ROOM,
                "hall ",
                InputColumn.LENGTH,
                20,
                InputColumn.WIDTH,
                15),
            WorkedLines.latex("ceiling", InputColumn.ROOM, "Attic", InputColumn.AREA, 90));

    assertThat(masks(lines)).containsExactly(0, 0.75, 0, 0);
  }

  @Test
  void aFirstLineThatIsLeftOutOrMakesNoAreaDoesNotTakeTheFloorWithIt() {
    List<FilledLine> lines =
        room(
            WorkedLines.latex(
                "walls", InputColumn.ROOM, "A", InputColumn.LENGTH, 20, InputColumn.WIDTH, 15),
            WorkedLines.latex(
                "ceiling",
                InputColumn.ROOM,
                "A",
                InputColumn.INCLUDE,
                "no",
                InputColumn.LENGTH,
                20,
                InputColumn.WIDTH,
                15),
            WorkedLines.latex(
                "ceiling", InputColumn.ROOM, "A", InputColumn.LENGTH, 20, InputColumn.WIDTH, 15));

    assertThat(masks(lines)).containsExactly(Double.NaN, 0, 0.75);
  }

  @Test
  void aRoomThatOccursFiveTimesHasFiveFloors() {
    List<FilledLine> lines =
        room(
            WorkedLines.latex(
                "walls",
                InputColumn.ROOM,
                "Cell",
                InputColumn.COUNT,
                5,
                InputColumn.LENGTH,
                20,
                InputColumn.WIDTH,
                15,
                InputColumn.HEIGHT,
                9));

    assertThat(masks(lines)).containsExactly(3.75);
  }

  /** The walls stand first and say no size; the ceiling has it, five times 20 x 15 ft. */
  @Test
  void aFloorIsCoveredAsOftenAsTheLineThatSizesItOccurs() {
    List<FilledLine> lines =
        room(
            WorkedLines.latex(
                "walls", InputColumn.ROOM, "Cell", InputColumn.LENGTH, 70, InputColumn.HEIGHT, 9),
            WorkedLines.latex(
                "ceiling",
                InputColumn.ROOM,
                "Cell",
                InputColumn.COUNT,
                5,
                InputColumn.LENGTH,
                20,
                InputColumn.WIDTH,
                15));

    assertThat(masks(lines)).containsExactly(3.75, 0);
  }

  @Test
  void workOutdoorsCoversNoFloor() {
    List<FilledLine> lines =
        room(
            WorkedLines.latex("soffit", InputColumn.LENGTH, 20, InputColumn.WIDTH, 2),
            WorkedLines.latex("exterior walls", InputColumn.LENGTH, 20, InputColumn.HEIGHT, 9));

    assertThat(masks(lines)).containsExactly(0, 0);
  }

  @ParameterizedTest
  @CsvSource({
    "no, false",
    "NO, false",
    "' n ', false",
    "0, false",
    "FALSE, false",
    "yes, true",
    "'', true"
  })
  void includeKeepsALineFilledButOutOfTheTotals(String word, boolean counted) {
    FilledLine filled = line("walls", InputColumn.AREA, 100, InputColumn.INCLUDE, word);

    assertThat(filled.isCounted()).isEqualTo(counted);
    assertThat(filled.base(FilledColumn.COUNTED)).isEqualTo(counted ? 1 : 0);
    assertThat(filled.base(PAINT)).isPositive();
  }

  /** A formula over a cell in error would be in error, and every total with it. */
  @Test
  void aLineWhoseIncludeIsInErrorCountsWithoutAFormula() {
    BidLine line =
        Bids.changed(
            WorkedLines.latex("walls", InputColumn.AREA, 100),
            InputColumn.INCLUDE,
            InputValue.fault(InputValue.State.FORMULA_ERROR, "#DIV/0!", "yes or no"));

    assertThat(Bids.fill(Catalogue.builtIn(), line).figures().get(FilledColumn.COUNTED))
        .isEqualTo(new Figure.Choice(1));
    assertThat(
            line("walls", InputColumn.AREA, 100, InputColumn.INCLUDE, "no")
                .figures()
                .get(FilledColumn.COUNTED))
        .isInstanceOf(Figure.Live.class);
  }
}
