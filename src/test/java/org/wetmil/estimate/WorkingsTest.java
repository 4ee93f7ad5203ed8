package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.wetmil.estimate.FilledColumn.FLOW;
import static org.wetmil.estimate.Given.COATS_WANTED;
import static org.wetmil.estimate.Given.GUN_PRESSURE;
import static org.wetmil.estimate.Given.HOSE_LOSS;
import static org.wetmil.estimate.Given.LIFT;
import static org.wetmil.estimate.Given.TARGET;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Place;
import org.wetmil.quantity.UnitSystem;

/** Formulas of what no cell holds: they come to what the line was filled with. */
class WorkingsTest {

  private static Catalogue hosed(String follow, Object... rise) {
    List<Object> sprayer =
        new ArrayList<>(List.of("Sprayer", "Long", "Hose bore", 0.25, "Hose length", 100));
    sprayer.addAll(List.of(rise));
    return Catalogue.builtIn()
        .with(
            Map.of(
                Tables.SPRAYERS,
                List.of(Bids.row(0, sprayer.toArray())),
                Tables.SETTINGS,
                List.of(Bids.row(0, "Setting", "Figures follow", "Value", follow))),
            UnitSystem.US,
            new ArrayList<>());
  }

  private static BidLine walls(UnitSystem system, String sprayer) {
    return Bids.line(
        system,
        InputColumn.SURFACE,
        "walls",
        InputColumn.COATING,
        "latex",
        InputColumn.AREA,
        50,
        InputColumn.TIP,
        "515",
        InputColumn.SPRAYER,
        sprayer);
  }

  private static Map<Place, Expr> formulas(Catalogue tables, FilledLine filled) {
    return new Workings(tables, filled, UnitSystem.US).formulas();
  }

  @Test
  void withoutAHoseTheFilmAimedAtIsAllThatHasNoCell() {
    Catalogue tables = Catalogue.builtIn();
    FilledLine usual = Bids.fill(walls(UnitSystem.US, ""));
    FilledLine specified =
        Bids.fill(
            Bids.line(
                InputColumn.SURFACE,
                "walls",
                InputColumn.COATING,
                "latex",
                InputColumn.SPECIFIED_FILM,
                4,
                InputColumn.AREA,
                50));

    assertThat(formulas(tables, usual)).containsOnlyKeys(TARGET);
    assertThat(formulas(tables, usual).get(TARGET).value()).isEqualTo(4.5);
    // latex takes 1.25 x 4.5 = 5.625 mil at most: 4 / (0.36 x 5.625) = 1.975 coats
    assertThat(formulas(tables, specified)).containsOnlyKeys(COATS_WANTED, TARGET);
    assertThat(formulas(tables, specified).get(COATS_WANTED).value())
        .isCloseTo(4 / (0.36 * 5.625), within(1e-12));
    assertThat(formulas(tables, specified).get(TARGET).value())
        .isCloseTo(4 / (0.36 * 2), within(1e-12));
  }

  /** Coats that the estimator stated were not wanted by the film. */
  @Test
  void statedCoatsAreNotSaidToComeFromTheFilm() {
    FilledLine stated =
        Bids.fill(
            Bids.line(
                InputColumn.SURFACE,
                "walls",
                InputColumn.COATING,
                "latex",
                InputColumn.COATS,
                3,
                InputColumn.SPECIFIED_FILM,
                4.5,
                InputColumn.AREA,
                50));

    assertThat(formulas(Catalogue.builtIn(), stated)).containsOnlyKeys(TARGET);
    assertThat(formulas(Catalogue.builtIn(), stated).get(TARGET).value())
        .isCloseTo(4.5 / (0.36 * 3), within(1e-12));
  }

  /** Pump less hose less lift is what comes to the gun, and the flow follows it, in any unit. */
  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void behindAHoseTheFormulasComeToWhatTheLineWasFilledWith(UnitSystem system) {
    Catalogue tables = hosed("Recommended", "Rise", 10);
    FilledLine filled = Bids.fill(tables, walls(system, "long"));
    GunFlow.At gun = filled.followed().gun();
    Map<Place, Expr> formulas = formulas(tables, filled);
    double bar = system == UnitSystem.US ? 1 : 0.06894757293168;

    assertThat(formulas.keySet()).containsExactly(TARGET, HOSE_LOSS, LIFT, GUN_PRESSURE, FLOW);
    assertThat(formulas.get(HOSE_LOSS).value())
        .isCloseTo(gun.lossPsi() * bar, withinPercentage(1e-8));
    // 1.30 kg/L over 10 ft: 1300 x 9.80665 x 3.048 Pa
    assertThat(formulas.get(LIFT).value())
        .isCloseTo(1300 * 9.80665 * 3.048 / 6894.757293168 * bar, withinPercentage(1e-8));
    assertThat(formulas.get(GUN_PRESSURE).value())
        .isCloseTo(gun.gunPsi() * bar, withinPercentage(1e-8));
    assertThat(formulas.get(FLOW).value())
        .isCloseTo(filled.figures().get(FLOW).number(), withinPercentage(1e-8));
    assertThat(formulas.get(FLOW).print(Object::toString)).contains("ORIFICE");
  }

  @Test
  void whereNoRiseIsStatedThereIsNoLift() {
    Catalogue tables = hosed("Recommended");
    FilledLine filled = Bids.fill(tables, walls(UnitSystem.US, "long"));
    GunFlow.At gun = filled.followed().gun();
    Map<Place, Expr> formulas = formulas(tables, filled);

    assertThat(formulas.keySet()).containsExactly(TARGET, HOSE_LOSS, GUN_PRESSURE, FLOW);
    assertThat(formulas.get(GUN_PRESSURE).value()).isCloseTo(2000 - gun.lossPsi(), within(1e-6));
  }

  /** Its orifice is in no cell: the cells show the recommended one. */
  @Test
  void aPlannedTipThatIsFollowedStandsInTheFormulaAsANumber() {
    Catalogue tables = hosed("Planned");
    FilledLine filled = Bids.fill(tables, walls(UnitSystem.US, "long"));
    Expr flow = formulas(tables, filled).get(FLOW);

    assertThat(filled.followed().tip().code()).isEqualTo("515");
    assertThat(filled.recommended().tip().code()).isNotEqualTo("515");
    assertThat(flow.value()).isCloseTo(filled.followed().gun().flowGpm(), withinPercentage(1e-8));
    assertThat(flow.print(Object::toString)).contains("15*15");
  }

  /** Without a tip there is no orifice that the hose could feed. */
  @Test
  void withoutATipNothingIsToldOfTheHose() {
    Catalogue tables =
        Catalogue.builtIn()
            .with(
                Map.of(
                    Tables.SPRAYERS,
                    List.of(Bids.row(0, "Sprayer", "Long", "Hose bore", 0.25, "Hose length", 100)),
                    Tables.TIPS_ON_HAND,
                    List.of(Bids.row(0, "Tip", "539"))),
                UnitSystem.US,
                new ArrayList<>());
    FilledLine filled = Bids.fill(tables, walls(UnitSystem.US, "long"));

    assertThat(filled.followed().isTip()).isFalse();
    assertThat(formulas(tables, filled)).containsOnlyKeys(TARGET);
  }
}
