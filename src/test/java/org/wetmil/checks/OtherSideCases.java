package org.wetmil.checks;

import static org.wetmil.checks.Case.bid;
import static org.wetmil.checks.Case.row;
import static org.wetmil.checks.Case.tables;
import static org.wetmil.checks.ThinCases.rig;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.checks.ThinCases.trim;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.GIRTH;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.TIP;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.List;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.FilledBid;

/** Cases at the other end of a check's limits, or said in its other words. */
final class OtherSideCases {
  private OtherSideCases() {}

  static List<Case> all() {
    return List.of(
        // walls of 630 ft2
        Case.of("area-against-dimensions", room(AREA, 598.4), room(AREA, 598.5)),
        Case.of(
            "height-unit",
            room(SURFACE, "siding", HEIGHT, 96),
            room(SURFACE, "siding", HEIGHT, 40)),
        // above a ceiling it makes the work slower, not larger
        Case.of(
            "height-unit",
            room(SURFACE, "ceiling", HEIGHT, 96),
            room(SURFACE, "ceiling", HEIGHT, 40)),
        Case.of("height-unit", room(SURFACE, "gable", HEIGHT, 60), room(HEIGHT, 59.9)),
        // a door of 36 x 80 in under headings in feet
        Case.of(
            "height-unit",
            room(SURFACE, "doors", COUNT, 3, WIDTH, 36, HEIGHT, 80),
            room(SURFACE, "doors", COUNT, 3, WIDTH, 3, HEIGHT, 6.667)),
        Case.of(
            "height-unit",
            room(SURFACE, "windows", COUNT, 3, HEIGHT, 60),
            room(SURFACE, "windows", COUNT, 3, HEIGHT, 5)),
        Case.of("not-above-zero", room(LENGTH, 0), room(LENGTH, 1)),
        Case.of("not-above-zero", room(OPENINGS, -1), room(OPENINGS, 0)),
        Case.of("missing-input", Bids.line(ROOM, "Hall", SURFACE, "walls", AREA, 9), room()),
        Case.of("missing-input", Bids.line(ROOM, "Hall", COATING, "latex", AREA, 9), room()),
        Case.of(
            "missing-input",
            Bids.line(ROOM, "Hall", SURFACE, "walls", COATING, "latex", LENGTH, ""),
            room()),
        // 0.6 of the class on smooth walls: a share that stays on of 0.42
        new Case("spread-implausible", stick(0.41), stick(0.43)),
        // of trim 4 in wide in latex a fan of 4 in misses nothing: 0.6 of 0.70 is 0.42 again
        new Case("spread-implausible", stickOfTrim(0.41), stickOfTrim(0.43)),
        new Case(
            "narrow-step",
            bid(Bids.settings("Overlap", 0.4), trim(GIRTH, 9)),
            bid(Bids.settings("Overlap", 0), trim(GIRTH, 9))),
        new Case(
            "narrow-step",
            bid(Bids.settings("Overlap", 0.4), trim(GIRTH, 11)),
            bid(Bids.settings("Overlap", 0.4), trim(GIRTH, 11.1))),
        // 511 lays 3.4 mil at 18 in/s, 413 over 3.5
        new Case("film-out-of-reach", bid(onHand("511"), room()), bid(onHand("413"), room())),
        new Case(
            "film-out-of-reach",
            bid(onHand("511"), room(TIP, "511")),
            bid(onHand("413"), room(TIP, "511"))),
        // a fine tip is not blamed where it is the one recommended
        new Case(
            "orifice-too-fine",
            bid(onHand("511"), room(TIP, "509")),
            bid(onHand("511"), room(TIP, "511"))),
        new Case(
            "film-too-thick",
            bid(onHand("419"), room(TIP, "219")),
            bid(onHand("219"), room(TIP, "219"))),
        new Case(
            "guns-past-pump",
            bid(rig("Greatest flow", 0.5, "Guns", 2), room(TIP, "517", SPRAYER, "rig")),
            bid(rig("Greatest flow", 0.3, "Guns", 2), room(TIP, "517", SPRAYER, "rig"))),
        new Case(
            "gun-distance",
            bid(Bids.settings("Distance", 11.9), room()),
            bid(Bids.settings("Distance", 12), room())),
        new Case(
            "gun-distance",
            bid(Bids.settings("Distance", 15.1), room()),
            bid(Bids.settings("Distance", 15), room())),
        Case.of("pressure-outside", room(PRESSURE, 999), room(PRESSURE, 1000)),
        Case.of("pressure-outside", room(COATING, "", PRESSURE, 999), room(COATING, "")),
        new Case(
            "pressure-over-rating",
            bid(rig("Greatest pressure", 1999), room(SPRAYER, "rig")),
            bid(rig("Greatest pressure", 2000), room(SPRAYER, "rig"))),
        new Case(
            "pressure-under-coating",
            bid(rig("Greatest pressure", 1799), room(SPRAYER, "rig")),
            bid(rig("Greatest pressure", 1800), room(SPRAYER, "rig"))),
        new Case(
            "opening-without-line",
            bid(opening("Kind", "door", "Surface", "ceiling"), room()),
            bid(opening("Kind", "door", "Surface", "walls"), room())),
        new Case(
            "opening-without-line",
            bid(opening("Kind", "door"), room(SURFACE, "ceiling")),
            bid(opening("Kind", "door"), room(SURFACE, "siding"))),
        new Case(
            "opening-without-line",
            bid(
                tables(Tables.OPENINGS, row("Room", "Zebra", "Kind", "door")),
                room(SURFACE, "walls")),
            bid(opening("Kind", "door"), room())),
        new Case(
            "opening-kind",
            bid(opening("Kind", "zzzz", "Width", 3, "Height", 7), room()),
            bid(opening("Kind", "window", "Width", 3, "Height", 7), room())),
        // 0.5 m2 is 5.38 ft2
        new Case("openings-as-sum", sum("IS 1200-13", 5.3), sum("Net", 5.3)),
        new Case("openings-as-sum", sum("DIN 18363", 26.9), sum("Solid", 26.9)),
        Case.of(
            "openings-against-wall",
            Bids.line(
                ROOM,
                "Office 1",
                SURFACE,
                "walls",
                COATING,
                "latex",
                LENGTH,
                20,
                HEIGHT,
                9,
                OPENINGS,
                180),
            room(OPENINGS, 629.9)),
        new Case(
            "film-readings-few",
            bid(
                tables(
                    Tables.FILM_READINGS,
                    row("Room", "Office 1", "Surface", "walls", "Reading", 5)),
                room(AREA, 50, SPECIFIED_FILM, 5)),
            bid(room(AREA, 50, SPECIFIED_FILM, 5))),
        Case.of(
            "girth-of-trim",
            trim(GIRTH, 30, WIDTH, 1),
            room(SURFACE, "columns", GIRTH, 30, HEIGHT, 9)));
  }

  private static FilledBid stick(double share) {
    return bid(tables(Tables.SURFACES, row("Surface", "walls", "Stick", share)), room());
  }

  private static FilledBid stickOfTrim(double share) {
    return bid(tables(Tables.SURFACES, row("Surface", "trim", "Stick", share)), trim());
  }

  private static Catalogue onHand(String tip) {
    return tables(Tables.TIPS_ON_HAND, row("Tip", tip, "Count", 2));
  }

  private static Catalogue opening(Object... cells) {
    Object[] all = new Object[cells.length + 2];
    all[0] = "Room";
    all[1] = "Office 1";
    System.arraycopy(cells, 0, all, 2, cells.length);
    return tables(Tables.OPENINGS, row(all));
  }

  private static FilledBid sum(String rule, double ft2) {
    return bid(
        tables(Tables.SETTINGS, row("Setting", "Measuring rule", "Value", rule)),
        room(OPENINGS, ft2));
  }
}
