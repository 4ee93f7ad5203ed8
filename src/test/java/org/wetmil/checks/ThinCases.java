package org.wetmil.checks;

import static org.wetmil.checks.Case.bid;
import static org.wetmil.checks.Case.row;
import static org.wetmil.checks.Case.tables;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COATS;
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

import java.util.Arrays;
import java.util.List;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.UnitSystem;

/** Cases of the checks on a line's cells, area, tip and film. */
final class ThinCases {
  private ThinCases() {}

  static List<Case> all() {
    return List.of(
        Case.of("missing-input", room(LENGTH, ""), room()),
        Case.of(
            "unreadable-cell",
            fault(PRESSURE, InputValue.State.UNREADABLE, "lots"),
            room(PRESSURE, 2000)),
        Case.of(
            "formula-error",
            fault(HEIGHT, InputValue.State.FORMULA_ERROR, "#REF!"),
            room(HEIGHT, 9)),
        Case.of("not-above-zero", room(WIDTH, 0), room(OPENINGS, 0)),
        Case.of("no-tip-code", room(TIP, "517/519"), room(TIP, " 5-17 ")),
        new Case("no-usable-row", bid(room(COATING, "")), bid(room(COATING, ""), room(WIDTH, 14))),
        Case.of("unknown-surface", room(SURFACE, "wals"), room(SURFACE, "Wall")),
        Case.of("unknown-coating", room(COATING, "latx"), room(COATING, "Emulsion")),
        // walls of 2 x (20 + 15) x 9 = 630 ft2
        Case.of("area-against-dimensions", room(AREA, 661.6), room(AREA, 661.5)),
        Case.of("openings-against-wall", room(OPENINGS, 630), room(OPENINGS, 629.9)),
        Case.of("height-unit", room(HEIGHT, 96), room(HEIGHT, 40)),
        // a single kneewall among walls tells nothing
        new Case(
            "height-in-metres",
            bid(room(HEIGHT, 2.4), room(HEIGHT, 2.9), room(HEIGHT, 9)),
            bid(room(HEIGHT, 2.4), room(HEIGHT, 9))),
        Case.of("height-in-metres", room(HEIGHT, 4.9), room(HEIGHT, 5)),
        // metres would make no likely wall of it
        Case.of("height-in-metres", room(HEIGHT, 1.6), room(HEIGHT, 1.5)),
        Case.of(
            "length-unit",
            Bids.line(UnitSystem.METRIC, cells(LENGTH, 900, WIDTH, 4, HEIGHT, 2.4)),
            Bids.line(UnitSystem.METRIC, cells(LENGTH, 100, WIDTH, 4, HEIGHT, 2.4))),
        Case.of("size-beyond", room(HEIGHT, 330.1), room(HEIGHT, 330)),
        Case.of("size-beyond", room(LENGTH, 3300.1), room(LENGTH, 3300)),
        Case.of("size-beyond", fence(33_000.1), fence(33_000)),
        Case.of("size-beyond", room(COUNT, 1_000_001), room(COUNT, 1_000)),
        // 2 x (3300 + 15) x 9 ft2 a piece
        Case.of("size-beyond", room(LENGTH, 3300, COUNT, 1_676), room(LENGTH, 3300, COUNT, 1_675)),
        Case.of(
            "size-not-used",
            pieces("windows", WIDTH, 3, HEIGHT, 5),
            pieces("windows", AREA, 30, WIDTH, 3, HEIGHT, 5)),
        Case.of("size-not-used", pieces("doors", WIDTH, 3), pieces("doors", WIDTH, 3, HEIGHT, 7)),
        Case.of("size-not-used", pieces("cabinets", LENGTH, 2), pieces("cabinets", HEIGHT, 9)),
        // 5 ft2 a cabinet front, 21 ft2 a door
        Case.of(
            "piece-too-large",
            pieces("cabinets", WIDTH, 24, HEIGHT, 30),
            pieces("cabinets", WIDTH, 24, HEIGHT, 30, AREA, 60)),
        Case.of(
            "piece-too-large",
            pieces("cabinets", WIDTH, 10.1, HEIGHT, 10),
            pieces("cabinets", WIDTH, 10, HEIGHT, 10)),
        Case.of(
            "piece-too-large",
            pieces("doors", WIDTH, 21.1, HEIGHT, 20),
            pieces("doors", WIDTH, 21, HEIGHT, 20)),
        Case.of("girth-of-trim", trim(GIRTH, 24.1), trim(GIRTH, 24)),
        Case.of("coats-many", room(SPECIFIED_FILM, 75), room(SPECIFIED_FILM, 7)),
        Case.of("coats-many", room(COATS, 6), room(COATS, 5)),
        Case.of("coats-not-whole", room(COATS, 1.5), room(COATS, 2)),
        Case.of("orifice-too-fine", room(TIP, "513"), room(TIP, "515")),
        // joinery takes finer ones: latex from 11
        Case.of("orifice-too-fine", trim(TIP, "209"), trim(TIP, "211")),
        Case.of("orifice-too-coarse", room(TIP, "521"), room(TIP, "519")),
        new Case("finer-filter", bid(onHand("511"), room()), bid(onHand("515"), room())),
        Case.of("fan-too-wide", room(TIP, "617"), room(TIP, "517")),
        // work 11 in wide is broad, and takes a fan of 10 in
        Case.of("fan-too-wide", trim(GIRTH, 11, TIP, "613"), trim(GIRTH, 12, TIP, "413")),
        Case.of("fan-too-wide", trim(TIP, "312"), trim(TIP, "212")),
        new Case(
            "tip-over-sprayer",
            bid(rig("Greatest orifice", 18), room(TIP, "519", SPRAYER, "rig")),
            bid(rig("Greatest orifice", 19), room(TIP, "519", SPRAYER, "rig"))),
        Case.of("film-too-thick", room(TIP, "219"), room(TIP, "419")),
        Case.of("film-too-thin", room(TIP, "509"), room(TIP, "513")),
        // 519 wants 40.5 in/s for 4.5 mil, 517 no more than 32.4 in/s
        Case.of("gun-speed", room(TIP, "519"), room(TIP, "517")),
        new Case("film-out-of-reach", bid(onHand("219"), room()), bid(onHand("419"), room())),
        // narrow work ends at 10 in; a tenth of it on either side
        Case.of("narrow-step", trim(GIRTH, 9), trim(GIRTH, 8.9)),
        Case.of("narrow-step", trim(GIRTH, 11), trim(GIRTH, 11.1)),
        Case.of("pressure-outside", room(PRESSURE, 3001), room(PRESSURE, 3000)));
  }

  /** A room of 20 x 15 x 9 ft in latex, some cells changed. */
  static BidLine room(Object... changed) {
    return Bids.line(cells(changed));
  }

  static Object[] cells(Object... changed) {
    return with(
        new Object[] {
          ROOM, "Office 1", SURFACE, "walls", COATING, "latex", LENGTH, 20, WIDTH, 15, HEIGHT, 9
        },
        changed);
  }

  static BidLine trim(Object... changed) {
    return Bids.line(
        with(
            new Object[] {ROOM, "Office 1", SURFACE, "trim", COATING, "latex", LENGTH, 70},
            changed));
  }

  private static BidLine pieces(String surface, Object... changed) {
    return Bids.line(
        with(
            new Object[] {ROOM, "Office 1", SURFACE, surface, COATING, "latex", COUNT, 2},
            changed));
  }

  private static BidLine fence(double lengthFt) {
    return Bids.line(
        ROOM, "Yard", SURFACE, "board fence", COATING, "stain", LENGTH, lengthFt, HEIGHT, 6);
  }

  private static Object[] with(Object[] base, Object[] changed) {
    Object[] all = Arrays.copyOf(base, base.length + changed.length);
    System.arraycopy(changed, 0, all, base.length, changed.length);
    return all;
  }

  private static BidLine fault(InputColumn column, InputValue.State state, String raw) {
    return Bids.changed(room(), column, InputValue.fault(state, raw, "a number"));
  }

  static Catalogue rig(Object... figures) {
    return tables(Tables.SPRAYERS, row(with(new Object[] {"Sprayer", "rig"}, figures)));
  }

  private static Catalogue onHand(String tip) {
    return tables(Tables.TIPS_ON_HAND, row("Tip", tip, "Count", 2));
  }
}
