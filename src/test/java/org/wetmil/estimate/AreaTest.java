package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.FilledColumn.NET_AREA;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;

/** Areas from dimensions, reckoned on paper; usual sizes are those of the Surfaces table. */
class AreaTest {

  private static FilledLine line(String surface, Object... more) {
    return Bids.fill(WorkedLines.latex(surface, more));
  }

  /**
   * Doors 21 ft2 of two faces, cabinets 5 ft2 of two, windows 8 ft2; a gable is half its box; a
   * frame is 17 ft of 12 in; a pipe goes by what is stated of it. Blank is 0 here.
   */
  @ParameterizedTest
  @CsvSource({
    "walls, 0, 20, 15, 9, 0, 630",
    "walls, 0, 20, 0, 9, 0, 180",
    "walls, 3, 20, 15, 9, 0, 1890",
    "ceiling, 0, 20, 15, 9, 0, 300",
    "siding, 2, 20, 0, 9, 0, 360",
    "board fence, 0, 20, 0, 6, 0, 240",
    "gable, 0, 20, 0, 9, 0, 90",
    "gable, 0, 0, 30, 9, 0, 135",
    "gable, 0, 20, 30, 9, 0, 135",
    "doors, 4, 0, 0, 0, 0, 168",
    "doors, 4, 0, 2.5, 6, 0, 120",
    "doors, 4, 0, 2.5, 0, 0, 168",
    "doors, 4, 0, 0, 6, 0, 168",
    "panelled doors, 4, 0, 2.5, 6, 0, 156",
    "cabinets, 2, 0, 2, 3, 0, 24",
    "windows, 4, 0, 2, 3, 0, 32",
    "door frames, 3, 0, 0, 0, 0, 51",
    "door frames, 3, 20, 0, 0, 0, 60",
    "door frames, 3, 20, 0, 0, 6, 30",
    "trim, 0, 30, 0, 0, 0, 10",
    "trim, 2, 30, 0, 0, 6, 30",
    "pipes, 2, 30, 0, 0, 6, 30"
  })
  void dimensionsMakeTheArea(
      String surface,
      double count,
      double length,
      double width,
      double height,
      double girth,
      double ft2) {
    List<Object> cells = new ArrayList<>();
    Object[] sizes = {
      InputColumn.COUNT, count,
      InputColumn.LENGTH, length,
      InputColumn.WIDTH, width,
      InputColumn.HEIGHT, height,
      InputColumn.GIRTH, girth
    };
    for (int i = 0; i < sizes.length; i += 2) {
      if ((double) sizes[i + 1] > 0) {
        cells.addAll(List.of(sizes[i], sizes[i + 1]));
      }
    }
    FilledLine filled = line(surface, cells.toArray());

    assertThat(filled.base(NET_AREA)).isCloseTo(ft2, within(1e-9));
    assertThat(filled.area().byDimensions()).isCloseTo(ft2, within(1e-9));
    assertThat(filled.area().isKnown()).isTrue();
    assertThat(filled.area().missing()).isEmpty();
  }

  /** What the line states wins; the dimensions are kept beside it. */
  @Test
  void aStatedAreaStandsBesideThatOfTheDimensions() {
    FilledLine both =
        line("walls", InputColumn.AREA, 600, InputColumn.LENGTH, 70, InputColumn.HEIGHT, 9);
    FilledLine alone = line("walls", InputColumn.AREA, 600, InputColumn.LENGTH, 70);

    assertThat(both.base(NET_AREA)).isEqualTo(600);
    assertThat(both.area().byDimensions()).isEqualTo(630);
    assertThat(alone.base(NET_AREA)).isEqualTo(600);
    assertThat(alone.area().byDimensions()).isNaN();
    assertThat(alone.area().missing()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "walls, LENGTH HEIGHT",
    "ceiling, LENGTH WIDTH",
    "siding, LENGTH HEIGHT",
    "gable, LENGTH HEIGHT",
    "trim, LENGTH",
    "door frames, COUNT",
    "doors, COUNT",
    "windows, COUNT",
    "pipes, LENGTH GIRTH"
  })
  void whatAnAreaCannotDoWithoutIsNamed(String surface, String missing) {
    Area area = line(surface).area();

    assertThat(area.missing()).extracting(Enum::name).containsExactlyInAnyOrder(missing.split(" "));
    assertThat(area.isKnown()).isFalse();
    assertThat(area.isTooLarge()).isFalse();
    assertThat(area.byDimensions()).isNaN();
  }

  /** A usual size in its place would be invented. */
  @ParameterizedTest
  @CsvSource({
    "walls, COUNT",
    "walls, WIDTH",
    "door frames, LENGTH",
    "trim, GIRTH",
    "doors, HEIGHT"
  })
  void aSizeThatCannotBeReadIsMissingAlthoughItMayBeBlank(String surface, InputColumn column) {
    BidLine whole =
        WorkedLines.latex(
            surface,
            InputColumn.COUNT,
            2,
            InputColumn.LENGTH,
            20,
            InputColumn.WIDTH,
            3,
            InputColumn.HEIGHT,
            7,
            InputColumn.GIRTH,
            6);
    InputValue fault = InputValue.fault(InputValue.State.UNREADABLE, "about 3", "a number");

    assertThat(Bids.fill(whole).area().isKnown()).isTrue();
    Area area = Bids.fill(Bids.changed(whole, column, fault)).area();
    assertThat(area.missing()).containsExactly(column);
    assertThat(area.isKnown()).isFalse();
  }

  /** 20,000 ft x 100 ft is 2,000,000 ft2; fifty of them are the 1e8 ft2 that a line is held to. */
  @Test
  void anAreaPastThatOfAnyJobIsNoneAndNothingIsMissing() {
    Object[] sizes = {InputColumn.LENGTH, 20_000, InputColumn.HEIGHT, 100, InputColumn.COUNT, 50};
    Area most = line("siding", sizes).area();
    sizes[5] = 51;
    FilledLine past = line("siding", sizes);

    assertThat(most.isKnown()).isTrue();
    assertThat(most.isTooLarge()).isFalse();
    assertThat(most.net().value()).isEqualTo(1e8);
    assertThat(past.area().isKnown()).isFalse();
    assertThat(past.area().isTooLarge()).isTrue();
    assertThat(past.area().missing()).isEmpty();
    assertThat(past.area().gross().value()).isEqualTo(1.02e8);
    assertThat(past.isFilled()).isFalse();
  }

  /** Solid takes nothing off: the formula is that of a wall without openings. */
  @Test
  void whatTheRuleTakesNothingOffForDoesNotStandInTheFormula() {
    Catalogue solid = Bids.settings("Measuring rule", "Solid");
    FilledLine filled =
        Bids.fill(
            solid,
            WorkedLines.latex(
                "walls", InputColumn.LENGTH, 20, InputColumn.HEIGHT, 9, InputColumn.OPENINGS, 40));

    assertThat(filled.area().net().print(Object::toString)).isEqualTo("LENGTH*HEIGHT");
    assertThat(filled.area().deducted().value()).isZero();
  }

  /** In inches; a window is 3 in wide whatever it measures, a ceiling goes by its lesser side. */
  @ParameterizedTest
  @CsvSource({
    "walls, 108",
    "ceiling, 180",
    "soffit, 180",
    "trim, 5",
    "pipes, 2.5",
    "windows, 3",
    "siding, 108"
  })
  void theNarrowestDimensionIsThatOfTheTable(String surface, double inches) {
    FilledLine filled =
        line(
            surface,
            InputColumn.COUNT,
            2,
            InputColumn.LENGTH,
            20,
            InputColumn.WIDTH,
            15,
            InputColumn.HEIGHT,
            9,
            InputColumn.GIRTH,
            5);

    assertThat(filled.area().narrowestIn()).isEqualTo(inches);
    assertThat(filled.stroke().narrow()).isEqualTo(inches <= 10);
  }
}
