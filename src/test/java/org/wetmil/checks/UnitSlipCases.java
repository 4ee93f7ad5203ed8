package org.wetmil.checks;

import static org.wetmil.checks.ThinCases.cells;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.checks.ThinCases.trim;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.List;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.quantity.UnitSystem;

/** Cases of sizes in the wrong unit or the wrong column, each beside an honest one. */
final class UnitSlipCases {
  private UnitSlipCases() {}

  static List<Case> all() {
    return List.of(
        // a railing is 36 or 42 in high, a fence 6 ft, a noise barrier 20 ft
        Case.of("height-unit", fence("open railing", 36), fence("open railing", 3.5)),
        Case.of("height-unit", fence("exterior railing", 42), fence("exterior railing", 3)),
        Case.of("height-unit", fence("board fence", 48), fence("board fence", 20)),
        Case.of(
            "height-unit",
            metric(SURFACE, "open railing", LENGTH, 20, HEIGHT, 90),
            metric(SURFACE, "open railing", LENGTH, 20, HEIGHT, 0.9)),
        // no ceiling is 72 in high, a hangar is 72 ft
        Case.of(
            "height-unit",
            room(SURFACE, "ceiling", HEIGHT, 79),
            room(SURFACE, "ceiling", HEIGHT, 77)),
        // the width still in inches, once the height is put right as told
        Case.of("piece-too-large", doors(36, 6.667), doors(16, 8)),
        Case.of("piece-too-large", cabinets(24, 2.5, 10), cabinets(24, 2.5, 1)),
        Case.of("piece-too-large", cabinets(2, 30, 10), cabinets(12, 2.5, 4)),
        Case.of(
            "piece-too-large",
            metric(SURFACE, "doors", COUNT, 4, WIDTH, 90, HEIGHT, 2.1),
            metric(SURFACE, "doors", COUNT, 4, WIDTH, 5, HEIGHT, 2.5)),
        // a size past any is said once, where it stands
        Case.of(
            "size-not-used",
            metric(SURFACE, "cabinets", COUNT, 10, WIDTH, 0.6),
            metric(SURFACE, "cabinets", COUNT, 10, WIDTH, 600, HEIGHT, 720)),
        Case.of("girth-too-small", trim(GIRTH, 0.33), trim(GIRTH, 0.75)),
        Case.of(
            "girth-too-small",
            metric(SURFACE, "trim", LENGTH, 14, GIRTH, 10),
            metric(SURFACE, "trim", LENGTH, 14, GIRTH, 20)),
        Case.of(
            "girth-too-small",
            metric(SURFACE, "columns", COUNT, 4, LENGTH, 3, GIRTH, 1.2),
            metric(SURFACE, "columns", COUNT, 4, LENGTH, 3, GIRTH, 1200)),
        // a third of 2 x 21 ft2; one face of a door of 20 ft2 may be all that is painted
        Case.of(
            "area-of-pieces", room(SURFACE, "doors", AREA, 13.9), room(SURFACE, "doors", AREA, 14)),
        Case.of("area-of-pieces", room(SURFACE, "windows", AREA, 2), room(AREA, 2)),
        Case.of("soffit-width", soffit(24), soffit(12)),
        Case.of("soffit-width", soffit(16), soffit(1.333)),
        Case.of(
            "soffit-width",
            metric(SURFACE, "soffit", LENGTH, 30, WIDTH, 60),
            metric(SURFACE, "soffit", LENGTH, 30, WIDTH, 12)),
        // micrometres under mils, however the coats came about
        Case.of(
            "coats-too-few", room(COATS, 2, SPECIFIED_FILM, 75), room(COATS, 2, SPECIFIED_FILM, 3)),
        // mils under micrometres
        Case.of(
            "dry-film-outside",
            metric(cells(SPECIFIED_FILM, 3)),
            metric(cells(SPECIFIED_FILM, 75))));
  }

  private static BidLine fence(String surface, double heightFt) {
    return room(SURFACE, surface, HEIGHT, heightFt);
  }

  private static BidLine doors(double wide, double high) {
    return room(SURFACE, "doors", COUNT, 3, WIDTH, wide, HEIGHT, high);
  }

  private static BidLine cabinets(double wide, double high, int count) {
    return room(SURFACE, "cabinets", COUNT, count, WIDTH, wide, HEIGHT, high);
  }

  private static BidLine soffit(double wide) {
    return room(SURFACE, "soffit", LENGTH, 100, WIDTH, wide);
  }

  private static BidLine metric(Object... cells) {
    return Bids.line(UnitSystem.METRIC, cells);
  }
}
