package org.wetmil.audit.past;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.audit.PastBids.line;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class StatedActualsTest {
  private static final double NONE = Double.NaN;
  private static final PastLine WALLS = line("latex", "walls", 10);
  private static final PastLine CEILING = line("latex", "ceiling", 5);
  private static final PastLine FLOOR = line("oil-based", "floor", 4);
  private static final List<PastLine> LINES = List.of(WALLS, CEILING, FLOOR);

  @Test
  void aLinesOwnFigureWinsAndTheRestTakesWhatIsLeft() {
    assertThat(stated(List.of(11.0, NONE, NONE), Map.of(), 21).actuals())
        .containsExactly(
            new Actual(Measure.PAINT, List.of(WALLS), 11),
            new Actual(Measure.PAINT, List.of(CEILING, FLOOR), 10));
  }

  @Test
  void aCoatingsFigureWinsOverTheJobs() {
    assertThat(stated(List.of(NONE, NONE, NONE), Map.of("latex", 16.0), 20).actuals())
        .containsExactly(
            new Actual(Measure.PAINT, List.of(WALLS, CEILING), 16),
            new Actual(Measure.PAINT, List.of(FLOOR), 4));
  }

  @Test
  void aLinesFigureIsTakenOffItsCoatingsAndNotTwiceOffTheJobs() {
    assertThat(stated(List.of(11.0, NONE, NONE), Map.of("latex", 16.0), 20).actuals())
        .containsExactly(
            new Actual(Measure.PAINT, List.of(WALLS), 11),
            new Actual(Measure.PAINT, List.of(CEILING), 5),
            new Actual(Measure.PAINT, List.of(FLOOR), 4));
  }

  @Test
  void withoutAJobsFigureLinesThatStateNoneAreNotCompared() {
    assertThat(stated(List.of(11.0, NONE, NONE), Map.of(), NONE).actuals())
        .containsExactly(new Actual(Measure.PAINT, List.of(WALLS), 11));
  }

  @Test
  void theLinesSumIsComparedWithTheJobOnlyWhenEveryLineStatesOne() {
    assertThat(stated(List.of(11.0, 5.0, 4.0), Map.of(), 19).linesOverJob())
        .isCloseTo(20.0 / 19, within(1e-12));
    assertThat(stated(List.of(11.0, NONE, 4.0), Map.of(), 19).linesOverJob()).isNaN();
    assertThat(stated(List.of(11.0, 5.0, 4.0), Map.of(), NONE).linesOverJob()).isNaN();
  }

  private static StatedActuals stated(
      List<Double> byLine, Map<String, Double> byCoating, double job) {
    return new StatedActuals(Measure.PAINT, LINES, byLine, byCoating, job);
  }
}
