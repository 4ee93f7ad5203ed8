package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.InputValue.State;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** What a cell of a bid counts for. */
class InputTest {

  /** A size of nothing is a slip; an amount of nothing is an amount. */
  @ParameterizedTest
  @CsvSource({
    "LENGTH, false",
    "WIDTH, false",
    "HEIGHT, false",
    "COUNT, false",
    "AREA, false",
    "GIRTH, false",
    "SPECIFIED_FILM, false",
    "OPENINGS, true",
    "THINNER, true",
    "MASK_EDGE, true",
    "MASK_OPENINGS, true",
    "ACTUAL_PAINT, true",
    "ACTUAL_HOURS, true"
  })
  void anAmountMayBeNothingAndASizeMayNot(InputColumn column, boolean nothing) {
    assertThat(column.takes(0)).isEqualTo(nothing);
    assertThat(column.takes(0.001)).isTrue();
    assertThat(column.takes(-0.001)).isFalse();
    assertThat(Bids.line(column, 0).has(column)).isEqualTo(nothing);
    assertThat(Bids.line(column, -1).has(column)).isFalse();
    assertThat(Bids.line(column, 3).number(column)).isEqualTo(3);
  }

  private static InputValue number(State state, double number, double cell) {
    return new InputValue(state, "raw", number, number, number, cell, Unit.FOOT, "");
  }

  @Test
  void aNumberThatNoSheetOfABidHoldsIsNotRead() {
    InputValue most = number(State.READ, 1e12, 1e12);
    InputValue past = number(State.READ, 1.0001e12, 1.0001e12);
    InputValue under = number(State.READ, -1.0001e12, 5);

    assertThat(most.hasNumber()).isTrue();
    assertThat(most.number()).isEqualTo(1e12);
    assertThat(most.isLive()).isTrue();
    for (InputValue value : List.of(past, under)) {
      assertThat(value.state()).isEqualTo(State.UNREADABLE);
      assertThat(value.isFault()).isTrue();
      assertThat(value.expected()).isEqualTo("a number below 1,000,000,000,000");
      assertThat(List.of(value.number(), value.low(), value.high(), value.cellNumber()))
          .containsOnly(Double.NaN);
    }
  }

  /** The cell may be in a smaller unit than the number is kept in, but not in any. */
  @Test
  void aFormulaPointsAtNoCellOutOfAllBounds() {
    assertThat(number(State.READ, 5, 1e24).isLive()).isTrue();
    assertThat(number(State.READ, 5, 1.0001e24).isLive()).isFalse();
    assertThat(number(State.READ, 5, 1.0001e24).number()).isEqualTo(5);
    assertThat(InputValue.text("517", 517).isLive()).isTrue();
    assertThat(InputValue.text("517").isLive()).isFalse();
  }

  @ParameterizedTest
  @EnumSource(
      value = State.class,
      names = {"BLANK", "UNREADABLE", "FORMULA_ERROR", "DATE"})
  void whatWasNotReadAsANumberHasNone(State state) {
    InputValue value = number(state, 5, 5);

    assertThat(value.hasNumber()).isFalse();
    assertThat(List.of(value.number(), value.low(), value.high(), value.cellNumber()))
        .containsOnly(Double.NaN);
    assertThat(value.isLive()).isFalse();
    assertThat(value.isBlank()).isEqualTo(state == State.BLANK);
    assertThat(value.isFault()).isEqualTo(state != State.BLANK);
  }

  @Test
  void whatIsPastTheGreatestKeepsItsNumberForWhoeverSaysIt() {
    InputValue beyond = number(State.READ, 2700, 2700).beyond();

    assertThat(beyond.number()).isEqualTo(2700);
    assertThat(beyond.low()).isEqualTo(2700);
    assertThat(beyond.high()).isEqualTo(2700);
    assertThat(beyond.raw()).isEqualTo("raw");
    assertThat(beyond.hasNumber()).isFalse();
    assertThat(beyond.isLive()).isFalse();
    assertThat(beyond.isFault()).isTrue();
  }

  @Test
  void aDashSaysThatNothingIsKnownYet() {
    BidLine line = Bids.changed(Bids.line(), InputColumn.ROOM, InputValue.open("-"));

    assertThat(line.get(InputColumn.ROOM).isBlank()).isTrue();
    assertThat(line.text(InputColumn.ROOM)).isEmpty();
    assertThat(Bids.line(InputColumn.ROOM, "  Hall ").text(InputColumn.ROOM)).isEqualTo("Hall");
    assertThat(line.get(InputColumn.COUNT)).isSameAs(InputValue.NOTHING);
  }

  @Test
  void namesOfTablesAndWordsAreOfferedWhereTheyStand() {
    assertThat(InputColumn.SURFACE.table()).contains(Tables.SURFACES);
    assertThat(InputColumn.COATING.table()).contains(Tables.COATINGS);
    assertThat(InputColumn.SHAPE.table()).contains(Tables.SHAPES);
    assertThat(InputColumn.ROOM.table()).isEmpty();
    assertThat(InputColumn.INCLUDE.words()).containsExactly("yes", "no");
    assertThat(InputColumn.BACK_ROLL.words()).containsExactly("never", "first coat", "all");
    assertThat(InputColumn.SURFACE.words()).isEmpty();
  }

  @Test
  void aSheetHasTheColumnsThatItsHeadingsName() {
    BidSheet sheet =
        new BidSheet("Bid", UnitSystem.US, true, Map.of(InputColumn.LENGTH, Unit.FOOT), List.of());

    assertThat(sheet.has(InputColumn.LENGTH)).isTrue();
    assertThat(sheet.has(InputColumn.WIDTH)).isFalse();
  }
}
