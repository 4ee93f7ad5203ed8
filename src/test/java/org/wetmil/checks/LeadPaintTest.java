package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wetmil.checks.Case.row;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;

/** The caution about lead: of surfaces that may carry old paint, once for the job. */
class LeadPaintTest {
  private static final Catalogue OLD =
      Case.tables(Tables.SETTINGS, row("Setting", "Year built", "Value", 1950));

  @Test
  void allRoomsPastTheLimitMakeOneFinding() {
    assertThat(
            said(
                OLD,
                room(ROOM, "Office 1", AREA, 600, CONDITION, "peeling"),
                room(ROOM, "Hall", AREA, 300, CONDITION, "painted"),
                room(ROOM, "Store", AREA, 6, CONDITION, "painted"),
                room(ROOM, "Yard", SURFACE, "siding", AREA, 200, CONDITION, "weathered")))
        .containsExactly(
            "Built in 1950, and 900 ft² that may carry old paint or its remains are worked on in"
                + " Office 1 and Hall, each over 6 ft²; have the paint tested for lead and ask who is"
                + " licensed.",
            "Built in 1950, and 200 ft² that may carry old paint or its remains are worked on"
                + " outside, over 20 ft²; have the paint tested for lead and ask who is licensed.");
  }

  /** A primer and two pieces of wall in latex: 4 and 3 + 2 ft2 of one face, not 9. */
  @Test
  void aPrimerLiesUnderTheOtherCoatingsOfTheSurface() {
    BidLine primer = room(COATING, "primer", AREA, 4, CONDITION, "peeling");
    BidLine latex = room(AREA, 3, CONDITION, "peeling");

    assertThat(said(OLD, primer, latex, room(AREA, 2, CONDITION, "peeling"))).isEmpty();
    assertThat(said(OLD, primer, latex, room(AREA, 3.1, CONDITION, "peeling")))
        .singleElement()
        .asString()
        .contains("and 6.1 ft² that may");
  }

  /** A filler and a primer under latex are three layers of one face. */
  @Test
  void fillerAndPrimerLieUnderOneFinish() {
    BidLine filler = room(COATING, "block filler", AREA, 4, CONDITION, "peeling");
    BidLine primer = room(COATING, "primer", AREA, 4, CONDITION, "peeling");

    assertThat(said(OLD, filler, primer, room(AREA, 4, CONDITION, "peeling"))).isEmpty();
  }

  /** What is primed on one elevation and painted on another is two faces. */
  @Test
  void outsideTheFacesOfAllElevationsCount() {
    BidLine north =
        room(ROOM, "North", SURFACE, "siding", COATING, "primer", AREA, 15, CONDITION, "peeling");
    BidLine south = room(ROOM, "South", SURFACE, "siding", AREA, 15, CONDITION, "peeling");

    assertThat(said(OLD, north, south)).singleElement().asString().contains("and 30 ft² that may");
  }

  @Test
  void whatIncludeLeavesOutDisturbsNothing() {
    assertThat(said(OLD, room(AREA, 30, CONDITION, "peeling", INCLUDE, "no"))).isEmpty();
  }

  /** Walls of two finishes are two pieces of wall. */
  @Test
  void finishesOfOneSurfaceLieBesideEachOther() {
    BidLine lacquered = room(COATING, "lacquer", AREA, 3, CONDITION, "peeling");

    assertThat(said(OLD, lacquered, room(AREA, 3.1, CONDITION, "peeling")))
        .singleElement()
        .asString()
        .contains("and 6.1 ft² that may");
  }

  /** Earlier work counts where it was: in the room itself, or outside. */
  @Test
  void earlierWorkElsewhereDoesNotCount() {
    Catalogue earlier =
        Case.tables(
            Tables.SETTINGS,
            row("Setting", "Year built", "Value", 1950),
            Tables.EARLIER_WORK,
            row("Room", "Hall", "Area", 30),
            Tables.EARLIER_WORK,
            row("Room", "Yard", "Where", "outside", "Area", 16));

    assertThat(said(earlier, room(AREA, 6, CONDITION, "peeling"))).isEmpty();
    assertThat(said(earlier, room(SURFACE, "siding", AREA, 4.1, CONDITION, "peeling")))
        .singleElement()
        .asString()
        .contains("and 20.1 ft² (16 ft² of it by earlier work within 30 days)");
    assertThat(said(earlier, room(ROOM, "hall", AREA, 1, CONDITION, "peeling")))
        .singleElement()
        .asString()
        .contains("and 31 ft² (30 ft² of it by earlier work within 30 days)");
  }

  @Test
  void manyRoomsAreCountedAndNotNamed() {
    BidLine[] lines =
        IntStream.range(0, 12)
            .mapToObj(i -> room(ROOM, "Room " + i, AREA, 100, CONDITION, "painted"))
            .toArray(BidLine[]::new);

    assertThat(said(OLD, lines))
        .singleElement()
        .asString()
        .contains("1200 ft²", "in 12 rooms, each");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"block", "concrete", "brick", "plaster", "drywall", "new wood", "new", "primed"})
  void bareAndNewSubstratesCarryNone(String condition) {
    assertThat(said(OLD, room(AREA, 600, CONDITION, condition))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"bare", "bare wood", "bare metal", "good", "peeling"})
  void strippedAndPaintedSurfacesMay(String condition) {
    assertThat(said(OLD, room(AREA, 600, CONDITION, condition))).hasSize(1);
  }

  @Test
  void conditionOfTheEstimatorsOwnSaysItself() {
    Catalogue own =
        Case.tables(
            Tables.SETTINGS,
            row("Setting", "Year built", "Value", 1950),
            Tables.CONDITIONS,
            row(
                "Condition",
                "soda blasted",
                "Preparation",
                "dust only",
                "State",
                "bare",
                "Old paint",
                "yes"),
            Tables.CONDITIONS,
            row("Condition", "raw", "Preparation", "dust only", "State", "bare"),
            Tables.CONDITIONS,
            row("Condition", "tired", "Preparation", "dust only", "State", "painted"));

    assertThat(said(own, room(AREA, 600, CONDITION, "soda blasted"))).hasSize(1);
    assertThat(said(own, room(AREA, 600, CONDITION, "raw"))).isEmpty();
    assertThat(said(own, room(AREA, 600, CONDITION, "tired"))).hasSize(1);
  }

  private static List<String> said(Catalogue catalogue, BidLine... lines) {
    return Checks.run(Case.bid(catalogue, lines)).stream()
        .filter(finding -> finding.check().equals("lead-paint"))
        .map(Finding::message)
        .toList();
  }
}
