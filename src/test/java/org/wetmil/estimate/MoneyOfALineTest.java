package org.wetmil.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.wetmil.estimate.FilledColumn.COST_HIGH;
import static org.wetmil.estimate.FilledColumn.COST_LOW;
import static org.wetmil.estimate.FilledColumn.LABOUR;
import static org.wetmil.estimate.FilledColumn.LABOUR_COST;
import static org.wetmil.estimate.FilledColumn.LABOUR_HIGH;
import static org.wetmil.estimate.FilledColumn.LABOUR_LOW;
import static org.wetmil.estimate.FilledColumn.PAINT;
import static org.wetmil.estimate.FilledColumn.PAINT_COST;
import static org.wetmil.estimate.FilledColumn.PAINT_HIGH;
import static org.wetmil.estimate.FilledColumn.PAINT_LOW;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.quantity.UnitSystem;

/** Costs and likely costs of a line of 4.977638902 gal and 3.813128286 h, worked by hand. */
class MoneyOfALineTest {
  /** Paint at 42 a gallon or 190 for five; 30 an hour and a fifth on top: 36. */
  private static Catalogue tables(boolean paint, boolean labour) {
    Map<Tables, List<StatedRow>> stated = new EnumMap<>(Tables.class);
    if (paint) {
      stated.put(
          Tables.COATINGS,
          List.of(Bids.row(0, "Coating", "latex", "Container sizes", "1; 5", "Price", "42; 190")));
    }
    if (labour) {
      stated.put(
          Tables.SETTINGS,
          List.of(
              Bids.row(0, "Setting", "Labour rate", "Value", 30),
              Bids.row(1, "Setting", "Burden", "Value", 0.2)));
    }
    return Catalogue.builtIn().with(stated, UnitSystem.US, new ArrayList<>());
  }

  @Test
  void costsAreAmountsAtTheCheapestPriceAndTheRateWithBurden() {
    FilledLine filled = Bids.fill(tables(true, true), WorkedLines.DRYWALL);

    assertThat(filled.base(PAINT_COST)).isCloseTo(4.977638902 * 38, withinPercentage(1e-7));
    assertThat(filled.base(LABOUR_COST)).isCloseTo(3.813128286 * 36, withinPercentage(1e-7));
  }

  @Test
  void withoutPricesThereIsNoCost() {
    FilledLine filled = Bids.fill(WorkedLines.DRYWALL);

    assertThat(filled.figures())
        .doesNotContainKeys(PAINT_COST, LABOUR_COST, COST_LOW, COST_HIGH)
        .containsKeys(PAINT_LOW, PAINT_HIGH, LABOUR_LOW, LABOUR_HIGH);
  }

  /** Where one of the two is all that costs, the likely cost is that of its likely amount. */
  @ParameterizedTest
  @CsvSource({"true, PAINT_LOW, PAINT_HIGH, 38", "false, LABOUR_LOW, LABOUR_HIGH, 36"})
  void theLikelyCostOfOneThingIsItsLikelyAmountAtItsPrice(
      boolean paint, FilledColumn low, FilledColumn high, double price) {
    FilledLine filled = Bids.fill(tables(paint, !paint), WorkedLines.DRYWALL);

    assertThat(filled.base(COST_LOW)).isCloseTo(filled.base(low) * price, withinPercentage(0.01));
    assertThat(filled.base(COST_HIGH)).isCloseTo(filled.base(high) * price, withinPercentage(0.01));
  }

  /** Both at once go astray by no more than the two together, and by more than the greater. */
  @Test
  void theLikelyCostOfBothIsNarrowerThanTheTwoEndsTogether() {
    FilledLine filled = Bids.fill(tables(true, true), WorkedLines.DRYWALL);
    double cost = filled.base(PAINT_COST) + filled.base(LABOUR_COST);
    double paint = (filled.base(PAINT_HIGH) - filled.base(PAINT)) * 38;
    double labour = (filled.base(LABOUR_HIGH) - filled.base(LABOUR)) * 36;

    assertThat(filled.base(COST_HIGH) - cost)
        .isGreaterThan(Math.max(paint, labour))
        .isLessThan(paint + labour);
    assertThat(filled.base(COST_LOW)).isLessThan(cost).isPositive();
    assertThat(filled.base(PAINT_LOW)).isLessThan(filled.base(PAINT));
    assertThat(filled.base(LABOUR_LOW)).isLessThan(filled.base(LABOUR));
  }

  /** Only the spraying of the hours is unsure: what is rolled, masked and dusted stays. */
  @Test
  void theRangeOfTheHoursIsThatOfTheSpraying() {
    FilledLine filled = Bids.fill(WorkedLines.DRYWALL);
    double rest = 1.311111111 + 0.75 + 0.295;

    assertThat(filled.base(LABOUR_LOW)).isGreaterThan(rest);
    assertThat((filled.base(LABOUR_HIGH) - rest) / 1.457017175)
        .isGreaterThan(1)
        .isCloseTo(
            Bids.fill(Bids.line(ceiling())).base(LABOUR_HIGH)
                / Bids.fill(Bids.line(ceiling())).base(LABOUR),
            within(1e-7));
  }

  /** A ceiling by its area, without a condition: spraying is all its hours. */
  private static Object[] ceiling() {
    return new Object[] {
      InputColumn.SURFACE, "ceiling", InputColumn.COATING, "latex", InputColumn.AREA, 100
    };
  }

  @ParameterizedTest
  @CsvSource({
    // filled, with its Include: whether it counts, and whether Include leaves it out
    "true, '', true, false",
    "true, no, false, true",
    "true, yes, true, false",
    "false, '', false, false",
    "false, no, false, true"
  })
  void aLineIsLeftOutByItsIncludeBeItFilledOrNot(
      boolean area, String include, boolean counted, boolean leftOut) {
    List<Object> cells = new ArrayList<>();
    cells.addAll(List.of(InputColumn.SURFACE, "ceiling", InputColumn.COATING, "latex"));
    cells.addAll(List.of(InputColumn.INCLUDE, include));
    if (area) {
      cells.addAll(List.of(InputColumn.AREA, 100));
    }
    FilledLine filled = Bids.fill(Bids.line(cells.toArray()));

    assertThat(filled.isFilled()).isEqualTo(area);
    assertThat(filled.isCounted()).isEqualTo(counted);
    assertThat(filled.isLeftOut()).isEqualTo(leftOut);
    assertThat(filled.isSetUp()).isTrue();
    assertThat(Bids.fill(Bids.line(InputColumn.SURFACE, "ceiling")).isSetUp()).isFalse();
  }

  /** Trim of 3.9 in girth is narrower than 10 cm: three runs of 20 ft are 60 ft. */
  @Test
  void narrowWorkShowsItsLengthUnderTheIndianStandard() {
    Catalogue indian = Bids.settings("Show measuring", "yes", "Measuring rule", "IS 1200-13");
    Object[] trim = {
      InputColumn.SURFACE,
      "trim",
      InputColumn.COATING,
      "latex",
      InputColumn.LENGTH,
      20,
      InputColumn.GIRTH,
      3.9,
      InputColumn.COUNT,
      3
    };

    assertThat(Bids.fill(indian, Bids.line(trim)).base(FilledColumn.RUNNING)).isEqualTo(60);
    trim[7] = 4;
    assertThat(Bids.fill(indian, Bids.line(trim)).figures())
        .doesNotContainKey(FilledColumn.RUNNING)
        .containsKey(FilledColumn.GROSS);
  }
}
