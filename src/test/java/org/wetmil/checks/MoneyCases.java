package org.wetmil.checks;

import static org.wetmil.checks.Case.bid;
import static org.wetmil.checks.Case.row;
import static org.wetmil.checks.Case.tables;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.OPENINGS;
import static org.wetmil.estimate.InputColumn.SHAPE;

import java.util.ArrayList;
import java.util.List;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.job.FilledJob;

/** Cases of the checks on openings, shapes, containers and the price. */
final class MoneyCases {
  private MoneyCases() {}

  static List<Case> all() {
    List<Case> cases = new ArrayList<>();
    openings(cases);
    money(cases);
    return cases;
  }

  private static void openings(List<Case> cases) {
    cases.add(
        Case.of("openings-of-several", room(COUNT, 2, OPENINGS, 40), room(COUNT, 1, OPENINGS, 40)));
    cases.add(
        new Case(
            "openings-of-several",
            bid(listed("Net", "Kind", "door"), room(COUNT, 2)),
            bid(listed("Net", "Kind", "door"), room())));
    cases.add(
        new Case(
            "openings-as-sum",
            bid(ruled("IS 1200-13"), room(OPENINGS, 40)),
            bid(ruled("Net"), room(OPENINGS, 40))));
    cases.add(
        new Case(
            "openings-as-sum",
            bid(ruled("DIN 18363"), room(OPENINGS, 40)),
            bid(ruled("Solid"), room(OPENINGS, 40))));
    cases.add(
        new Case(
            "openings-twice",
            bid(listed("Net", "Kind", "door"), room(OPENINGS, 40)),
            bid(listed("Net", "Kind", "door"), room(OPENINGS, 0))));
    // an opening of 0.21 m2 is measured over, so that only the sum comes off
    cases.add(
        new Case(
            "openings-twice",
            bid(listed("IS 1200-13", "Kind", "door"), room(OPENINGS, 40)),
            bid(listed("IS 1200-13", "Width", 1.5, "Height", 1.5), room(OPENINGS, 40))));
    cases.add(
        new Case(
            "opening-without-line",
            bid(listed("Net", "Kind", "door", "Room", "Office 2"), room()),
            bid(listed("Net", "Kind", "door", "Room", "OFFICE 1"), room())));
    cases.add(
        new Case(
            "opening-without-size",
            bid(listed("Net", "Width", 3), room()),
            bid(listed("Net", "Width", 3, "Kind", "door"), room())));
    cases.add(
        new Case(
            "opening-kind",
            bid(listed("Net", "Kind", "dor"), room()),
            bid(listed("Net", "Kind", "Doors"), room())));
    cases.add(
        new Case(
            "other-reveal",
            bid(listed("IS 1200-13", "Kind", "door", "Other face", "different"), room()),
            bid(listed("IS 1200-13", "Kind", "door", "Other face", "same"), room())));
    cases.add(Case.of("unknown-shape", room(SHAPE, "corugated"), room(SHAPE, "corrugated")));
  }

  private static void money(List<Case> cases) {
    cases.add(new Case("container-sizes", bought("1 gal; 5 L", ""), bought("1 L; 5 L", "")));
    cases.add(
        new Case(
            "container-sizes",
            bid(
                tables(Tables.SETTINGS, row("Setting", "Container sizes", "Value", "5; 5")),
                room()),
            bid(tables(Tables.SETTINGS, row("Setting", "Container sizes", "Value", "5")), room())));
    cases.add(new Case("container-prices", bought("1; 5", "42"), bought("1; 5", "42; 190")));
    cases.add(new Case("price-missing", bought("5", "190"), priced("Price asked", 4000)));
    cases.add(
        new Case(
            "price-missing",
            priced("Profit as", "margin", "Overhead", 60, "Profit", 40),
            priced("Profit as", "margin", "Overhead", 60, "Profit", 39)));
    double direct = direct();
    cases.add(
        new Case(
            "price-below-cost",
            priced("Price asked", direct - 0.01),
            priced("Price asked", direct)));
  }

  /** What the hours and the paint of the room cost. */
  private static double direct() {
    return FilledJob.of(priced("Price asked", 1e6))
        .price()
        .price()
        .orElseThrow()
        .direct()
        .doubleValue();
  }

  private static FilledBid bought(String sizes, String prices) {
    return bid(
        tables(
            Tables.COATINGS,
            row("Coating", "latex", "Class", "latex", "Container sizes", sizes, "Price", prices)),
        room());
  }

  /** A room whose paint and labour have prices. */
  private static FilledBid priced(Object... settings) {
    List<Object> pairs =
        new ArrayList<>(
            List.of(
                Tables.COATINGS,
                row(
                    "Coating",
                    "latex",
                    "Class",
                    "latex",
                    "Container sizes",
                    "1; 5",
                    "Price",
                    "42; 190"),
                Tables.SETTINGS,
                row("Setting", "Labour rate", "Value", 34)));
    for (int i = 0; i < settings.length; i += 2) {
      pairs.add(Tables.SETTINGS);
      pairs.add(row("Setting", settings[i], "Value", settings[i + 1]));
    }
    return bid(tables(pairs.toArray()), room());
  }

  private static Catalogue ruled(String rule) {
    return tables(Tables.SETTINGS, row("Setting", "Measuring rule", "Value", rule));
  }

  private static Catalogue listed(String rule, Object... opening) {
    List<Object> cells = new ArrayList<>(List.of(opening));
    if (!cells.contains("Room")) {
      cells.addAll(List.of("Room", "Office 1"));
    }
    return tables(
        Tables.SETTINGS,
        row("Setting", "Measuring rule", "Value", rule),
        Tables.OPENINGS,
        row(cells.toArray()));
  }
}
