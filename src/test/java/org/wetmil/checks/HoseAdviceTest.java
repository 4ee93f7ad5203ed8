package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.wetmil.checks.Case.bid;
import static org.wetmil.checks.Case.row;
import static org.wetmil.checks.Case.tables;
import static org.wetmil.checks.ThinCases.room;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.PRESSURE;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.TIP;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Setup;
import org.wetmil.estimate.Trial;
import org.wetmil.trade.TipCode;

/** What is advised against the loss of a hose does what it says, when it is done. */
class HoseAdviceTest {
  private static final long SEED = 20_251_125;
  private static final Pattern SET = Pattern.compile("set (\\d+) psi at the pump");
  private static final Pattern TAKE = Pattern.compile("take (\\d{3,4}), which keeps (\\d+) psi");

  @Test
  void eachOfBothWaysIsNamedWithItsFigure() {
    assertThat(lost(hose(0.25, 60, 3000), room(TIP, "521", PRESSURE, 2000, SPRAYER, "rig")))
        .endsWith("; set 2150 psi at the pump or take 515, which keeps 1831 psi.");
  }

  @Test
  void whereNeitherWillDoOnlyAHoseIsAdvised() {
    assertThat(lost(hose(0.125, 300, 2000), room(TIP, "517", SPRAYER, "rig")))
        .endsWith("take a wider or shorter hose, since neither pressure nor a finer tip will do.");
  }

  @Test
  void pressureIsNeverAdvisedOverTheRatingOfTheSprayer() {
    BidLine line = room(TIP, "513", PRESSURE, 2000, SPRAYER, "rig");
    int wanted =
        Integer.parseInt(
            SET.matcher(lost(hose(0.25, 200, 3000), line))
                .results()
                .findFirst()
                .orElseThrow()
                .group(1));

    assertThat(lost(hose(0.25, 200, wanted), line)).contains("set " + wanted + " psi");
    assertThat(lost(hose(0.25, 200, wanted - 1), line)).doesNotContain("at the pump or", "set ");
  }

  @Test
  void gunPressureThatTheRatingCannotGiveIsNotLoweredUnderTheCoatingsLeast() {
    BidLine atGun = atGun(room(TIP, "517", PRESSURE, 1990, SPRAYER, "rig"));

    assertThat(said("pressure-over-rating", hose(0.375, 50, 2000), atGun))
        .endsWith("at the gun and not 1990 psi; ask for less there.");
    assertThat(said("pressure-over-rating", hose(0.25, 60, 2000), atGun))
        .endsWith("take a wider or shorter hose or another sprayer.");
  }

  private static BidLine atGun(BidLine line) {
    return new BidLine(line.sheet(), line.row(), line.system(), true, line.values());
  }

  private static String said(String check, Catalogue catalogue, BidLine line) {
    return Checks.run(bid(catalogue, line)).stream()
        .filter(finding -> finding.check().equals(check))
        .map(Finding::message)
        .findFirst()
        .orElseThrow();
  }

  @Test
  @Tag("long")
  void doneAsAdvisedTheGunHasThePressureThatTheCoatingNeeds() {
    Random random = new Random(SEED);
    int advised = 0;
    for (int i = 0; i < 400; i++) {
      Catalogue catalogue =
          hose(
              0.15 + 0.25 * random.nextDouble(),
              20 + random.nextInt(250),
              2400 + random.nextInt(900));
      String coating = List.of("latex", "oil-based", "two-part", "elastomeric").get(i % 4);
      TipCode tip = new TipCode(2 + random.nextInt(4), 11 + 2 * random.nextInt(8));
      FilledBid filled = bid(catalogue, room(COATING, coating, TIP, tip.code(), SPRAYER, "rig"));
      FilledLine line = filled.lines().findFirst().orElseThrow();
      for (Finding finding : hoseLoss(filled)) {
        Setup lost = lost(line, finding.message());
        advised += holds(catalogue, line, lost, finding.message());
      }
    }
    assertThat(advised).as("advice that was tried").isGreaterThan(100);
  }

  /** Tries what a message advises; how many ways that were. */
  private static int holds(Catalogue catalogue, FilledLine line, Setup lost, String message) {
    Trial trial = new Trial(catalogue, line);
    Coating coating = line.work().coating();
    int ways = 0;
    Matcher set = SET.matcher(message);
    if (set.find()) {
      ways++;
      Setup done = trial.tip(lost.tip(), Double.parseDouble(set.group(1)), false);
      assertThat(done.gun().gunPsi()).as(message).isGreaterThanOrEqualTo(coating.leastPsi() - 1e-6);
      assertThat(done.gun().pumpPsi()).isLessThanOrEqualTo(line.work().sprayer().greatestPsi());
    }
    Matcher take = TAKE.matcher(message);
    if (take.find()) {
      ways++;
      Setup done = trial.tip(((TipCode.Read) TipCode.read(take.group(1))).tip());
      assertThat(done.gun().gunPsi()).as(message).isGreaterThanOrEqualTo(coating.leastPsi() - 1e-6);
      assertThat(done.gun().lossPsi()).isLessThan(lost.gun().lossPsi());
      assertThat(done.inside()).as(message).isTrue();
    }
    return ways;
  }

  private static Setup lost(FilledLine line, String message) {
    return message.contains(" with " + line.planned().tip().code() + ",")
        ? line.planned()
        : line.recommended();
  }

  private static String lost(Catalogue catalogue, BidLine line) {
    return hoseLoss(bid(catalogue, line)).get(0).message();
  }

  private static List<Finding> hoseLoss(FilledBid bid) {
    return Checks.run(bid).stream().filter(finding -> finding.check().equals("hose-loss")).toList();
  }

  private static Catalogue hose(double boreIn, double lengthFt, double greatestPsi) {
    return tables(
        Tables.SPRAYERS,
        row(
            "Sprayer",
            "rig",
            "Hose bore",
            boreIn,
            "Hose length",
            lengthFt,
            "Greatest pressure",
            greatestPsi));
  }
}
