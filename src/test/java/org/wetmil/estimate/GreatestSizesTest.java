package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;

/** Sizes past which a line is not taken: slips of the keys or of the unit (house). */
class GreatestSizesTest {

  /** Inclusive: what is just there is taken, and what is past it counts as not stated. */
  @ParameterizedTest
  @CsvSource({
    "HEIGHT, 330",
    "LENGTH, 33000",
    "WIDTH, 33000",
    "COUNT, 1e6",
    "MASK_OPENINGS, 1e6",
    "AREA, 1e8",
    "OPENINGS, 1e8",
    "GIRTH, 4000",
    "SPECIFIED_FILM, 1000",
    "MASK_EDGE, 1e7",
    "ACTUAL_PAINT, 1e7",
    "ACTUAL_HOURS, 1e7"
  })
  void aSizeIsTakenUpToTheGreatest(InputColumn column, double greatest) {
    BidLine most = held(Bids.line(column, greatest));
    BidLine past = held(Bids.line(column, greatest * (1 + 1e-9)));

    assertThat(most.number(column)).isEqualTo(greatest);
    assertThat(past.get(column).state()).isEqualTo(InputValue.State.BEYOND);
    assertThat(past.get(column).number()).isEqualTo(greatest * (1 + 1e-9));
    assertThat(past.get(column).isFault()).isTrue();
    assertThat(past.get(column).isLive()).isFalse();
    assertThat(past.has(column)).isFalse();
  }

  private static BidLine held(BidLine line) {
    return GreatestSizes.held(line, Catalogue.builtIn());
  }

  /** A hall of 3300 ft is taken, a fence of 33,000 ft is; a room is what has a width too. */
  @Test
  void aRoomIsHeldToLessThanWhatRunsOn() {
    BidLine room = Bids.line(InputColumn.LENGTH, 3301, InputColumn.WIDTH, 15);
    BidLine fence = Bids.line(InputColumn.LENGTH, 3301, InputColumn.HEIGHT, 6);

    assertThat(held(room).has(InputColumn.LENGTH)).isFalse();
    assertThat(held(room).number(InputColumn.WIDTH)).isEqualTo(15);
    assertThat(held(fence)).isSameAs(fence);
    assertThat(GreatestSizes.setting(InputColumn.LENGTH, room))
        .isEqualTo(Setting.GREATEST_ROOM_SIDE);
    assertThat(GreatestSizes.setting(InputColumn.LENGTH, fence)).isEqualTo(Setting.GREATEST_LENGTH);
    assertThat(GreatestSizes.setting(InputColumn.COUNT, fence)).isNull();
    BidLine most = Bids.line(InputColumn.LENGTH, 3300, InputColumn.WIDTH, 3300);
    assertThat(held(most)).isSameAs(most);
  }

  /** A width that is past it itself is a width still: the line is a room. */
  @Test
  void bothSidesOfARoomAreHeld() {
    BidLine held = held(Bids.line(InputColumn.LENGTH, 4000, InputColumn.WIDTH, 5000));

    assertThat(held.has(InputColumn.LENGTH)).isFalse();
    assertThat(held.has(InputColumn.WIDTH)).isFalse();
  }

  @Test
  void aRangeIsHeldByItsGreaterEnd() {
    BidLine range = Bids.range(Bids.line(), InputColumn.SPECIFIED_FILM, 900, 1001);

    assertThat(held(range).has(InputColumn.SPECIFIED_FILM)).isFalse();
  }

  /** 400 ft is taken where the setting says so. */
  @Test
  void heightsAndLengthsAreSettings() {
    BidLine tower = Bids.line(InputColumn.HEIGHT, 400);

    assertThat(GreatestSizes.held(tower, Bids.settings("Greatest height taken", 400)))
        .isSameAs(tower);
    assertThat(held(tower).has(InputColumn.HEIGHT)).isFalse();
  }

  @Test
  void aLineWithAHeightPastTheGreatestIsStopped() {
    BidLine line =
        Bids.line(
            InputColumn.SURFACE,
            "walls",
            InputColumn.COATING,
            "latex",
            InputColumn.LENGTH,
            20,
            InputColumn.HEIGHT,
            2700);
    FilledLine filled = Bids.fill(line);

    assertThat(filled.isFilled()).isFalse();
    assertThat(filled.area().missing()).isEqualTo(List.of(InputColumn.HEIGHT));
    assertThat(GreatestSizes.of(InputColumn.COATS, line, Catalogue.builtIn())).isInfinite();
  }
}
