package org.wetmil.estimate.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.EntryPlace;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Given;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.estimate.UnitFactor;
import org.wetmil.formula.Expr;
import org.wetmil.formula.Place;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** What is said of each number that enters a formula. */
class IngredientsTest {
  private static final BidLine WALLS =
      Bids.line(
          InputColumn.SURFACE,
          "walls",
          InputColumn.COATING,
          "latex",
          InputColumn.CONDITION,
          "new drywall",
          InputColumn.LENGTH,
          20,
          InputColumn.WIDTH,
          15,
          InputColumn.HEIGHT,
          9);

  private static final BidLine TRIM =
      Bids.line(
          UnitSystem.METRIC,
          InputColumn.SURFACE,
          "baseboard",
          InputColumn.COATING,
          "latex",
          InputColumn.LENGTH,
          30,
          InputColumn.GIRTH,
          100);

  /** A line explained on Basis of a family. */
  private record Told(Catalogue tables, UnitSystem basis, BidLine line) {
    Told(BidLine line) {
      this(Catalogue.builtIn(), line.system(), line);
    }

    Bid bid() {
      return Bids.bid(tables, basis, line);
    }

    FilledLine filled() {
      return Estimator.fill(bid()).lines().findFirst().orElseThrow();
    }

    Ingredients ingredients() {
      return new Ingredients(tables, filled(), basis);
    }

    Step step(Place place) {
      return Explanation.of(bid(), filled()).steps().stream()
          .filter(step -> step.of() == place)
          .findFirst()
          .orElseThrow();
    }

    List<Ingredient> of(Place place) {
      return step(place).ingredients();
    }
  }

  private static Ingredient named(List<Ingredient> all, String name) {
    return all.stream().filter(each -> each.name().equals(name)).findFirst().orElseThrow();
  }

  /** The orifice enters squared, and is told once. */
  @Test
  void whatEntersAFormulaIsToldOnceInTheOrderOfTheFormula() {
    List<Ingredient> flow = new Told(WALLS).of(FilledColumn.FLOW);

    assertThat(flow)
        .extracting(Ingredient::name)
        .containsExactly(
            "Flow factor",
            "Discharge coefficient",
            "Recommended orifice",
            "Pressure to set",
            "Density");
    assertThat(flow).extracting(Ingredient::unit).containsExactly("", "", "thou", "psi", "kg/L");
    assertThat(flow.subList(1, 5))
        .extracting(Ingredient::value)
        .containsExactly(0.8, 17d, 2000d, 1.3);
    assertThat(flow)
        .extracting(Ingredient::owner)
        .containsExactly("", "Settings", "", "", "Coatings, latex");
  }

  /** pi/4 x sqrt(2 x 6894.757 Pa / 1000 kg/m3) x (25.4 um)2 / (231 x (25.4 mm)3 / 60 s). */
  @Test
  void aFactorOfTheUnitsIsDerivedFromThem() {
    Ingredient factor = new Told(WALLS).of(FilledColumn.FLOW).get(0);

    double byHand =
        Math.PI
            / 4
            * Math.sqrt(2 * 6894.757293168 / 1000)
            * Math.pow(25.4e-6, 2)
            / (231 * Math.pow(0.0254, 3) / 60);
    assertThat(factor.value()).isCloseTo(byHand, withinPercentage(1e-9));
    assertThat(factor.constant())
        .contains(
            new Ingredient.Said(
                Kind.DERIVED,
                "pi/4 x square root of 2, in the units of orifice, pressure, density and flow",
                "exact sizes of the units"));
  }

  @Test
  void aFigureOfATableIsToldWithItsKindItsSourceAndWhereItStands() {
    Catalogue mine =
        Bids.with(Tables.COATINGS, List.of(Bids.row(0, "Coating", "latex", "Density", 1.4)));
    List<Ingredient> flow = new Told(mine, UnitSystem.US, WALLS).of(FilledColumn.FLOW);

    Ingredient.Said coefficient = named(flow, "Discharge coefficient").constant().orElseThrow();
    assertThat(coefficient.kind()).isEqualTo(Kind.PUBLISHED);
    assertThat(coefficient.source())
        .isEqualTo("short tube in engineering references; 0.62 to 0.97 bracket it");
    assertThat(coefficient.where()).isEqualTo("built in");
    Ingredient density = named(flow, "Density");
    assertThat(density.value()).isEqualTo(1.4);
    assertThat(density.constant().orElseThrow().kind()).isEqualTo(Kind.YOURS);
    assertThat(density.constant().orElseThrow().where()).startsWith("Sheet!B");
    assertThat(named(flow, "Pressure to set").constant()).isEmpty();
  }

  /** A rate is a row of its table: it is called by its task. */
  @Test
  void aRateIsCalledByItsTask() {
    Ingredient rate = named(new Told(WALLS).of(FilledColumn.MASK), "Cover floor");

    assertThat(rate.value()).isEqualTo(500);
    assertThat(rate.unit()).isEqualTo("ft²/h");
    assertThat(rate.owner()).isEqualTo("Labour rates");
  }

  /** A cell may be in another unit than its sheet: 240 in are 20 ft. */
  @Test
  void aCellIsToldInItsOwnUnitAndANumberInThatOfTheSheet() {
    BidLine inches =
        Bids.changed(
            WALLS,
            InputColumn.LENGTH,
            new InputValue(InputValue.State.READ, "240 in", 20, 20, 20, 240, Unit.INCH, ""));
    Ingredient cell = named(new Told(inches).of(FilledColumn.NET_AREA), "Length");
    BidLine text = Bids.typed(WALLS, InputColumn.LENGTH);
    Ingredient number = named(new Told(text).of(FilledColumn.NET_AREA), "Length");

    assertThat(cell)
        .isEqualTo(new Ingredient(InputColumn.LENGTH, "Length", 240, "in", "", Optional.empty()));
    assertThat(number)
        .isEqualTo(new Ingredient(InputColumn.LENGTH, "Length", 20, "ft", "", Optional.empty()));
  }

  /** 4.5 mil are 114.3 um; Basis may be in the other family than the sheet. */
  @Test
  void figuresOfTablesAreInTheUnitsOfBasisAndAllElseInThoseOfTheSheet() {
    Told metric = new Told(Catalogue.builtIn(), UnitSystem.US, TRIM);
    Ingredient target = named(metric.of(Given.TARGET), "Wet film target");
    Ingredient onMetric = named(new Told(TRIM).of(Given.TARGET), "Wet film target");

    assertThat(target.value()).isEqualTo(4.5);
    assertThat(target.unit()).isEqualTo("mil");
    assertThat(onMetric.value()).isCloseTo(114.3, within(1e-9));
    assertThat(onMetric.unit()).isEqualTo("µm");
    Step film = metric.step(FilledColumn.WET_FILM);
    assertThat(film.value()).isCloseTo(114.3, within(1e-9));
    assertThat(metric.ingredients().named(film)).isEqualTo("Wet film per coat");
    assertThat(metric.ingredients().unit(film)).isEqualTo("µm");
    assertThat(metric.ingredients().named(metric.step(Given.TARGET))).isEqualTo("Target film");
  }

  /** The work is 100 mm wide; the fan of 4 in is 10.16 cm. */
  @Test
  void whatHasNoCellIsToldByItsName() {
    Ingredient width = named(new Told(TRIM).of(FilledColumn.PAINT), "Spread");
    List<Ingredient> spread = new Told(TRIM).of(FilledColumn.SPREAD);

    assertThat(width.unit()).isEqualTo("m²/L");
    assertThat(named(spread, "Width of the work"))
        .isEqualTo(
            new Ingredient(Given.WORK_WIDTH, "Width of the work", 10, "cm", "", Optional.empty()));
    assertThat(named(spread, "Recommended fan").value()).isCloseTo(10.16, within(1e-9));
  }

  private static Catalogue priced(Object... settings) {
    Catalogue tables = Bids.settings(settings);
    return tables.with(
        Map.of(
            Tables.COATINGS,
            List.of(
                Bids.row(0, "Coating", "latex", "Container sizes", "1; 5", "Price", "42; 190"))),
        UnitSystem.US,
        new ArrayList<>());
  }

  /** Five gallons for 190 are 38 each. */
  @Test
  void amountsAreInTheCurrencyAndPricesForEachUnit() {
    Told told =
        new Told(priced("Currency", "EUR", "Labour rate", 30, "Burden", 0.2), UnitSystem.US, WALLS);

    assertThat(told.ingredients().unit(told.step(FilledColumn.PAINT_COST))).isEqualTo("EUR");
    assertThat(told.ingredients().unit(told.step(FilledColumn.LABOUR_COST))).isEqualTo("EUR");
    assertThat(told.ingredients().unit(told.step(FilledColumn.PAINT))).isEqualTo("gal");
    Ingredient price = named(told.of(FilledColumn.PAINT_COST), "Cheapest price of the paint");
    assertThat(price.value()).isEqualTo(38);
    assertThat(price.unit()).isEqualTo("EUR/gal");
    List<Ingredient> labour = told.of(FilledColumn.LABOUR_COST);
    assertThat(labour)
        .extracting(Ingredient::name)
        .containsExactly("Labour", "Labour rate", "Burden");
    assertThat(labour).extracting(Ingredient::unit).containsExactly("h", "EUR/h", "");
    assertThat(
            told.ingredients().of(new Expr.At(FilledColumn.COST_LOW, 1)).unit()
                + told.ingredients().of(new Expr.At(FilledColumn.COST_HIGH, 1)).unit())
        .isEqualTo("EUREUR");
  }

  @Test
  void withoutACurrencyAPriceIsForEachUnit() {
    Told told = new Told(priced("Labour rate", 30), UnitSystem.US, WALLS);

    assertThat(told.of(FilledColumn.PAINT_COST))
        .extracting(Ingredient::unit)
        .containsExactly("gal", "per gal");
    assertThat(told.of(FilledColumn.LABOUR_COST))
        .extracting(Ingredient::unit)
        .containsExactly("h", "per h", "");
    assertThat(told.ingredients().unit(told.step(FilledColumn.PAINT_COST))).isEmpty();
  }

  @Test
  void aFigureThatTheTablesDoNotStateIsNotMadeUp() {
    Ingredients ingredients = new Told(WALLS).ingredients();

    assertThatIllegalStateException()
        .isThrownBy(() -> ingredients.of(new EntryPlace("Coatings", "latex", "Scent"), 1))
        .withMessageContaining("latex")
        .withMessageContaining("Scent");
    assertThat(ingredients.of(UnitFactor.PACE, 25).name()).isEqualTo("Pace factor");
  }

  private static List<String> basisOfTheTip(Told told) {
    return told.of(FilledColumn.TIP_CODE).stream()
        .map(each -> (each.name() + " " + each.value() + " " + each.unit()).strip())
        .toList();
  }

  /** The tip of broad work: latex wants 15 to 19 thou, a wall a fan of at most 10 in (digit 5). */
  @Test
  void theTipOfBroadWorkRestsOnOrificesFilmAndTheWidestFan() {
    assertThat(basisOfTheTip(new Told(WALLS)))
        .containsExactly(
            "Orifice least 11.0 thou",
            "Orifice from 15.0 thou",
            "Orifice to 19.0 thou",
            "Wet film min 3.5 mil",
            "Wet film max 7.0 mil",
            "Widest fan 5.0",
            "Distance 12.0 in",
            "Fine step 0.05",
            "Broad easy 30.0 in/s",
            "Film tolerance 0.25");
  }

  /** That of a narrow trim: from 11 thou, and a fan that covers 0.8 of the work. */
  @Test
  void theTipOfNarrowJoineryRestsOnTheWidthOfTheWork() {
    assertThat(basisOfTheTip(new Told(Catalogue.builtIn(), UnitSystem.US, TRIM)))
        .containsExactly(
            "Orifice least 11.0 thou",
            "Orifice joinery from 11.0 thou",
            "Orifice to 19.0 thou",
            "Wet film min 3.5 mil",
            "Wet film max 7.0 mil",
            "Distance 12.0 in",
            "Fine step 0.05",
            "Joinery easy 20.0 in/s",
            "Film tolerance 0.25",
            "Narrow work 10.0 in",
            "Narrow fit 0.8");
  }

  /** Of the sprayer, what is stated of it. */
  @Test
  void aSprayerCountsWithWhatIsStatedOfIt() {
    Catalogue tables =
        Bids.with(
            Tables.SPRAYERS,
            List.of(
                Bids.row(
                    0, "Sprayer", "Old", "Greatest flow", 0.5, "Greatest orifice", 21, "Guns", 1),
                Bids.row(1, "Sprayer", "Lent", "Greatest flow", 0.5)));
    BidLine old = Bids.changed(WALLS, InputColumn.SPRAYER, InputValue.text("old"));
    BidLine lent = Bids.changed(WALLS, InputColumn.SPRAYER, InputValue.text("lent"));

    assertThat(basisOfTheTip(new Told(tables, UnitSystem.US, old)))
        .contains(
            "Greatest flow 0.5 gpm", "Greatest orifice 21.0 thou", "Guns 1.0", "Pump reserve 1.25");
    assertThat(basisOfTheTip(new Told(tables, UnitSystem.US, lent)))
        .contains("Greatest flow 0.5 gpm", "Pump reserve 1.25")
        .noneMatch(said -> said.startsWith("Guns") || said.startsWith("Greatest orifice"));
    assertThat(
            named(new Told(tables, UnitSystem.US, old).of(FilledColumn.TIP_CODE), "Guns").owner())
        .isEqualTo("Sprayers, Old");
  }
}
