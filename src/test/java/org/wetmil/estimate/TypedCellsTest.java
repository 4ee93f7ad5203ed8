package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.wetmil.estimate.FilledColumn.LABOUR;
import static org.wetmil.estimate.FilledColumn.NET_AREA;
import static org.wetmil.estimate.FilledColumn.PAINT;
import static org.wetmil.estimate.FilledColumn.PREPARE;
import static org.wetmil.estimate.FilledColumn.SPRAY;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.formula.Place;
import org.wetmil.formula.Written;
import org.wetmil.quantity.UnitSystem;

/** What an estimator put over the formulas of an earlier fill; the line is worked by hand. */
class TypedCellsTest {
  private static EarlierCells typed(FilledColumn column, double number) {
    return new EarlierCells(Map.of(column, number), Map.of(), Map.of(), true);
  }

  @Test
  void aNumberTypedOverAFormulaStaysAndKeepsTheFormulaBesideIt() {
    FilledLine filled = Bids.fill(WorkedLines.DRYWALL.with(typed(PAINT, 6)));

    assertThat(filled.base(PAINT)).isEqualTo(6);
    Figure.Typed paint = (Figure.Typed) filled.figures().get(PAINT);
    assertThat(paint.formula().value()).isCloseTo(4.977638902, withinPercentage(1e-7));
    assertThat(paint.own()).isEmpty();
    assertThat(filled.isFilled()).isTrue();
    assertThat(filled.isCounted()).isTrue();
    assertThat(filled.base(LABOUR)).isCloseTo(3.813128286, withinPercentage(1e-7));
  }

  /** 500 ft2: 500 x 2 / 237.0601852 gal, 500 / 2000 h of dusting, 500 / 590 of the spray hours. */
  @Test
  void whatFollowsACellFollowsTheNumberTypedThere() {
    FilledLine filled = Bids.fill(WorkedLines.DRYWALL.with(typed(NET_AREA, 500)));

    assertThat(filled.base(PAINT)).isCloseTo(1000 / 237.0601852, withinPercentage(1e-7));
    assertThat(filled.base(PREPARE)).isCloseTo(0.25, within(1e-12));
    assertThat(filled.base(SPRAY)).isCloseTo(1.457017175 * 500 / 590, withinPercentage(1e-7));
  }

  /** A last bit is no change, and a millionth part is. */
  @Test
  void theNumberThatTheFormulaComesToIsNotTyped() {
    assertThat(Bids.fill(WorkedLines.DRYWALL.with(typed(NET_AREA, 590))).figures().get(NET_AREA))
        .isInstanceOf(Figure.Live.class);
    assertThat(
            Bids.fill(WorkedLines.DRYWALL.with(typed(NET_AREA, 590 * (1 + 1e-12))))
                .figures()
                .get(NET_AREA))
        .isInstanceOf(Figure.Live.class);
    assertThat(
            Bids.fill(WorkedLines.DRYWALL.with(typed(NET_AREA, 590 * (1 + 1e-6))))
                .figures()
                .get(NET_AREA))
        .isInstanceOf(Figure.Typed.class);
    assertThat(
            Bids.fill(WorkedLines.DRYWALL.with(typed(NET_AREA, 590 * (1 - 1e-6))))
                .figures()
                .get(NET_AREA))
        .isInstanceOf(Figure.Typed.class);
  }

  /** Ten gallons are 37.85411784 L. */
  @Test
  void aTypedNumberIsInTheUnitOfTheSheet() {
    BidLine line =
        Bids.line(
            UnitSystem.METRIC,
            InputColumn.SURFACE,
            "walls",
            InputColumn.COATING,
            "latex",
            InputColumn.AREA,
            60);
    FilledLine filled = Bids.fill(line.with(typed(PAINT, 10)));

    assertThat(filled.figures().get(PAINT).number()).isCloseTo(37.85411784, within(1e-9));
    assertThat(filled.base(PAINT)).isCloseTo(10, within(1e-12));
  }

  @Test
  void aFillAnewTakesFormulasAgain() {
    EarlierCells refreshed = new EarlierCells(Map.of(PAINT, 6.0), Map.of(), Map.of(), false);

    assertThat(Bids.fill(WorkedLines.DRYWALL.with(refreshed)).figures())
        .isEqualTo(Bids.fill(WorkedLines.DRYWALL).figures());
  }

  /** Choices are made anew: a tip, a pressure or coats are stated in columns of their own. */
  @ParameterizedTest
  @EnumSource(
      value = FilledColumn.class,
      names = {"ORIFICE", "FAN", "TIP_CODE", "PRESSURE", "COATS", "COUNTED", "COATING_USED"})
  void aNumberInAChoiceIsNotTypedOverAFormula(FilledColumn column) {
    EarlierCells earlier = typed(column, 7);

    assertThat(EarlierCells.isFormula(column)).isFalse();
    assertThat(earlier.typed(column)).isNaN();
    assertThat(Bids.fill(WorkedLines.DRYWALL.with(earlier)).figures())
        .isEqualTo(Bids.fill(WorkedLines.DRYWALL).figures());
    assertThat(EarlierCells.isFormula(PAINT)).isTrue();
    assertThat(EarlierCells.isFormula(LABOUR)).isTrue();
  }

  @Test
  void whereNothingIsComputedATypedNumberStaysAndTheLineIsNotFilled() {
    BidLine noCoating = Bids.line(InputColumn.SURFACE, "walls", InputColumn.AREA, 100);
    BidLine noArea = Bids.line(InputColumn.SURFACE, "walls", InputColumn.COATING, "latex");
    BidLine nothing = Bids.line(InputColumn.COATING, "latex");

    for (BidLine line : List.of(noCoating, noArea, nothing)) {
      FilledLine filled = Bids.fill(line.with(typed(PAINT, 6)));
      assertThat(filled.base(PAINT)).isEqualTo(6);
      assertThat(((Figure.Typed) filled.figures().get(PAINT)).formula().value()).isNaN();
      assertThat(filled.isFilled()).isFalse();
      assertThat(filled.isCounted()).isFalse();
      assertThat(filled.base(FilledColumn.COUNTED)).isZero();
      assertThat(filled.base(SPRAY)).isNaN();
    }
    assertThat(Bids.fill(noCoating).base(NET_AREA)).isEqualTo(100);
    assertThat(Bids.fill(nothing).base(NET_AREA)).isNaN();
  }

  private static Optional<Written> own(Catalogue tables, Written written) {
    EarlierCells earlier =
        new EarlierCells(Map.of(PAINT, 6.0), Map.of(), Map.of(PAINT, written), true);
    return ((Figure.Typed)
            Bids.fill(tables, WorkedLines.DRYWALL.with(earlier)).figures().get(PAINT))
        .own();
  }

  private static Written over(Place place) {
    return new Written("A5*2", List.of(new Written.At(place, ""), new Written.Text("*2")));
  }

  /** A formula of the estimator's is written again where all that it rests on is still there. */
  @Test
  void aFormulaOfTheEstimatorsIsKeptWhileWhatItRestsOnStands() {
    Catalogue plain = Catalogue.builtIn();
    Catalogue measuring = Bids.settings("Show measuring", "yes");
    Written ofArea = over(NET_AREA);
    Written ofGross = over(FilledColumn.GROSS);
    Written ofDensity = over(new EntryPlace("Coatings", "latex", "Density"));

    assertThat(own(plain, ofArea)).contains(ofArea);
    assertThat(own(plain, ofGross)).isEmpty();
    assertThat(own(measuring, ofGross)).contains(ofGross);
    assertThat(own(plain, ofDensity)).contains(ofDensity);
    assertThat(own(plain, over(new EntryPlace("Coatings", "emulsion of mine", "Density"))))
        .isEmpty();
    assertThat(own(plain, over(new EntryPlace("Coatings", "latex", "Price")))).isEmpty();
    assertThat(own(plain, over(new EntryPlace("Coatings", "latex", "Scent")))).isEmpty();
    assertThat(own(plain, over(new EntryPlace("Weather", "latex", "Density")))).isEmpty();
    assertThat(own(plain, new Written("A5*2", List.of()))).isEmpty();
  }

  @Test
  void aLineThatWasNeverFilledHasNoEarlierCells() {
    assertThat(EarlierCells.NONE.isEmpty()).isTrue();
    assertThat(WorkedLines.DRYWALL.earlier().isEmpty()).isTrue();
    assertThat(typed(PAINT, 6).isEmpty()).isFalse();
    assertThat(new EarlierCells(Map.of(), Map.of(PAINT, "six"), Map.of(), true).isEmpty())
        .isFalse();
    assertThat(new EarlierCells(Map.of(), Map.of(), Map.of(PAINT, over(PAINT)), true).isEmpty())
        .isFalse();
  }
}
