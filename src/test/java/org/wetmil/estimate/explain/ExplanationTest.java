package org.wetmil.estimate.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.wetmil.estimate.FilledColumn.ADDED;
import static org.wetmil.estimate.FilledColumn.COATS;
import static org.wetmil.estimate.FilledColumn.COUNTED;
import static org.wetmil.estimate.FilledColumn.DEDUCTED;
import static org.wetmil.estimate.FilledColumn.DRY_FILM;
import static org.wetmil.estimate.FilledColumn.FAN;
import static org.wetmil.estimate.FilledColumn.FLOW;
import static org.wetmil.estimate.FilledColumn.GROSS;
import static org.wetmil.estimate.FilledColumn.LABOUR;
import static org.wetmil.estimate.FilledColumn.MASK;
import static org.wetmil.estimate.FilledColumn.NET_AREA;
import static org.wetmil.estimate.FilledColumn.ORIFICE;
import static org.wetmil.estimate.FilledColumn.PAINT;
import static org.wetmil.estimate.FilledColumn.PAINT_COST;
import static org.wetmil.estimate.FilledColumn.PAINT_LOW;
import static org.wetmil.estimate.FilledColumn.PREPARE;
import static org.wetmil.estimate.FilledColumn.PRESSURE;
import static org.wetmil.estimate.FilledColumn.ROLL;
import static org.wetmil.estimate.FilledColumn.SPEED;
import static org.wetmil.estimate.FilledColumn.SPRAY;
import static org.wetmil.estimate.FilledColumn.SPREAD;
import static org.wetmil.estimate.FilledColumn.TIP_CODE;
import static org.wetmil.estimate.FilledColumn.WET_FILM;
import static org.wetmil.estimate.Given.COATS_WANTED;
import static org.wetmil.estimate.Given.GUN_PRESSURE;
import static org.wetmil.estimate.Given.HOSE_LOSS;
import static org.wetmil.estimate.Given.LIFT;
import static org.wetmil.estimate.Given.TARGET;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.EarlierCells;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Given;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.WorkedLines;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Place;
import org.wetmil.quantity.UnitSystem;

/** Which steps are told of a line, in which order; numbers are those of HandWorkedLinesTest. */
class ExplanationTest {
  private static Bid bid(Catalogue tables, BidLine line) {
    return Bids.bid(tables, UnitSystem.US, line);
  }

  private static Explanation whole(Catalogue tables, BidLine line) {
    Bid bid = bid(tables, line);
    return Explanation.of(bid, filled(bid));
  }

  private static Explanation asked(Catalogue tables, BidLine line, FilledColumn column) {
    Bid bid = bid(tables, line);
    return Explanation.of(bid, filled(bid), column);
  }

  private static FilledLine filled(Bid bid) {
    return Estimator.fill(bid).lines().findFirst().orElseThrow();
  }

  private static List<Place> places(Explanation explanation) {
    return explanation.steps().stream().map(Step::of).toList();
  }

  private static Step step(Explanation explanation, Place place) {
    return explanation.steps().stream()
        .filter(each -> each.of() == place)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aLineIsToldInTheOrderOfComputationWithoutItsRange() {
    Explanation told = whole(Catalogue.builtIn(), WorkedLines.DRYWALL);

    assertThat(places(told))
        .containsExactly(
            NET_AREA, COATS, TARGET, PRESSURE, TIP_CODE, FLOW, SPEED, WET_FILM, DRY_FILM, SPREAD,
            PAINT, SPRAY, ROLL, MASK, PREPARE, LABOUR, COUNTED);
    double[] byHand = {
      590,
      2,
      4.5,
      2000,
      517,
      0.2704587746,
      32.394951,
      4.5,
      3.24,
      237.0601852,
      4.977638902,
      1.457017175,
      1.311111111,
      0.75,
      0.295,
      3.813128286,
      1
    };
    for (int i = 0; i < byHand.length; i++) {
      assertThat(told.steps().get(i).value())
          .as("%s", told.steps().get(i).of())
          .isCloseTo(byHand[i], withinPercentage(1e-7));
    }
    assertThat(told.steps()).noneMatch(Step::typed);
    assertThat(told.tips().orElseThrow().tips().get(0).code().code()).isEqualTo("517");
  }

  /** What follows nothing has no formula; the film aimed at has one, and no cell. */
  @Test
  void choicesHaveNoFormulaAndTheFilmAimedAtHasNoCell() {
    Explanation told = whole(Catalogue.builtIn(), WorkedLines.DRYWALL);

    assertThat(told.steps().stream().filter(step -> step.formula().isEmpty()).map(Step::of))
        .containsExactly(COATS, PRESSURE, TIP_CODE, COUNTED);
    for (Step step : told.steps()) {
      step.formula()
          .ifPresent(
              formula ->
                  assertThat(formula.value()).isCloseTo(step.value(), withinPercentage(1e-9)));
    }
    assertThat(step(told, TARGET).column()).isEmpty();
    assertThat(step(told, DRY_FILM).column()).contains(DRY_FILM);
  }

  /** 2 (20 + 15) x 9 = 630 ft2, 40 off. */
  @Test
  void partsOfTheAreaAreToldWhereTheyAreShown() {
    Explanation told = whole(Bids.settings("Show measuring", "yes"), WorkedLines.DRYWALL);

    assertThat(places(told)).startsWith(GROSS, DEDUCTED, ADDED, NET_AREA, COATS);
    assertThat(told.steps().subList(0, 4))
        .extracting(Step::value)
        .containsExactly(630d, 40d, 0d, 590d);
  }

  @Test
  void whatDoesNotRestOnTheTipIsToldWithoutIt() {
    Explanation prepare = asked(Catalogue.builtIn(), WorkedLines.DRYWALL, PREPARE);
    Explanation mask = asked(Catalogue.builtIn(), WorkedLines.DRYWALL, MASK);

    assertThat(places(prepare)).containsExactly(NET_AREA, PREPARE);
    assertThat(prepare.tips()).isEmpty();
    assertThat(places(mask)).containsExactly(MASK);
  }

  /** The pace is what lays the target with that flow, so that it rests on both. */
  @Test
  void whatRestsOnTheTipIsToldWithFilmAndPressureBeforeIt() {
    Explanation film = asked(Catalogue.builtIn(), WorkedLines.DRYWALL, WET_FILM);

    assertThat(places(film)).containsExactly(TARGET, PRESSURE, TIP_CODE, FLOW, SPEED, WET_FILM);
    assertThat(film.tips()).isPresent();
    assertThat(places(asked(Catalogue.builtIn(), WorkedLines.DRYWALL, PAINT)))
        .containsExactly(
            NET_AREA, COATS, TARGET, PRESSURE, TIP_CODE, FLOW, SPEED, WET_FILM, SPREAD, PAINT);
  }

  /**
   * Without a tip the pace is the easy one, whatever the film; film and flow rest on the target.
   */
  @Test
  void withoutATipThePaceRestsOnNothingElse() {
    Catalogue none = Bids.with(Tables.TIPS_ON_HAND, List.of(Bids.row(0, "Tip", "539")));

    assertThat(places(asked(none, WorkedLines.DRYWALL, SPEED))).containsExactly(SPEED);
    assertThat(places(asked(none, WorkedLines.DRYWALL, WET_FILM)))
        .containsExactly(TARGET, PRESSURE, TIP_CODE, FLOW, SPEED, WET_FILM);
  }

  @Test
  void orificeAndFanAreToldAsTheTip() {
    for (FilledColumn column : List.of(ORIFICE, FAN, TIP_CODE)) {
      assertThat(places(asked(Catalogue.builtIn(), WorkedLines.DRYWALL, column)))
          .as("%s", column)
          .containsExactly(TARGET, PRESSURE, TIP_CODE);
    }
    assertThat(Explanation.stepOf(Given.FAN)).isEqualTo(TIP_CODE);
    assertThat(Explanation.stepOf(Given.ORIFICE)).isEqualTo(TIP_CODE);
    assertThat(Explanation.stepOf(PAINT)).isEqualTo(PAINT);
  }

  @Test
  void anEndOfTheRangeIsToldWhenItIsAskedFor() {
    Explanation low = asked(Catalogue.builtIn(), WorkedLines.DRYWALL, PAINT_LOW);

    assertThat(places(low)).endsWith(SPREAD, PAINT, PAINT_LOW);
    assertThat(step(low, PAINT_LOW).value()).isLessThan(4.977638902);
  }

  /** 5 mil / (0.40 x 7.5 mil) is two coats; they leave 5 / (0.40 x 2) = 6.25 mil wet. */
  @Test
  void behindAHoseLossAndLiftComeOffThePressureSet() {
    Explanation told = whole(WorkedLines.bigOne(), WorkedLines.DECK);

    assertThat(places(told))
        .startsWith(
            NET_AREA,
            COATS_WANTED,
            COATS,
            TARGET,
            PRESSURE,
            TIP_CODE,
            HOSE_LOSS,
            LIFT,
            GUN_PRESSURE,
            FLOW,
            SPEED);
    Map<Place, Double> byHand =
        Map.of(
            COATS_WANTED,
            5 / 3.0,
            TARGET,
            6.25,
            HOSE_LOSS,
            45.11436076,
            LIFT,
            11.70524261,
            GUN_PRESSURE,
            1943.180397,
            FLOW,
            0.326780994);
    byHand.forEach(
        (place, value) -> {
          Step step = step(told, place);
          assertThat(step.value()).as("%s", place).isCloseTo(value, withinPercentage(1e-7));
          assertThat(step.formula().orElseThrow().value())
              .as("%s", place)
              .isCloseTo(value, withinPercentage(1e-7));
        });
  }

  @Test
  void coatsOfASpecifiedFilmAreToldWithTheFilm() {
    assertThat(places(asked(WorkedLines.bigOne(), WorkedLines.DECK, COATS)))
        .containsExactly(COATS_WANTED, COATS);
    assertThat(places(asked(WorkedLines.bigOne(), WorkedLines.DECK, FLOW)))
        .containsExactly(
            COATS_WANTED, COATS, TARGET, PRESSURE, TIP_CODE, HOSE_LOSS, LIFT, GUN_PRESSURE, FLOW);
  }

  @Test
  void whatWasTypedIsToldWithTheFormulaThatItStandsFor() {
    Step paint = step(whole(Catalogue.builtIn(), WorkedLines.DRYWALL.with(typed(PAINT, 6))), PAINT);

    assertThat(paint.typed()).isTrue();
    assertThat(paint.value()).isEqualTo(6);
    assertThat(paint.formula().orElseThrow().value())
        .isCloseTo(4.977638902, withinPercentage(1e-7));
    assertThat(paint.ingredients())
        .extracting(Ingredient::place)
        .containsExactly(NET_AREA, COATS, SPREAD);
  }

  private static EarlierCells typed(FilledColumn column, double number) {
    return new EarlierCells(Map.of(column, number), Map.of(), Map.of(), true);
  }

  /** Walls without a height make no area, and so no paint. */
  @Test
  void whatWasTypedWhereNothingIsComputedHasNoFormula() {
    BidLine line =
        Bids.line(
            InputColumn.SURFACE, "walls", InputColumn.COATING, "latex", InputColumn.LENGTH, 9);
    Explanation told = whole(Catalogue.builtIn(), line.with(typed(PAINT, 6)));

    assertThat(places(told))
        .containsExactly(
            COATS, TARGET, PRESSURE, TIP_CODE, FLOW, SPEED, WET_FILM, DRY_FILM, SPREAD, PAINT,
            COUNTED);
    assertThat(step(told, PAINT)).isEqualTo(new Step(PAINT, 6, Optional.empty(), true, List.of()));
  }

  @Test
  void aLineWithoutACoatingIsToldAsFarAsItGoes() {
    Bid bid =
        bid(
            Catalogue.builtIn(),
            Bids.line(
                InputColumn.SURFACE, "walls", InputColumn.COATING, "what", InputColumn.AREA, 99));
    Explanation told = Explanation.of(bid, filled(bid));

    assertThat(places(told)).containsExactly(NET_AREA, COUNTED);
    assertThat(told.tips()).isEmpty();
    assertThat(Explanation.of(bid, filled(bid), TIP_CODE).steps()).isEmpty();
  }

  /** 4.977638902 gal; five for 190 are cheaper than five times 42. */
  @Test
  void costsAreToldWherePricesAreStated() {
    Catalogue priced =
        Bids.with(
            Tables.COATINGS,
            List.of(
                Bids.row(0, "Coating", "latex", "Container sizes", "1; 5", "Price", "42; 190")));
    Explanation told = asked(priced, WorkedLines.DRYWALL, PAINT_COST);

    assertThat(places(told)).endsWith(SPREAD, PAINT, PAINT_COST);
    assertThat(step(told, PAINT_COST).value()).isCloseTo(4.977638902 * 38, withinPercentage(1e-7));
    assertThat(step(told, PAINT_COST).formula().orElseThrow()).isInstanceOf(Expr.Product.class);
  }
}
