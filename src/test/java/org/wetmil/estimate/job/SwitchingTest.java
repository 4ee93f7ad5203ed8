package org.wetmil.estimate.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.CONDITION;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.SURFACE;
import static org.wetmil.estimate.InputColumn.TEXTURE;
import static org.wetmil.estimate.InputColumn.THINNER;
import static org.wetmil.estimate.InputColumn.TIP;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.UnitSystem;

class SwitchingTest {

  /** The same bid filled twice, once after each tip, says what the short cut says. */
  @Test
  void bothSidesAreWhatFillingAfterEachTipGives() {
    List<BidLine> lines = new ArrayList<>();
    for (String tip : List.of("211", "313", "315", "417", "519", "623")) {
      lines.add(wall("latex", tip));
      lines.add(
          Bids.line(SURFACE, "siding", COATING, "elastomeric", LENGTH, 80, HEIGHT, 20, TIP, tip));
      lines.add(Bids.line(SURFACE, "trim", COATING, "oil-based", LENGTH, 120, TIP, tip));
      lines.add(
          Bids.line(
              SURFACE, "walls", COATING, "stain", LENGTH, 30, HEIGHT, 12, TEXTURE, "stucco",
              THINNER, 0.1, CONDITION, "peeling", TIP, tip));
    }
    List<FilledLine> planned = fill("Planned", lines);
    List<FilledLine> recommended = fill("Recommended", lines);

    int compared = 0;
    for (int i = 0; i < lines.size(); i++) {
      // from either fill, since the figures of each follow another tip
      for (FilledLine line : List.of(planned.get(i), recommended.get(i))) {
        var both = TipSwitch.of(line);
        if (both.isPresent()) {
          agrees(both.get().planned(), planned.get(i));
          agrees(both.get().recommended(), recommended.get(i));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(30);
  }

  private static void agrees(TipSwitch.Side side, FilledLine line) {
    assertThat(side.setup()).isEqualTo(line.followed());
    double paint = line.base(FilledColumn.PAINT);
    double spray = line.base(FilledColumn.SPRAY);
    assertThat(side.paintGal()).isCloseTo(paint, within(1e-9 * paint));
    assertThat(side.sprayHours()).isCloseTo(spray, within(1e-9 * spray));
  }

  @Test
  void linesLeftOutOrPlannedAsRecommendedSaveNothing() {
    FilledBid filled =
        Estimator.fill(
            Bids.bid(wall("latex", "517"), Bids.changed(wall("latex", "313"), INCLUDE, no())));

    assertThat(Switching.of(filled).switches()).isEmpty();
    assertThat(Switching.of(filled).savedGal()).isZero();
  }

  @Test
  void savingIsPlannedLessRecommended() {
    Switching switching =
        Switching.of(Estimator.fill(Bids.bid(wall("latex", "317"), wall("latex", "521"))));

    assertThat(switching.lines()).isEqualTo(2);
    assertThat(switching.savedHours())
        .isCloseTo(
            switching.switches().stream()
                .mapToDouble(s -> s.planned().sprayHours() - s.recommended().sprayHours())
                .sum(),
            within(1e-12));
    assertThat(switching.plannedGal())
        .isCloseTo(
            switching.switches().stream().mapToDouble(s -> s.planned().paintGal()).sum(),
            within(1e-12))
        .isPositive();
    assertThat(switching.recommendedGal())
        .isCloseTo(
            switching.switches().stream().mapToDouble(s -> s.recommended().paintGal()).sum(),
            within(1e-12))
        .isPositive();
    assertThat(switching.savedGal())
        .isCloseTo(switching.plannedGal() - switching.recommendedGal(), within(1e-12))
        .isPositive();
    // a narrow fan of the same orifice is held at the fastest stroke and takes longer
    assertThat(switching.switches().get(0).planned().sprayHours())
        .isGreaterThan(switching.switches().get(0).recommended().sprayHours());
  }

  private static InputValue no() {
    return InputValue.text("no");
  }

  private static BidLine wall(String coating, String tip) {
    return Bids.line(
        SURFACE, "walls", COATING, coating, LENGTH, 20, WIDTH, 12, HEIGHT, 9, TIP, tip);
  }

  private static List<FilledLine> fill(String follow, List<BidLine> lines) {
    Catalogue catalogue = Bids.settings("Figures follow", follow);
    return Estimator.fill(Bids.bid(catalogue, UnitSystem.US, lines.toArray(BidLine[]::new)))
        .lines()
        .toList();
  }
}
