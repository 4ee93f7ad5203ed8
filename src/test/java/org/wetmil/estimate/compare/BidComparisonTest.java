package org.wetmil.estimate.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.ROOM;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.Bids;
import org.wetmil.quantity.UnitSystem;

class BidComparisonTest {
  private static final BidLine HALL = wall("Hall", 800);
  private static final BidLine KITCHEN = wall("Kitchen", 500);
  private static final BidLine ATTIC =
      Bids.line(ROOM, "Attic", SURFACE, "cabinets", COATING, "lacquer", COUNT, 6);

  @Test
  void aBidAgainstItselfHasChangedNothing() {
    BidComparison same = BidComparison.of(bid(HALL, KITCHEN), bid(HALL, KITCHEN));
    assertThat(same.isSame()).isTrue();
    assertThat(same.first()).isEqualTo(same.second());
    assertThat(Split.of(same)).noneMatch(part -> part.price() != null || part.isThere());
  }

  @Test
  void lineThatIsPutInOnTopIsTheOnlyOneThatIsNew() {
    BidComparison compared = BidComparison.of(bid(HALL, KITCHEN), bid(ATTIC, HALL, KITCHEN));
    assertThat(compared.lines()).hasSize(1);
    assertThat(compared.onlyB().get(0).line().text(ROOM)).isEqualTo("Attic");
    assertThat(compared.matching().counts()).containsOnly(Map.entry(LinePair.How.ALIKE, 2));
    assertThat(compared.moved()).isZero();
  }

  @Test
  void lineThatIsTakenOutIsNamedWithWhatItCameTo() {
    BidComparison compared = BidComparison.of(bid(ATTIC, HALL), bid(HALL));
    LineChange gone = compared.onlyA().get(0);
    assertThat(compared.lines()).hasSize(1);
    assertThat(gone.effect().paintGal()).isNegative();
    assertThat(compared.second().paintGal() - compared.first().paintGal())
        .isCloseTo(gone.effect().paintGal(), within(1e-9));
  }

  @Test
  void rowsInAnotherOrderMakeNoDifference() {
    BidComparison compared = BidComparison.of(bid(HALL, KITCHEN, ATTIC), bid(ATTIC, HALL, KITCHEN));
    assertThat(compared.isSame()).isTrue();
    assertThat(compared.moved()).isEqualTo(1);
  }

  @Test
  void sheetsKeepTheOrderOfTheBidWhateverTheirNames() {
    Bid bid = on(sheet("Upstairs", at("Upstairs", 5, ATTIC)), sheet("Hall", at("Hall", 5, HALL)));
    assertThat(BidComparison.of(bid, bid).moved()).isZero();
  }

  @Test
  void linesSideBySideInOneRowEachHaveTheirOwnFigures() {
    BidLine left = at("Bid", 5, HALL);
    Bid before = on(sheet("Bid", left, at("Bid", 5, KITCHEN)));
    Bid after = on(sheet("Bid", left, at("Bid", 5, wall("Kitchen", 700))));
    BidComparison compared = BidComparison.of(before, after);
    assertThat(compared.lines()).hasSize(1);
    assertThat(compared.changed().get(0).effect().areaFt2()).isCloseTo(200, within(1e-9));
    assertThat(compared.changed().get(0).before().areaFt2()).isCloseTo(500, within(1e-9));
    assertThat(BidComparison.of(on(sheet("Bid", left)), before).onlyB().get(0).after().areaFt2())
        .isCloseTo(500, within(1e-9));
    Bid swapped = on(sheet("Bid", at("Bid", 5, wall("Hall", 900)), at("Bid", 5, KITCHEN)));
    assertThat(BidComparison.of(before, swapped).changed().get(0).effect().areaFt2())
        .isCloseTo(100, within(1e-9));
  }

  @Test
  void twoLinesThatSayTheSameInOneRowAreTwo() {
    BidLine one = at("Bid", 5, HALL);
    BidLine other = at("Bid", 5, HALL);
    Bid twice = on(sheet("Bid", one, other));
    BidComparison gone = BidComparison.of(twice, on(sheet("Bid", one)));
    BidComparison more = BidComparison.of(on(sheet("Bid", one)), twice);
    assertThat(BidComparison.of(twice, twice).matching().pairs()).hasSize(2);
    assertThat(gone.onlyA()).hasSize(1);
    assertThat(more.onlyB()).hasSize(1);
    assertThat(Split.of(more).stream().mapToDouble(Split::paintGal).sum())
        .isCloseTo(more.second().paintGal() - more.first().paintGal(), within(1e-9))
        .isPositive();
  }

  private static BidLine at(String sheet, int row, BidLine line) {
    return new BidLine(sheet, row, line.system(), line.pressureAtGun(), line.values());
  }

  private static BidSheet sheet(String name, BidLine... lines) {
    return new BidSheet(name, UnitSystem.US, true, Map.of(), List.of(lines));
  }

  private static Bid on(BidSheet... sheets) {
    return new Bid(
        "test", UnitSystem.US, Catalogue.builtIn(), List.of(sheets), List.of(), List.of());
  }

  @Test
  void anotherCoatingIsOneInputOfOneLine() {
    BidLine before = Bids.line(ROOM, "Hall", SURFACE, "walls", COATING, "latex", AREA, 800);
    BidLine after = Bids.line(ROOM, "Hall", SURFACE, "walls", COATING, "primer", AREA, 800);
    BidComparison compared = BidComparison.of(bid(before, KITCHEN), bid(after, KITCHEN));
    LineChange change = compared.changed().get(0);
    assertThat(compared.lines()).hasSize(1);
    assertThat(change.how()).isEqualTo(LinePair.How.SURFACE);
    assertThat(change.inputs())
        .containsExactly(new InputChange(COATING, "Coating", "latex", "primer"));
    assertThat(change.effect().paintGal()).isNotZero();
  }

  @Test
  void linesOfOneRoomAreToldApartByLikenessAndTiesAreCounted() {
    BidComparison alike =
        BidComparison.of(
            bid(wall("Hall", 100), wall("Hall", 200), ATTIC),
            bid(wall("Hall", 100), wall("Hall", 250), ATTIC));
    assertThat(alike.matching().counts())
        .containsOnly(Map.entry(LinePair.How.ALIKE, 2), Map.entry(LinePair.How.NAMES, 1));
    BidComparison tied =
        BidComparison.of(
            bid(wall("Hall", 100), wall("Hall", 200)), bid(wall("Hall", 110), wall("Hall", 220)));
    assertThat(tied.matching().counts()).containsOnly(Map.entry(LinePair.How.ORDER, 2));
  }

  @Test
  void lineOfARoomThatWasRenamedIsFoundByAllElse() {
    BidComparison compared =
        BidComparison.of(bid(wall("Hall", 123), ATTIC), bid(wall("Lobby", 123), ATTIC));
    assertThat(compared.matching().counts()).containsEntry(LinePair.How.ELSEWHERE, 1);
    assertThat(compared.changed().get(0).inputs())
        .extracting(InputChange::heading)
        .containsExactly("Room");
    assertThat(compared.changed().get(0).effect().isNothing()).isTrue();
  }

  @Test
  void settingAloneIsPutDownToTheSettings() {
    BidComparison compared =
        BidComparison.of(bid(HALL, KITCHEN), bid(set("Waste", 0.2), HALL, KITCHEN));
    assertThat(compared.lines()).isEmpty();
    assertThat(compared.tables()).hasSize(1);
    assertThat(compared.tables().get(0).from()).isEqualTo("5 %");
    assertThat(compared.tables().get(0).to()).isEqualTo("20 %");
    Split tables = Split.of(compared).get(0);
    assertThat(tables.paintGal())
        .isCloseTo(compared.first().paintGal() * (0.95 / 0.8 - 1), within(1e-9));
  }

  @Test
  void valueOfATableAloneIsPutDownToTheTables() {
    Catalogue tables =
        Catalogue.builtIn()
            .with(
                Map.of(Tables.SURFACES, List.of(Bids.row(0, "Surface", "walls", "Stick", 0.5))),
                UnitSystem.US,
                new ArrayList<>());
    BidComparison compared = BidComparison.of(bid(HALL), bid(tables, HALL));
    assertThat(compared.lines()).isEmpty();
    assertThat(compared.tables()).extracting(TableChange::figure).containsExactly("Stick");
    assertThat(compared.second().paintGal())
        .isCloseTo(compared.first().paintGal() * 0.7 / 0.5, within(1e-9));
  }

  /** Over random versions: lines put in, taken out, moved, resized, and settings changed. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void thePartsAddUpToTheWholeDifference(long seed) {
    Random random = new Random(seed);
    List<BidLine> before = new ArrayList<>();
    List<BidLine> after = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      BidLine line = wall("Room " + i / 3, 100 + random.nextInt(900));
      int fate = random.nextInt(5);
      if (fate != 0) {
        before.add(line);
      }
      if (fate != 1) {
        after.add(fate == 2 ? wall("Room " + i / 3, 100 + random.nextInt(900)) : line);
      }
    }
    Collections.shuffle(after, random);
    BidComparison compared =
        BidComparison.of(
            bid(before.toArray(BidLine[]::new)),
            bid(set("Waste", 0.05 * random.nextInt(3)), after.toArray(BidLine[]::new)));
    List<Split> parts = Split.of(compared);
    assertThat(parts.stream().mapToDouble(Split::paintGal).sum())
        .isCloseTo(compared.second().paintGal() - compared.first().paintGal(), within(1e-8));
    assertThat(parts.stream().mapToDouble(Split::hours).sum())
        .isCloseTo(compared.second().hours() - compared.first().hours(), within(1e-8));
    LineMatching matching = compared.matching();
    assertThat(matching.pairs().size() + matching.onlyA().size()).isEqualTo(before.size());
    assertThat(matching.pairs().size() + matching.onlyB().size()).isEqualTo(after.size());
  }

  @Test
  void inOneUnitEveryDifferenceCounts() {
    BidComparison compared =
        BidComparison.of(
            bid(Bids.line(ROOM, "Hall", SURFACE, "trim", COATING, "latex", LENGTH, 80)),
            bid(Bids.line(ROOM, "Hall", SURFACE, "trim", COATING, "latex", LENGTH, 80.5)));
    assertThat(compared.changed()).hasSize(1);
  }

  private static Bid bid(BidLine... lines) {
    return bid(Catalogue.builtIn(), lines);
  }

  private static Bid bid(Catalogue catalogue, BidLine... lines) {
    return Bids.bid(catalogue, UnitSystem.US, lines);
  }

  private static Catalogue set(String setting, double value) {
    return Catalogue.builtIn()
        .with(
            Map.of(Tables.SETTINGS, List.of(Bids.row(0, "Setting", setting, "Value", value))),
            UnitSystem.US,
            new ArrayList<>());
  }

  private static BidLine wall(String room, double ft2) {
    return Bids.line(ROOM, room, SURFACE, "walls", COATING, "latex", AREA, ft2);
  }
}
