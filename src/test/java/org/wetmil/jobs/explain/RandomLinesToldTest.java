package org.wetmil.jobs.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.RandomBids;
import org.wetmil.estimate.explain.Explanation;
import org.wetmil.estimate.explain.Ingredients;
import org.wetmil.formula.Expr;
import org.wetmil.workbook.fill.beside.FilledCells;
import org.wetmil.workbook.read.TableLayout;

/**
 * Lines that nobody made up: each is told whole, in the width of the page, and adds up. A build
 * tells 500; {@code mvn test -Dtest=RandomLinesToldTest -Dtold.lines=20000} more.
 */
class RandomLinesToldTest {
  private static final int LINES = Integer.getInteger("told.lines", 500);
  private static final Asked WHOLE = new Asked("Bid", 5, Optional.empty());

  private static FilledCells.Place place(FilledLine filled) {
    Map<InputColumn, Integer> columns = new EnumMap<>(InputColumn.class);
    filled.line().values().keySet().forEach(column -> columns.put(column, column.ordinal()));
    TableLayout table =
        new TableLayout(
            3, 4, 4, columns, 0, 40, List.of(4), Map.of(), 41, Optional.empty(), Map.of());
    Map<FilledColumn, Integer> cells = new EnumMap<>(FilledColumn.class);
    filled.figures().keySet().forEach(column -> cells.put(column, 41 + column.ordinal()));
    return new FilledCells.Place(filled, table, cells);
  }

  @Test
  void everyLineIsToldAndItsSumsAddUp() {
    RandomBids bids = new RandomBids(21);
    int reckoned = 0;
    for (int i = 0; i < LINES; i++) {
      RandomBids.Sample sample = bids.next();
      FilledLine filled = sample.fill();
      Bid bid = Bids.bid(sample.catalogue(), sample.basis(), filled.line());
      Explanation explanation = Explanation.of(bid, filled);
      List<String> told =
          new ExplainText(
                  Path.of("bid.xlsx"), bid, place(filled), explanation, List.of(), i % 2 == 0)
              .lines(WHOLE, Optional.empty());

      assertThat(told).allMatch(line -> line.length() <= Page.WIDTH, sample.line().toString());
      for (ToldSteps.Told step : ToldSteps.of(told).steps()) {
        if (!step.put().isEmpty()) {
          PocketCalculator.Reckoned anew = PocketCalculator.reckon(step.put());
          assertThat(anew.value())
              .as(() -> step.name() + ": " + String.join("\n", told))
              .isCloseTo(step.result(), within(anew.slack()));
          reckoned++;
        }
      }
    }
    assertThat(reckoned).isGreaterThan(7 * LINES);
  }

  @Test
  void everyFigureOfALineIsToldByItself() {
    RandomBids bids = new RandomBids(22);
    for (int i = 0; i < 100; i++) {
      RandomBids.Sample sample = bids.next();
      FilledLine filled = sample.fill();
      Bid bid = Bids.bid(sample.catalogue(), sample.basis(), filled.line());
      Set<FilledColumn> figures = EnumSet.copyOf(filled.figures().keySet());
      // words: the whole line is told for them
      figures.remove(FilledColumn.COATING_USED);
      for (FilledColumn column : figures) {
        Explanation explanation = Explanation.of(bid, filled, column);
        List<String> told =
            new ExplainText(Path.of("bid.xlsx"), bid, place(filled), explanation, List.of(), true)
                .lines(WHOLE, Optional.of(column));

        assertThat(told).isNotEmpty();
        assertThat(explanation.steps())
            .as("%s", column)
            .anyMatch(step -> step.of() == Explanation.stepOf(column));
      }
    }
  }

  /** Few lines have a number under 0 in a formula, so formulas are made up that do. */
  @Test
  void formulasWithNumbersUnderZeroComeToTheSame() {
    RandomBids.Sample sample = new RandomBids(23).next();
    FilledLine filled = sample.fill();
    FormulaText text =
        FormulaText.numbers(new Ingredients(sample.catalogue(), filled, sample.basis()));
    Random random = new Random(24);
    for (int i = 0; i < LINES; i++) {
      Expr formula = formula(random, 2);
      String told = text.write(formula);
      if (Double.isFinite(formula.value())) {
        assertThat(PocketCalculator.reckon(told).value())
            .as(told)
            .isCloseTo(formula.value(), within(1e-9 * (1 + Math.abs(formula.value()))));
      }
    }
  }

  private static Expr formula(Random random, int deep) {
    if (deep == 0 || random.nextInt(6) == 0) {
      return new Expr.Num(random.nextInt(19) - 9);
    }
    Expr one = formula(random, deep - 1);
    Expr other = random.nextInt(5) == 0 ? one : formula(random, deep - 1);
    return switch (random.nextInt(4)) {
      case 0 -> Expr.sum(one, other);
      case 1 -> new Expr.Difference(one, other);
      case 2 -> Expr.times(one, other);
      default -> new Expr.Quotient(one, other);
    };
  }
}
