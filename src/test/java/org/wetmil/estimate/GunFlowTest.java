package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.UnitSystem;

/** What comes to the tip: 0.2704587746 gpm of latex through 517 at 2000 psi, worked by hand. */
class GunFlowTest {

  private static Object[] walls(Object... more) {
    Object[] cells =
        Arrays.copyOf(
            new Object[] {
              InputColumn.SURFACE, "walls", InputColumn.COATING, "latex", InputColumn.AREA, 500
            },
            6 + more.length);
    System.arraycopy(more, 0, cells, 6, more.length);
    return cells;
  }

  /** A hose of 1/4 in, and latex as thin as said. */
  private static Catalogue hosed(double pascalSeconds) {
    List<TableProblem> problems = new ArrayList<>();
    Catalogue tables =
        Catalogue.builtIn()
            .with(
                Map.of(
                    Tables.SPRAYERS,
                    List.of(Bids.row(0, "Sprayer", "Long", "Hose bore", 0.25, "Hose length", 100)),
                    Tables.COATINGS,
                    List.of(Bids.row(0, "Coating", "latex", "Viscosity", pascalSeconds))),
                UnitSystem.US,
                problems);
    assertThat(problems).isEmpty();
    return tables;
  }

  private static GunFlow.At planned(double pascalSeconds, boolean atGun) {
    BidLine line =
        Bids.line(
            walls(InputColumn.SPRAYER, "long", InputColumn.PRESSURE, 2000, InputColumn.TIP, "517"));
    BidLine there = new BidLine(line.sheet(), line.row(), line.system(), atGun, line.values());
    return Bids.fill(hosed(pascalSeconds), there).planned().gun();
  }

  /**
   * Reynolds number 4 rho Q / (pi D mu), Q = 0.2704587746 x 231 x (0.0254 m)3 / 60 s = 1.70633e-5
   * m3/s: 4 x 1300 x Q / (pi x 0.00635 x mu) = 4.44777 / mu. A pipe runs laminar up to about 2000
   * (textbook pipe flow, from memory): down to 0.00222 Pa s.
   */
  @Test
  void theLossIsThatOfALaminarFlowUpToAReynoldsNumberOf2000() {
    assertThat(planned(0.2, true).laminar()).isTrue();
    assertThat(planned(0.0023, true).laminar()).isTrue();
    assertThat(planned(0.0021, true).laminar()).isFalse();
    assertThat(planned(0.2, true).flowGpm()).isCloseTo(0.2704587746, withinPercentage(1e-7));
    assertThat(planned(0.2, false).laminar()).isTrue();
    assertThat(planned(0.001, false).laminar()).isFalse();
  }

  /** 128 mu L Q / (pi D4): 128 x 0.2 x 30.48 x 1.70633e-5 / (pi x 0.00635^4) Pa = 378.05 psi. */
  @Test
  void theLossOfTheHoseComesOnTopOfThePressureAtTheGun() {
    double flow = 0.2704587746 * 231 * Math.pow(0.0254, 3) / 60;
    double pascal = 128 * 0.2 * 30.48 * flow / (Math.PI * Math.pow(0.00635, 4));
    GunFlow.At gun = planned(0.2, true);

    assertThat(gun.lossPsi()).isCloseTo(pascal / 6894.757293168, withinPercentage(1e-6));
    assertThat(gun.gunPsi()).isEqualTo(2000);
    assertThat(gun.pumpPsi()).isCloseTo(2000 + gun.lossPsi(), within(1e-9));
  }

  /** Behind a hose the flow is found by steps, which no formula of a cell has. */
  @Test
  void theFlowFollowsPressureAndOrificeWhereThereIsNoHose() {
    FilledLine direct = Bids.fill(Bids.line(walls()));
    FilledLine hosed = Bids.fill(hosed(0.2), Bids.line(walls(InputColumn.SPRAYER, "long")));

    assertThat(direct.figures().get(FilledColumn.FLOW)).isInstanceOf(Figure.Live.class);
    assertThat(hosed.figures().get(FilledColumn.FLOW)).isInstanceOf(Figure.Choice.class);
    assertThat(hosed.base(FilledColumn.FLOW)).isEqualTo(hosed.followed().gun().flowGpm());
    assertThat(direct.followed().gun().lossPsi()).isZero();
    assertThat(direct.followed().gun().laminar()).isTrue();
  }

  /** The paint is still to leave the gun: the pressure is the coating's usual, or the line's. */
  @Test
  void withoutATipThePressureIsStillToBeSet() {
    Catalogue tables = Bids.with(Tables.TIPS_ON_HAND, List.of(Bids.row(0, "Tip", "539")));
    FilledLine usual = Bids.fill(tables, Bids.line(walls()));
    FilledLine stated = Bids.fill(tables, Bids.line(walls(InputColumn.PRESSURE, 1500)));

    assertThat(usual.recommended().isTip()).isFalse();
    assertThat(usual.setPsi()).isEqualTo(2000);
    assertThat(usual.base(FilledColumn.PRESSURE)).isEqualTo(2000);
    assertThat(stated.setPsi()).isEqualTo(1500);
  }

  @Test
  void aPlannedTipThatNothingComesToIsNotFollowed() {
    FilledLine filled =
        Bids.fill(
            WorkedLines.tower(Bids.row(0, "Setting", "Figures follow", "Value", "Planned")),
            WorkedLines.HIGH_WALLS);

    assertThat(filled.planned().gun().flowGpm()).isZero();
    assertThat(filled.followed()).isSameAs(filled.recommended());
    assertThat(filled.base(FilledColumn.PAINT)).isPositive();
  }
}
