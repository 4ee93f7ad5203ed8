package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.quantity.Unit;

/** Coats and the wet film of each, with the starting values of the tables. */
class CoatPlanTest {

  private static FilledLine walls(String coating, Object... more) {
    List<Object> cells = new ArrayList<>();
    cells.addAll(
        List.of(InputColumn.SURFACE, "walls", InputColumn.COATING, coating, InputColumn.AREA, 500));
    cells.addAll(List.of(more));
    return Bids.fill(Bids.line(cells.toArray()));
  }

  /**
   * Total dry film in mil without coats. Latex: working maximum the lesser of 7 and 1.25 x 4.5 =
   * 5.625 mil wet, 2.025 dry. Filler: the lesser of 22 and 20, 9.6 dry. Primer: 5.625 x 0.32 = 1.8.
   */
  @ParameterizedTest
  @CsvSource({
    "latex, 2.025, 1, 5.625",
    "latex, 2.026, 2, 3.5",
    "latex, 4.05, 2, 5.625",
    "latex, 4.0500001, 3, 3.75000009",
    "latex, 0.5, 1, 3.5",
    "block filler, 9.6, 1, 20",
    "block filler, 9.7, 2, 12",
    "primer, 5.4, 3, 5.625"
  })
  void aSpecifiedFilmMakesTheCoats(String coating, double dryMil, int coats, double targetMil) {
    CoatPlan plan = walls(coating, InputColumn.SPECIFIED_FILM, dryMil).coats();

    assertThat(plan.coats()).isEqualTo(coats);
    assertThat(plan.basis()).isEqualTo(CoatPlan.Basis.SPECIFIED_FILM);
    assertThat(plan.targetMil()).isCloseTo(targetMil, within(1e-7));
  }

  /** 10 % thinner: 4.05 mil want 2 coats of 5.625 wet no more, but 3 of 4.125. */
  @Test
  void thinnerCostsFilm() {
    CoatPlan plan =
        walls("latex", InputColumn.SPECIFIED_FILM, 4.05, InputColumn.THINNER, 0.1).coats();

    assertThat(plan.coats()).isEqualTo(3);
    assertThat(plan.targetMil()).isCloseTo(4.05 * 1.1 / (0.36 * 3), within(1e-12));
  }

  @Test
  void statedCoatsWinAndTheFilmIsSharedAmongThem() {
    FilledLine filled = walls("latex", InputColumn.COATS, 2, InputColumn.SPECIFIED_FILM, 3);

    assertThat(filled.coats().basis()).isEqualTo(CoatPlan.Basis.STATED);
    assertThat(filled.coats().targetMil()).isCloseTo(3 / (0.36 * 2), within(1e-12));
    assertThat(filled.base(FilledColumn.DRY_FILM)).isCloseTo(3, within(1e-12));
  }

  /** Four coats of 1 mil in all want 0.7 mil wet each: raised to 3.5, which comes to 5.04 dry. */
  @Test
  void aCoatUnderTheMinimumIsRaisedToIt() {
    FilledLine filled = walls("latex", InputColumn.COATS, 4, InputColumn.SPECIFIED_FILM, 1);

    assertThat(filled.coats().wantedMil()).isCloseTo(1 / (0.36 * 4), within(1e-12));
    assertThat(filled.coats().targetMil()).isEqualTo(3.5);
    assertThat(filled.base(FilledColumn.WET_FILM)).isCloseTo(3.5, within(1e-9));
    assertThat(filled.base(FilledColumn.DRY_FILM)).isCloseTo(5.04, within(1e-9));
  }

  @Test
  void withoutCoatsOrFilmTheCoatingsUsualHolds() {
    assertThat(walls("lacquer").coats().coats()).isEqualTo(3);
    assertThat(walls("primer").coats().coats()).isEqualTo(1);
    assertThat(walls("latex").coats().targetMil()).isEqualTo(4.5);
    assertThat(walls("latex").coats().wantedMil()).isNaN();
  }

  @Test
  void aPartOfACoatIsPaintedAsAWholeOne() {
    assertThat(walls("latex", InputColumn.COATS, 2.5).coats().coats()).isEqualTo(3);
    assertThat(walls("latex", InputColumn.COATS, 3.0000000001).coats().coats()).isEqualTo(3);
  }

  /** 4-6 mil aims at 5. */
  @Test
  void aRangeAimsAtItsMiddle() {
    BidLine line = walls("two-part", InputColumn.SPECIFIED_FILM, 5).line();
    Map<InputColumn, InputValue> values = new EnumMap<>(line.values());
    values.put(
        InputColumn.SPECIFIED_FILM,
        new InputValue(InputValue.State.READ, "4-6", 5, 4, 6, Double.NaN, Unit.MIL, ""));
    FilledLine filled = Bids.fill(new BidLine("Bid", 5, line.system(), false, values));

    assertThat(filled.base(FilledColumn.DRY_FILM)).isCloseTo(5, within(1e-9));
  }
}
