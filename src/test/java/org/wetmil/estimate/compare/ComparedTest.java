package org.wetmil.estimate.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COATS;
import static org.wetmil.estimate.InputColumn.COLOUR;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.EarlierCells;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.quantity.UnitSystem;

/** What is told of two versions of a bid: words, parts and figures. */
class ComparedTest {
  private static final String ROUNDED =
      "Each figure is rounded by itself where it is shown, so that shown parts can miss what they"
          + " add up to by a hundredth or two.";

  @Test
  void notesOfTheSameBidSayThatNothingIsDifferent() {
    BidComparison same = BidComparison.of(bid(wall(800)), bid(wall(800)));

    assertThat(CompareWords.notes(same))
        .containsExactly(
            "Lines of B found in A: 1 alike in every input; 0 of them stand in another order.",
            "Nothing is different: every line, setting and table value is the same.");
    assertThat(CompareWords.currency(same)).isEqualTo("as stated");
    assertThat(same.isPriced()).isFalse();
    assertThat(same.oneCurrency()).isTrue();
  }

  @Test
  void notesSayInWhichOrderTheDifferenceIsSplit() {
    BidComparison lines = BidComparison.of(bid(wall(800)), bid(wall(900)));
    BidComparison both = BidComparison.of(bid(wall(800)), bid(priced("USD"), wall(900)));

    assertThat(CompareWords.notes(lines))
        .containsExactly(
            "Lines of B found in A: 1 by floor, room, surface, coating and colour; 0 of them stand"
                + " in another order.",
            "Before is what the lines of A come to with the settings and tables of B.",
            ROUNDED);
    assertThat(lines.isSame()).isFalse();
    assertThat(CompareWords.notes(both))
        .contains(
            "Only B states all that a price needs, so that prices are not compared.",
            "Settings, tables and lines changed together. The lines of A are computed with the"
                + " settings and tables of B first, then the lines of B; another order would split"
                + " the difference in another way.");
    assertThat(both.isPriced()).isFalse();
    assertThat(CompareWords.notes(BidComparison.of(bid(priced("USD"), wall(9)), bid(wall(9)))))
        .contains("Only A states all that a price needs, so that prices are not compared.");
  }

  @Test
  void moneyIsComparedInOneCurrencyAlone() {
    Bid dollars = bid(priced("USD"), wall(800));
    Bid euros = bid(priced("EUR"), wall(800));
    Bid unnamed = bid(priced(""), wall(800));

    BidComparison two = BidComparison.of(dollars, euros);
    assertThat(two.oneCurrency()).isFalse();
    assertThat(two.isPriced()).isFalse();
    assertThat(CompareWords.notes(two))
        .contains("A is in USD and B in EUR, so that prices and costs are not compared.");
    assertThat(CompareWords.currency(two)).isEqualTo("EUR");
    assertThat(BidComparison.of(dollars, bid(priced("usd"), wall(800))).isPriced()).isTrue();
    assertThat(BidComparison.of(dollars, unnamed).isPriced()).isTrue();
    assertThat(BidComparison.of(dollars, unnamed).currency()).isEqualTo("USD");
    assertThat(BidComparison.of(unnamed, euros).isPriced()).isTrue();
  }

  @Test
  void unitsOfBothAreNamedWhereTheyDiffer() {
    Bid metric =
        Bids.bid(
            Catalogue.builtIn(),
            UnitSystem.METRIC,
            Bids.line(
                UnitSystem.METRIC,
                ROOM,
                "Hall",
                SURFACE,
                "walls",
                COATING,
                "latex",
                AREA,
                74.322432));
    BidComparison compared = BidComparison.of(bid(wall(800)), metric);

    assertThat(compared.lines()).isEmpty();
    assertThat(CompareWords.notes(compared).get(1))
        .startsWith("A is in US units and B in metric; figures are in those of B");
  }

  @Test
  void partsAreCountedAndAddUpWithThePriceToo() {
    Bid before = bid(priced("USD"), wall(800), coloured("red", 100));
    Bid after =
        bid(priced("USD", "Waste", 0.1, "Minimum charge", 0), wall(900), coloured("blue", 50));
    BidComparison compared = BidComparison.of(before, after);
    Map<Split.Kind, Split> parts = new EnumMap<>(Split.Kind.class);
    Split.of(compared).forEach(part -> parts.put(part.kind(), part));

    assertThat(parts.get(Split.Kind.TABLES).count()).isEqualTo(compared.tables().size());
    assertThat(CompareWords.label(parts.get(Split.Kind.TABLES)))
        .isEqualTo(
            "settings and table values, on the lines of A (" + compared.tables().size() + ")");
    assertThat(CompareWords.label(parts.get(Split.Kind.JOB)))
        .isEqualTo("rows of the job (hoses, changes, touch-up, set-up, clean-up)");
    assertThat(
            parts
                .get(Split.Kind.TABLES)
                .price()
                .add(parts.get(Split.Kind.OPENINGS).price())
                .add(parts.get(Split.Kind.PRICE).price()))
        .isEqualByComparingTo(
            compared
                .second()
                .price()
                .orElseThrow()
                .beforeTax()
                .subtract(compared.first().price().orElseThrow().beforeTax()));
    assertThat(parts.get(Split.Kind.PRICE).isThere()).isTrue();
    assertThat(parts.get(Split.Kind.OPENINGS).isThere()).isFalse();
  }

  @Test
  void listedOpeningIsPutDownToTheOpenings() {
    Catalogue door =
        Bids.with(Tables.OPENINGS, List.of(Bids.row(0, "Room", "Hall", "Kind", "door")));
    BidComparison compared = BidComparison.of(bid(wall(800)), bid(door, wall(800)));
    List<Split> parts = Split.of(compared);

    assertThat(compared.openings()).isEqualTo(1);
    assertThat(parts.get(0).count()).isZero();
    assertThat(parts.get(0).isThere()).isFalse();
    assertThat(parts.get(1).count()).isEqualTo(1);
    // a door of 3 x 7 ft
    assertThat(parts.get(1).paintGal())
        .isCloseTo(-compared.first().paintGal() * 21 / 800, within(1e-9));
    assertThat(compared.tables())
        .containsExactly(
            new TableChange(
                Tables.OPENINGS,
                compared.tables().get(0).row(),
                "",
                "no such row",
                "a row",
                "",
                compared.tables().get(0).whereTo()));
    assertThat(compared.tables().get(0).row()).contains("Hall", "door");
    assertThat(compared.tables().get(0).whereTo()).isNotEmpty();
    TableChange gone = BidComparison.of(bid(door, wall(9)), bid(wall(9))).tables().get(0);
    assertThat(gone.from()).isEqualTo("a row");
    assertThat(gone.to()).isEqualTo("no such row");
    assertThat(gone.whereFrom()).isNotEmpty();
    assertThat(gone.whereTo()).isEmpty();
  }

  @Test
  void valueOfASettingIsToldInItsUnit() {
    BidComparison compared =
        BidComparison.of(
            bid(wall(9)), bid(Bids.settings("Distance", 13, "Currency", "USD"), wall(9)));

    assertThat(compared.tables())
        .extracting(TableChange::from, TableChange::to)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple("12 in", "13 in"),
            org.assertj.core.groups.Tuple.tuple("blank", "USD"));
    assertThat(BidComparison.of(bid(wall(9)), bid(Bids.settings("Job", "other"), wall(9))).isSame())
        .isTrue();
  }

  /** Of two changed lines of a room each is found by what it has kept. */
  @Test
  void linesOfARoomAreFoundByLikeness() {
    BidLine first = line("walls", "latex", "red", 2, 100);
    BidLine second = line("walls", "latex", "red", 3, 200);
    BidLine firstNow = line("walls", "primer", "red", 2, 100);
    BidLine secondNow = line("walls", "primer", "red", 3, 200);
    LineMatching found = LineMatching.of(List.of(first, second), List.of(secondNow, firstNow));

    assertThat(found.counts()).containsOnly(Map.entry(LinePair.How.SIMILAR, 2));
    assertThat(found.pairs())
        .containsExactly(
            new LinePair(second, secondNow, LinePair.How.SIMILAR),
            new LinePair(first, firstNow, LinePair.How.SIMILAR));
  }

  /** Of five inputs two are the same: under half. */
  @Test
  void linesThatShareTooLittleAreNotOne() {
    BidLine walls = line("walls", "latex", "red", 2, 100);
    BidLine trim = line("trim", "primer", "blue", 2, 100);

    assertThat(LineMatching.of(List.of(walls), List.of(trim)).pairs())
        .extracting(LinePair::how)
        .containsExactly(LinePair.How.SIMILAR);
    assertThat(
            LineMatching.of(List.of(walls), List.of(line("trim", "primer", "blue", 3, 100)))
                .pairs())
        .isEmpty();
  }

  @Test
  void whatIsBlankOrTypedOverIsSaidSo() {
    BidLine plain = line("walls", "latex", "", 2, 100);
    BidLine typed =
        plain.with(new EarlierCells(Map.of(FilledColumn.NET_AREA, 90.0), Map.of(), Map.of(), true));
    BidComparison compared = BidComparison.of(bid(plain), bid(typed));

    assertThat(compared.changed().get(0).inputs())
        .containsExactly(new InputChange(null, "Net area (typed over)", "ours", "90.00 ft²"));
    assertThat(BidComparison.of(bid(typed), bid(typed)).lines()).isEmpty();
    assertThat(
            BidComparison.of(bid(plain), bid(line("walls", "latex", "red", 2, 120)))
                .changed()
                .get(0)
                .inputs())
        .containsExactlyInAnyOrder(
            new InputChange(AREA, "Area", "100.0 ft²", "120.0 ft²"),
            new InputChange(COLOUR, "Colour", "", "red"));
  }

  @Test
  void paintOfTheHosesIsTheJobs() {
    Catalogue rig =
        Bids.with(
            Tables.SPRAYERS,
            List.of(Bids.row(0, "Sprayer", "rig", "Hose bore", 0.25, "Hose length", 50)));
    BidLine sprayed =
        Bids.line(ROOM, "Hall", SURFACE, "walls", COATING, "latex", AREA, 800, SPRAYER, "rig");
    BidComparison compared = BidComparison.of(bid(rig, sprayed), bid(rig, sprayed));

    // pi/4 x (0.25 in)^2 x 600 in / 231 in3/gal, and 0.2 gal that stay in pump and pail
    assertThat(compared.second().jobGal())
        .isCloseTo(Math.PI / 4 * 0.0625 * 600 / 231 + 0.2, within(1e-9));
    // set-up and clean-up of 0.75 h each on one day, and a tenth of the spraying
    assertThat(compared.second().jobHours()).isGreaterThan(1.5);
  }

  @Test
  void amountsAreTakenPartByPart() {
    Amounts one = new Amounts(5, 4, 3, 2);
    Amounts other = new Amounts(1, 1.5, 2, 3);

    assertThat(one.plus(other)).isEqualTo(new Amounts(6, 5.5, 5, 5));
    assertThat(one.minus(other)).isEqualTo(new Amounts(4, 2.5, 1, -1));
    assertThat(Amounts.NONE.isNothing()).isTrue();
    assertThat(new Amounts(1, 0, 0, 0).isNothing()).isFalse();
    assertThat(new Amounts(0, -1, 0, 0).isNothing()).isFalse();
    assertThat(new Amounts(0, 0, 1, 0).isNothing()).isFalse();
    assertThat(new Amounts(0, 0, 0, 1).isNothing()).isFalse();
    assertThat(new Amounts(0, 0, 0, 1e-6).isNothing()).isTrue();
  }

  @Test
  void conditionAddsHoursAndNoPaint() {
    BidLine worn =
        Bids.line(
            ROOM, "Hall", SURFACE, "walls", COATING, "latex", AREA, 800, CONDITION, "peeling");
    LineChange change = BidComparison.of(bid(wall(800)), bid(worn)).changed().get(0);

    // scrape at 80 ft2/h, dust and wipe at 800 ft2/h
    assertThat(change.effect().hours()).isCloseTo(800 / 80.0 + 800 / 800.0, within(1e-9));
    assertThat(change.effect().paintGal()).isCloseTo(0, within(1e-9));
  }

  private static BidLine line(
      String surface, String coating, String colour, int coats, double ft2) {
    return Bids.line(
        ROOM, "Hall", SURFACE, surface, COATING, coating, COLOUR, colour, COATS, coats, AREA, ft2);
  }

  private static BidLine wall(double ft2) {
    return Bids.line(ROOM, "Hall", SURFACE, "walls", COATING, "latex", AREA, ft2);
  }

  private static BidLine coloured(String colour, double feet) {
    return Bids.line(ROOM, "Hall", SURFACE, "trim", COATING, "latex", COLOUR, colour, LENGTH, feet);
  }

  private static Catalogue priced(String currency, Object... settings) {
    List<StatedRow> rows = new ArrayList<>();
    rows.add(Bids.row(0, "Setting", "Labour rate", "Value", 40));
    if (!currency.isEmpty()) {
      rows.add(Bids.row(1, "Setting", "Currency", "Value", currency));
    }
    for (int i = 0; i < settings.length; i += 2) {
      rows.add(Bids.row(2 + i, "Setting", settings[i], "Value", settings[i + 1]));
    }
    return Catalogue.builtIn()
        .with(
            Map.of(
                Tables.SETTINGS,
                rows,
                Tables.COATINGS,
                List.of(Bids.row(0, "Coating", "latex", "Price", "42; 190"))),
            UnitSystem.US,
            new ArrayList<>());
  }

  private static Bid bid(BidLine... lines) {
    return bid(Catalogue.builtIn(), lines);
  }

  private static Bid bid(Catalogue catalogue, BidLine... lines) {
    return Bids.bid(catalogue, UnitSystem.US, lines);
  }
}
