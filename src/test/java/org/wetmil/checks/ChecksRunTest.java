package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.wetmil.checks.Case.bid;
import static org.wetmil.checks.Case.row;
import static org.wetmil.checks.Case.tables;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.MASK_EDGE;
import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.TEXTURE;
import static org.wetmil.estimate.InputColumn.TIP;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.Remark;
import org.wetmil.quantity.UnitSystem;

/** What all checks together say of a bid, and in which order. */
class ChecksRunTest {
  private static final Catalogue WELL_SPECIFIED =
      tables(
          Tables.COATINGS,
          row("Coating", "top coat", "Class", "latex", "Volume solids", 38),
          Tables.SPRAYERS,
          row(
              "Sprayer",
              "rig",
              "Greatest flow",
              0.6,
              "Greatest orifice",
              23,
              "Greatest pressure",
              3300,
              "Hose bore",
              0.375,
              "Hose length",
              50,
              "Filter",
              60));

  @Test
  void aCleanWellSpecifiedLineGetsNothingButTheCautionForItsPressure() {
    BidLine line =
        room(
            COATING, "top coat",
            CONDITION, "primed",
            COATS, 2,
            SPECIFIED_FILM, 3.4,
            TIP, "517",
            PRESSURE, 2000,
            SPRAYER, "rig",
            TEXTURE, "smooth",
            MASK_EDGE, 70);

    assertThat(ids(bid(WELL_SPECIFIED, line))).containsExactly("safety-latch");
  }

  @Test
  void whatIsTrueOfACoatingIsSaidOnceForIt() {
    List<Finding> findings =
        Checks.run(
            bid(
                room(COATING, "oil-based"),
                room(ROOM, "Office 2", COATING, "oil-based"),
                room(COATING, "stain"),
                room(COATING, "block filler"),
                room(ROOM, "Office 2", COATING, "block filler")));

    for (String id : List.of("class-values", "solvent-indoors", "heavy-duty-tip")) {
      List<String> said =
          findings.stream()
              .filter(finding -> finding.check().equals(id))
              .map(Finding::message)
              .toList();
      assertThat(said).as(id).doesNotHaveDuplicates();
      assertThat(findings.stream().filter(finding -> finding.check().equals(id)))
          .as(id)
          .extracting(finding -> finding.spot().row())
          .isSubsetOf(5, 7, 8)
          .isNotEmpty();
    }
  }

  @Test
  void aMissingInputIsSaidOnceAndSetsOffNoOtherFault() {
    assertThat(ofRows(bid(room(LENGTH, "", HEIGHT, "", TIP, "517"), room())))
        .containsExactly("missing-input");
    assertThat(ofRows(bid(room(SURFACE, "", TIP, "517"), room()))).containsExactly("missing-input");
    assertThat(ofRows(bid(room(COATING, "", TIP, "517"), room()))).containsExactly("missing-input");
    // how wide pipes are is not known either, and with it how a stroke lays its film
    assertThat(ofRows(bid(room(SURFACE, "pipes", COUNT, 4, TIP, "217"), room())))
        .containsExactly("missing-input");
  }

  @Test
  void aCellThatCannotBeReadIsNotAlsoMissing() {
    BidLine line = faulty(LENGTH, InputValue.State.UNREADABLE, "long");

    assertThat(Checks.run(bid(line, room(WIDTH, 14))))
        .filteredOn(finding -> finding.spot().row() == 5)
        .extracting(Finding::check, Finding::severity)
        .containsExactly(tuple("unreadable-cell", Severity.STOP));
  }

  static List<BidLine> broken() {
    return List.of(
        room(SURFACE, ""),
        room(COATING, ""),
        room(SURFACE, "wals"),
        room(COATING, "latx"),
        room(LENGTH, ""),
        room(HEIGHT, 0),
        room(LENGTH, -20),
        room(LENGTH, "", AREA, -5),
        faulty(HEIGHT, InputValue.State.UNREADABLE, "tall"),
        faulty(HEIGHT, InputValue.State.DATE, "9/8/2024"),
        faulty(HEIGHT, InputValue.State.FORMULA_ERROR, "#REF!"),
        faulty(COATING, InputValue.State.FORMULA_ERROR, "#N/A"),
        faulty(SURFACE, InputValue.State.FORMULA_ERROR, "#N/A"));
  }

  @ParameterizedTest
  @MethodSource("broken")
  void aLineWithoutFiguresHasExactlyOneStopOfItsOwn(BidLine line) {
    FilledBid bid = bid(line, room(WIDTH, 14));

    assertThat(bid.lines()).extracting(FilledLine::isFilled).containsExactly(false, true);
    assertThat(Checks.run(bid))
        .filteredOn(finding -> finding.severity() == Severity.STOP)
        .extracting(finding -> finding.spot().row())
        .containsExactly(5);
  }

  @Test
  void findingsStandInTheOrderOfJobSheetRowsAndTables() {
    Bid bid = Bids.bid(room(COATING, "latx"), room(TIP, "219"));
    Bid read =
        new Bid(
            bid.job(),
            bid.system(),
            bid.catalogue(),
            bid.sheets(),
            List.of(new TableProblem("Coatings", "Coatings", "C4", "lots", "a number")),
            List.of(
                new Remark("heading-twice", "Bid", "D1", "Width", "Two columns are widths."),
                new Remark("formula-not-computed", "Bid", "D6", "=A1", "No stored value.")));

    assertThat(Checks.run(bid(read)))
        .extracting(
            finding -> finding.spot().sheet() + " " + finding.spot().row() + " " + finding.check())
        .containsExactly(
            " 0 masking-nowhere",
            " 0 hose-not-stated",
            " 0 safety-latch",
            "Bid 0 heading-twice",
            "Bid 5 unknown-coating",
            "Bid 6 formula-not-computed",
            "Bid 6 planned-against-recommended",
            "Bid 6 film-too-thick",
            "Bid 6 class-values",
            "Coatings 0 table-value");
  }

  @Test
  void ofLinesWithoutAHoseThoseAreNumberedThatCountInTheTotals() {
    FilledBid bid = bid(room(), room(), room(INCLUDE, "no"), room(LENGTH, ""), room(COATING, ""));

    assertThat(Checks.run(bid))
        .filteredOn(finding -> finding.check().equals("hose-not-stated"))
        .extracting(Finding::measured)
        .containsExactly("2 lines");
  }

  @Test
  void messagesAreInTheUnitsOfTheLinesOwnSheet() {
    BidLine metric =
        Bids.line(UnitSystem.METRIC, ThinCases.cells(LENGTH, 6, WIDTH, 4, HEIGHT, 2.7, TIP, "219"));

    assertThat(Checks.run(bid(metric)))
        .filteredOn(finding -> finding.check().equals("film-too-thick"))
        .extracting(Finding::message)
        .containsExactly(
            "219 lays 321 µm wet even at 91 cm/s (the target takes 257 cm/s), over the 178 µm that"
                + " latex takes in one coat; use 517.");
  }

  @Test
  void aCheckIsFoundByItsIdAndAnUnknownIdIsAFaultOfTheProgram() {
    assertThat(Checks.get("gun-speed").severity()).isEqualTo(Severity.WARNING);
    assertThatThrownBy(() -> Checks.get("no-such-check")).hasMessageContaining("no-such-check");
  }

  static List<Check> checks() {
    return Checks.ALL;
  }

  @ParameterizedTest
  @MethodSource("checks")
  void everyCheckTellsWhyAndWhatToDo(Check check) {
    assertThat(check.id()).matches("[a-z]+(-[a-z]+){1,3}");
    assertThat(check.title()).isNotBlank().doesNotEndWith(".");
    assertThat(check.source()).isNotBlank();
    assertThat(check.why()).matches("[A-Z].*[^.]\\.");
    assertThat(check.advice()).matches("[A-Z].*[^.]\\.");
  }

  private static BidLine faulty(InputColumn column, InputValue.State state, String raw) {
    return Bids.changed(room(), column, InputValue.fault(state, raw, "a number"));
  }

  private static List<String> ids(FilledBid bid) {
    return Checks.run(bid).stream().map(Finding::check).toList();
  }

  private static List<String> ofRows(FilledBid bid) {
    return Checks.run(bid).stream()
        .filter(finding -> finding.spot().row() == 5)
        .map(Finding::check)
        .toList();
  }
}
