package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.checks.ThinCases.cells;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.MASK_EDGE;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.UnitSystem;

/** Sizes that only fit another unit, and sizes that nothing has. */
class SizeChecksTest {

  @ParameterizedTest
  @CsvSource({
    // a wall height, as it stands in a column of metres
    "2700, 'Height 2700 m is over the 100.58 m that a line is taken with and looks like millimetres, so the line stays out of the totals; type 2700 mm.'",
    "270, 'Height 270 m is over the 100.58 m that a line is taken with and looks like centimetres, so the line stays out of the totals; type 270 cm.'",
    "99999, 'Height 99999 m is over the 100.58 m that a line is taken with, so the line stays out of the totals; if it is true, raise the setting Greatest height taken.'"
  })
  void heightThatNoWallHasStopsTheLineAndNamesTheLikelyUnit(double height, String message) {
    BidLine wall = Bids.line(UnitSystem.METRIC, cells(LENGTH, 5, WIDTH, 4, HEIGHT, height));
    FilledBid filled =
        Case.bid(wall, Bids.line(UnitSystem.METRIC, cells(LENGTH, 5, WIDTH, 4, HEIGHT, 2.7)));

    assertThat(filled.lines()).extracting(FilledLine::isFilled).containsExactly(false, true);
    // 2 x (5 + 4) x 2.7 m2 of the line that is sound
    assertThat(filled.total(FilledColumn.NET_AREA) * 0.09290304).isCloseTo(48.6, within(1e-9));
    assertThat(found(filled, "size-beyond"))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.severity()).isEqualTo(Severity.STOP);
              assertThat(finding.message()).isEqualTo(message);
            });
    assertThat(found(filled, "missing-input")).isEmpty();
  }

  @Test
  void sizeThatALineDoesNotNeedIsOnlyAWarning() {
    assertThat(found(Case.bid(room(MASK_EDGE, 1e8)), "size-beyond"))
        .singleElement()
        .extracting(Finding::severity)
        .isEqualTo(Severity.WARNING);
  }

  @Test
  void whatIsStatedAndCannotBeReadIsNeverTakenAsBlank() {
    BidLine wide = Bids.changed(room(), WIDTH, unreadable("wide"));
    BidLine many = Bids.changed(room(), COUNT, unreadable("a few"));
    BidLine girth = Bids.changed(ThinCases.trim(), GIRTH, unreadable("thick"));
    BidLine stated = Bids.changed(room(AREA, 630), WIDTH, unreadable("wide"));
    FilledBid bid = Case.bid(wide, many, girth, stated);

    assertThat(bid.lines())
        .extracting(FilledLine::isFilled)
        .containsExactly(false, false, false, true);
    assertThat(found(bid, "unreadable-cell"))
        .extracting(Finding::severity)
        .containsExactly(Severity.STOP, Severity.STOP, Severity.STOP, Severity.WARNING);
    assertThat(found(bid, "missing-input")).isEmpty();
  }

  private static InputValue unreadable(String raw) {
    return InputValue.fault(InputValue.State.UNREADABLE, raw, "a number");
  }

  @Test
  void aTowerIsTakenWhereItsSettingIsRaised() {
    Catalogue raised = Bids.settings("Greatest height taken", 500);

    assertThat(found(Case.bid(raised, room(HEIGHT, 480)), "size-beyond")).isEmpty();
  }

  @Test
  void lengthInCentimetresIsNotSaidToBeInMillimetres() {
    FilledBid bid =
        Case.bid(Bids.line(UnitSystem.METRIC, cells(LENGTH, 450, WIDTH, 4, HEIGHT, 2.4)));

    assertThat(found(bid, "length-unit"))
        .extracting(Finding::message)
        .containsExactly("450 m is over 100 m and looks like centimetres; if so, type 450 cm.");
  }

  @Test
  void sizesThatTogetherMakeNoJobAreSaidOnTheLine() {
    FilledBid bid = Case.bid(room(COUNT, 1e6), room());

    assertThat(bid.lines()).extracting(FilledLine::isFilled).containsExactly(false, true);
    assertThat(found(bid, "size-beyond"))
        .extracting(Finding::message)
        .containsExactly(
            "The sizes of this line make 630000000 ft², over the 100000000 ft² that a line is taken"
                + " with; correct them.");
  }

  private static List<Finding> found(FilledBid bid, String id) {
    return Checks.run(bid).stream().filter(finding -> finding.check().equals(id)).toList();
  }
}
