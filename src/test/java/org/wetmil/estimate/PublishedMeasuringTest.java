package org.wetmil.estimate;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/**
 * The published cases of both standards, each limit at, just under and just over, as an estimator
 * would state them: openings listed on their sheet, the net area of the bid read off.
 */
class PublishedMeasuringTest {

  static Stream<Published.Row> indian() {
    return Published.rows("is-1200-13.csv").stream();
  }

  static Stream<Published.Row> german() {
    return Published.rows("din-18363.csv").stream().filter(row -> !row.text("role").equals("gap"));
  }

  @ParameterizedTest
  @MethodSource("indian")
  void indianStandardHoldsThroughTheBid(Published.Row row) {
    int faces = (int) row.number("count");
    List<BidLine> walls = new ArrayList<>();
    List<StatedRow> openings = new ArrayList<>();
    for (int i = 0; i < faces; i++) {
      walls.add(face("Room " + i, "walls", row.number("grossM2") / faces));
      openings.add(
          Bids.row(
              i,
              "Room",
              "Room " + i,
              "Width",
              row.number("widthM"),
              "Height",
              row.number("heightM"),
              "Reveal",
              1000 * row.number("revealM"),
              "Other face",
              row.text("otherFace")));
    }

    row.check(netM2("IS 1200-13", openings, walls));
  }

  @ParameterizedTest
  @MethodSource("german")
  void germanRulesHoldThroughTheBid(Published.Row row) {
    String surface = row.text("inFloor").equals("yes") ? "floor" : "walls";
    String kind = row.text("role").equals("member") ? "column" : row.text("role");
    StatedRow opening =
        Bids.row(
            0,
            "Room",
            "Hall",
            "Surface",
            surface,
            "Kind",
            kind,
            "Width",
            row.number("widthM"),
            "Height",
            row.number("heightM"),
            "Reveal",
            1000 * row.number("revealM"));

    row.check(
        netM2(
            "DIN 18363", List.of(opening), List.of(face("Hall", surface, row.number("grossM2")))));
  }

  private static BidLine face(String room, String surface, double grossM2) {
    return Bids.line(
        UnitSystem.METRIC, ROOM, room, SURFACE, surface, COATING, "latex", AREA, grossM2);
  }

  private static double netM2(String rule, List<StatedRow> openings, List<BidLine> lines) {
    Catalogue catalogue =
        Catalogue.builtIn()
            .with(
                Map.of(
                    Tables.SETTINGS,
                    List.of(Bids.row(0, "Setting", "Measuring rule", "Value", rule)),
                    Tables.OPENINGS,
                    openings),
                UnitSystem.METRIC,
                new ArrayList<>());
    FilledBid filled =
        Estimator.fill(Bids.bid(catalogue, UnitSystem.METRIC, lines.toArray(BidLine[]::new)));
    return Quantity.AREA.shown(filled.total(FilledColumn.NET_AREA), UnitSystem.METRIC);
  }
}
