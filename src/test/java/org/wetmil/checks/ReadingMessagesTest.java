package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.checks.ThinCases.trim;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.TEXTURE;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.InputValue.State;

/** What is said of a cell that is missing or cannot be read: what is done meanwhile, what to do. */
class ReadingMessagesTest {

  @Test
  void coatsThatCannotBeReadSayWhichAreTaken() {
    assertThat(message(unreadable(room(), COATS, "two")))
        .isEqualTo(
            "\"two\" cannot be read, so 2 coats, the usual of latex, are taken; expected a number.");
    assertThat(message(unreadable(room(SPECIFIED_FILM, 1.5), COATS, "one")))
        .startsWith("\"one\" cannot be read, so 1 coat, which the specified film wants, is taken;");
  }

  @Test
  void filmThatCannotBeReadSaysThatNoneIsSpecified() {
    assertThat(message(unreadable(room(COATS, 3), SPECIFIED_FILM, "thick")))
        .startsWith(
            "\"thick\" cannot be read, so no film is specified and 3 coats, as stated, are taken;");
  }

  @Test
  void openingsAndPressureThatCannotBeReadSayWhatCounts() {
    assertThat(message(unreadable(room(), OPENINGS, "a door")))
        .startsWith("\"a door\" cannot be read, so no opening is taken off;");
    assertThat(message(unreadable(room(), PRESSURE, "lots")))
        .startsWith("\"lots\" cannot be read, so 2000 psi is set at the pump;");
  }

  @Test
  void formulaErrorSaysWhatIsTakenToo() {
    assertThat(message(faulty(room(), COATS, State.FORMULA_ERROR, "#REF!")))
        .isEqualTo(
            "The formula gives \"#REF!\", so 2 coats, the usual of latex, are taken; mend it.");
    assertThat(message(faulty(room(), HEIGHT, State.FORMULA_ERROR, "#REF!")))
        .isEqualTo("The formula gives \"#REF!\", so nothing is taken from the cell; mend it.");
  }

  @Test
  void dateUnderALengthOrAFilmSaysWhatASpreadsheetMadeItOf() {
    assertThat(message(faulty(room(), WIDTH, State.DATE, "6-Dec")))
        .isEqualTo(
            "\"6-Dec\" is a date; a spreadsheet makes one of feet and inches typed 12-6, so format"
                + " the cell as text and type 12' 6\".");
    assertThat(message(faulty(room(COATS, 2), SPECIFIED_FILM, State.DATE, "6-Apr")))
        .contains("; a spreadsheet makes one of a range such as 4-6, so format the cell as text");
  }

  @Test
  void missingMeasureWhoseColumnTheSheetLacksAsksForTheColumn() {
    assertThat(message(Bids.line(SURFACE, "pipes", COATING, "latex", LENGTH, 20)))
        .isEqualTo(
            "The girth is missing, so the line has no area; add a column Girth, or one for Area in its"
                + " place.");
    BidLine noGirth =
        Bids.line(SURFACE, "pipes", COATING, "latex", LENGTH, 20, InputColumn.COUNT, 1, AREA, "");
    assertThat(message(noGirth))
        .isEqualTo(
            "The girth is missing, so the line has no area; add a column Girth, or state an area.");
  }

  @Test
  void missingMeasureWhoseColumnIsThereIsToBeStated() {
    assertThat(message(room(HEIGHT, "")))
        .isEqualTo("The height is missing, so the line has no area; state it or an area.");
    assertThat(message(Bids.line(SURFACE, "pipes", COATING, "latex", LENGTH, "", AREA, "")))
        .isEqualTo(
            "The length and girth are missing, so the line has no area; state the length and add a"
                + " column Girth, or state an area.");
  }

  @Test
  void missingTextureAndCoatingAskForTheirColumns() {
    assertThat(message(Bids.line(SURFACE, "siding", COATING, "latex", LENGTH, 9, HEIGHT, 9)))
        .endsWith("so it counts as smooth; add a column Texture.");
    assertThat(
            message(
                Bids.line(SURFACE, "siding", COATING, "latex", LENGTH, 9, HEIGHT, 9, TEXTURE, "")))
        .endsWith("so it counts as smooth; state the texture.");
    assertThat(message(Bids.line(SURFACE, "walls", LENGTH, 9, HEIGHT, 9)))
        .endsWith("; add a column Coating and name it.");
  }

  @Test
  void unreadableGirthOfTrimIsNotReplacedByTheUsualOne() {
    assertThat(message(unreadable(trim(), GIRTH, "wide")))
        .isEqualTo("\"wide\" cannot be read; expected a number.");
  }

  private static BidLine unreadable(BidLine line, InputColumn column, String raw) {
    return faulty(line, column, State.UNREADABLE, raw);
  }

  private static BidLine faulty(BidLine line, InputColumn column, State state, String raw) {
    return Bids.changed(line, column, InputValue.fault(state, raw, "a number"));
  }

  /** The first finding of the first line that is about a cell's reading or its want. */
  private static String message(BidLine line) {
    FilledBid bid = Case.bid(line, room(WIDTH, 14));
    return Checks.run(bid).stream()
        .filter(finding -> finding.spot().row() == 5)
        .filter(
            finding ->
                List.of("unreadable-cell", "formula-error", "missing-input", "texture-not-stated")
                    .contains(finding.check()))
        .map(Finding::message)
        .findFirst()
        .orElseThrow();
  }
}
