package org.wetmil.checks;

import static org.wetmil.checks.Case.bid;
import static org.wetmil.checks.Case.row;
import static org.wetmil.checks.Case.tables;
import static org.wetmil.checks.ThinCases.rig;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.TIP;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.FilledBid;

/** Cases of the checks on coats, sprayers, hoses and tips on hand. */
final class SetupCases {
  private SetupCases() {}

  static List<Case> all() {
    List<Case> cases = new ArrayList<>();
    coats(cases);
    switching(cases);
    pressures(cases);
    pumps(cases);
    tipsOnHand(cases);
    return cases;
  }

  private static void switching(List<Case> cases) {
    // latex on walls takes 517
    cases.add(Case.of("planned-against-recommended", room(TIP, "417"), room(TIP, "517")));
  }

  private static void coats(List<Case> cases) {
    // latex of 36 % solids: a working maximum of 5.625 mil wet is 2.025 mil dry a coat
    cases.add(
        Case.of(
            "coats-too-few",
            room(COATS, 2, SPECIFIED_FILM, 4.06),
            room(COATS, 2, SPECIFIED_FILM, 4.05)));
    // two coats at the least 3.5 mil wet are 2.52 mil dry
    cases.add(
        Case.of(
            "coat-raised",
            room(COATS, 2, SPECIFIED_FILM, 2.5),
            room(COATS, 2, SPECIFIED_FILM, 2.52)));
    // 2.52 mil is 120 % of 2.1
    cases.add(
        Case.of(
            "dry-film-outside",
            room(COATS, 2, SPECIFIED_FILM, 2.09),
            room(COATS, 2, SPECIFIED_FILM, 2.11)));
    cases.add(new Case("dry-film-outside", bid(ranged(2.0, 2.5)), bid(ranged(2.0, 2.53))));
    // one coat holds at most 7.0 mil wet, 2.52 mil dry
    cases.add(
        new Case(
            "dry-film-under",
            bid(onHand(row("Tip", "513")), room(COATS, 2, SPECIFIED_FILM, 4.0)),
            bid(onHand(row("Tip", "515")), room(COATS, 2, SPECIFIED_FILM, 4.0))));
  }

  /** A specified range that two coats at their least of 2.52 mil are over or inside. */
  private static BidLine ranged(double low, double high) {
    return Bids.range(room(COATS, 2), SPECIFIED_FILM, low, high);
  }

  private static void pressures(List<Case> cases) {
    cases.add(
        new Case(
            "pressure-over-rating",
            sprayed(rig("Greatest pressure", 1999)),
            sprayed(rig("Greatest pressure", 2000))));
    cases.add(Case.of("pressure-under-coating", room(PRESSURE, 1799), room(PRESSURE, 1800)));
    cases.add(
        new Case(
            "hose-loss",
            sprayed(rig("Hose bore", 0.25, "Hose length", 60)),
            sprayed(rig("Hose bore", 0.25, "Hose length", 50))));
    // 517 at 1200 psi in a thin coating: a Reynolds number of 3000 at 1/8 in, 1500 at 1/4 in
    cases.add(new Case("hose-lower-bound", thin(0.125), thin(0.25)));
    cases.add(
        new Case(
            "hose-not-stated",
            sprayed(rig("Hose bore", 0.25)),
            sprayed(rig("Hose bore", 0.25, "Hose length", 50))));
  }

  private static void pumps(List<Case> cases) {
    // 517 passes 0.2706 gpm of latex at 2000 psi, 0.3383 gpm with the reserve
    cases.add(
        new Case(
            "flow-beyond-pump",
            bid(rig("Greatest flow", 0.338), room(TIP, "517", SPRAYER, "rig")),
            bid(rig("Greatest flow", 0.339), room(TIP, "517", SPRAYER, "rig"))));
    cases.add(
        new Case(
            "guns-past-pump",
            bid(rig("Greatest flow", 0.676, "Guns", 2), room(TIP, "517", SPRAYER, "rig")),
            bid(rig("Greatest flow", 0.677, "Guns", 2), room(TIP, "517", SPRAYER, "rig"))));
    // 0.6 of 17 thou is 259 µm: 60 mesh opens 250 µm
    cases.add(
        new Case(
            "filter-too-coarse",
            bid(rig("Filter", 50), room(TIP, "517", SPRAYER, "rig")),
            bid(rig("Filter", 60), room(TIP, "517", SPRAYER, "rig"))));
    cases.add(
        new Case(
            "no-tip",
            bid(onHand(row("Tip", "521")), room()),
            bid(onHand(row("Tip", "519")), room())));
    // an ideal 17 thou orifice passes 0.3383 gpm of latex at 2000 psi
    cases.add(new Case("bucket-test-high", tested(0.339), tested(0.338)));
  }

  private static void tipsOnHand(List<Case> cases) {
    cases.add(
        new Case(
            "tip-not-on-hand",
            bid(onHand(row("Tip", "515")), room(TIP, "517")),
            bid(onHand(row("Tip", "517")), room(TIP, "517"))));
    cases.add(
        new Case(
            "tip-not-on-hand",
            bid(onHand(row("Tip", "517", "Count", 0)), room(TIP, "517")),
            bid(onHand(row("Tip", "517", "Count", 1)), room(TIP, "517"))));
    cases.add(new Case("no-guard-on-hand", guarded("B"), guarded("A")));
    // 16 gal of a life of 40 gal: 25 % x 16 / 40 = 10 % over the mark
    cases.add(
        new Case(
            "tip-worn",
            bid(onHand(row("Tip", "517", "Paint sprayed", 16.1)), room(TIP, "517")),
            bid(onHand(row("Tip", "517", "Paint sprayed", 16)), room(TIP, "517"))));
    cases.add(
        Case.of("heavy-duty-tip", room(COATING, "block filler"), room(COATING, "heavy latex")));
  }

  private static FilledBid guarded(String fitTaken) {
    return bid(
        tables(
            Tables.TIPS_ON_HAND, row("Tip", "517", "Fit", "A"),
            Tables.GUARDS_ON_HAND, row("Guard", "own", "Fits taken", fitTaken)),
        room(TIP, "517"));
  }

  private static FilledBid tested(double gpm) {
    return bid(
        tables(
            Tables.BUCKET_TESTS,
            row("Tip", "517", "Coating", "latex", "Pressure", 2000, "Flow", gpm)),
        room(TIP, "517"));
  }

  private static FilledBid thin(double boreIn) {
    return bid(
        tables(
            Tables.COATINGS, row("Coating", "thin stain", "Class", "stain", "Viscosity", 0.002),
            Tables.SPRAYERS, row("Sprayer", "rig", "Hose bore", boreIn, "Hose length", 5)),
        room(COATING, "thin stain", SPRAYER, "rig", TIP, "517"));
  }

  private static FilledBid sprayed(Catalogue catalogue) {
    return bid(catalogue, room(SPRAYER, "rig", TIP, "517", PRESSURE, 2000));
  }

  private static Catalogue onHand(StatedRow tip) {
    return tables(Tables.TIPS_ON_HAND, tip);
  }
}
