package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wetmil.checks.Case.row;
import static org.wetmil.checks.Case.tables;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.ROOM;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;

/** What is said of openings, in words. */
class OpeningChecksTest {

  @Test
  void countTimesTheWallTakesItsOpeningsOffOnceAndSaysSo() {
    FilledBid bid = Case.bid(room(COUNT, 4, OPENINGS, 40));

    // 4 x 630 - 40
    assertThat(bid.total(FilledColumn.NET_AREA)).isEqualTo(2480);
    assertThat(messages(bid, "openings-of-several"))
        .containsExactly(
            "Count is 4, and openings of 40 ft² come off once, for all of them together; if each has"
                + " them, type 160 ft².");
  }

  @ParameterizedTest
  @CsvSource({
    // a limit of 0.5 m2 is 5.382 ft2; of 2.5 m2 26.91 ft2
    "IS 1200-13, 5.3, true",
    "IS 1200-13, 5.4, false",
    "DIN 18363, 26.9, true",
    "DIN 18363, 27, false"
  })
  void sumThatTheRuleWouldMeasureOverIsToldApart(String rule, double ft2, boolean small) {
    FilledBid bid = Case.bid(ruled(rule), room(OPENINGS, ft2));

    assertThat(bid.total(FilledColumn.NET_AREA)).as("off as typed").isEqualTo(630 - ft2);
    assertThat(messages(bid, "openings-as-sum"))
        .singleElement()
        .asString()
        .contains(
            small ? "none of these can be larger; empty the cell" : "a sum does not tell it; list");
  }

  @Test
  void sumsAreNotedOnceForABidAndSmallOnesEach() {
    BidLine[] lines = {
      room(OPENINGS, 40),
      room(ROOM, "B", OPENINGS, 41),
      room(ROOM, "C", OPENINGS, 42),
      room(ROOM, "D", OPENINGS, 4),
      room(ROOM, "E", OPENINGS, 5)
    };

    assertThat(messages(Case.bid(ruled("IS 1200-13"), lines), "openings-as-sum"))
        .hasSize(3)
        .anySatisfy(said -> assertThat(said).contains("(2 more such lines)"));
  }

  @Test
  void misspeltRoomOfAnOpeningIsOffered() {
    Catalogue catalogue = tables(Tables.OPENINGS, row("Room", "Ofice 1", "Kind", "door"));

    assertThat(messages(Case.bid(catalogue, room()), "opening-without-line"))
        .containsExactly(
            "No line is in \"Ofice 1\", so this opening takes nothing off; write Office 1.");
  }

  @Test
  void listedOpeningsAloneCanTakeTheWholeWall() {
    Catalogue catalogue =
        tables(Tables.OPENINGS, row("Room", "Office 1", "Width", 70, "Height", 9));

    assertThat(messages(Case.bid(catalogue, room()), "openings-against-wall"))
        .containsExactly("Openings of 630 ft² take the whole 630 ft² of the surface; check both.");
  }

  private static Catalogue ruled(String rule) {
    return tables(Tables.SETTINGS, row("Setting", "Measuring rule", "Value", rule));
  }

  private static List<String> messages(FilledBid bid, String id) {
    return Checks.run(bid).stream()
        .filter(finding -> finding.check().equals(id))
        .map(Finding::message)
        .toList();
  }
}
