package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.wetmil.estimate.FilledColumn.PAINT;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.trade.TipCode;

/** Lines filled once more with other cells. */
class TrialTest {
  private static final BidLine WALLS =
      Bids.line(
          InputColumn.SURFACE,
          "walls",
          InputColumn.COATING,
          "latex",
          InputColumn.PRESSURE,
          2000,
          InputColumn.AREA,
          590);

  private static Trial trial(Catalogue tables, BidLine line) {
    return new Trial(tables, Bids.fill(tables, line));
  }

  /** Two coats take 4.977638902 gal, worked by hand. */
  @Test
  void withAnotherNumberOfCoatsAllElseStays() {
    Trial trial = trial(Catalogue.builtIn(), WALLS);
    FilledLine three = trial.coats(3);

    assertThat(three.coats().coats()).isEqualTo(3);
    assertThat(three.coats().basis()).isEqualTo(CoatPlan.Basis.STATED);
    assertThat(three.base(PAINT)).isCloseTo(4.977638902 * 1.5, withinPercentage(1e-7));
    assertThat(trial.coats(2).figures().get(PAINT).number())
        .isCloseTo(4.977638902, withinPercentage(1e-7));
    assertThat(three.recommended().tip().code()).isEqualTo("517");
  }

  /** 517 passes 0.2704587746 gpm at 2000 psi, and by the square root of 0.75 less at 1500. */
  @Test
  void anotherTipAndPressureAreTriedAsIfTheyStoodOnTheLine() {
    Trial trial = trial(Catalogue.builtIn(), WALLS);
    Setup here = trial.tip(new TipCode(5, 17));
    Setup there = trial.tip(new TipCode(5, 17), 1500, false);

    assertThat(here.tip().code()).isEqualTo("517");
    assertThat(here.gun().flowGpm()).isCloseTo(0.2704587746, withinPercentage(1e-7));
    assertThat(there.gun().pumpPsi()).isEqualTo(1500);
    assertThat(there.gun().flowGpm())
        .isCloseTo(0.2704587746 * Math.sqrt(0.75), withinPercentage(1e-7));
    assertThat(trial.tip(new TipCode(4, 15)).fanIn()).isEqualTo(8);
  }

  /** At the gun the hose comes on top: 378.05 psi of it in GunFlowTest, for 100 ft of 1/4 in. */
  @Test
  void aPressureIsTriedWhereItIsWanted() {
    Catalogue tables =
        Bids.with(
            Tables.SPRAYERS,
            List.of(Bids.row(0, "Sprayer", "Long", "Hose bore", 0.25, "Hose length", 100)));
    BidLine line = Bids.changed(WALLS, InputColumn.SPRAYER, InputValue.text("long"));
    Trial trial = trial(tables, line);
    GunFlow.At gun = trial.tip(new TipCode(5, 17), 2000, true).gun();
    GunFlow.At pump = trial.tip(new TipCode(5, 17), 2000, false).gun();

    assertThat(gun.gunPsi()).isEqualTo(2000);
    assertThat(gun.pumpPsi()).isCloseTo(2378.05, within(0.01));
    assertThat(pump.pumpPsi()).isEqualTo(2000);
    assertThat(pump.gunPsi()).isLessThan(2000);
  }

  @Test
  void tipsAreThoseOnHandElseThoseInStock() {
    Catalogue hand =
        Bids.with(
            Tables.TIPS_ON_HAND,
            List.of(
                Bids.row(0, "Tip", "517"),
                Bids.row(1, "Tip", "517"),
                Bids.row(2, "Tip", "415", "Count", 0),
                Bids.row(3, "Tip", "313", "Count", 1)));

    assertThat(trial(Catalogue.builtIn(), WALLS).tips())
        .isEqualTo(Catalogue.builtIn().stockTips())
        .isNotEmpty();
    assertThat(trial(hand, WALLS).tips()).extracting(TipCode::code).containsExactly("517", "313");
  }
}
