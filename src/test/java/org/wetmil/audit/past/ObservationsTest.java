package org.wetmil.audit.past;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.audit.PastBids.line;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.wetmil.audit.PastBids;

class ObservationsTest {

  @Test
  void aFigureOfTheWholeJobEntersItsCoatingsByTheirSharesOfTheEstimate() {
    List<PastLine> lines = List.of(line("latex", "walls", 9), line("primer", "walls", 3));
    Observations paint =
        Observations.of(Measure.PAINT, new PastBids().byJob("A", lines, 1.1, 1).list());
    assertThat(paint.list()).hasSize(1);
    assertThat(paint.list().get(0).shares().get(GroupedBy.COATING))
        .isEqualTo(Map.of("latex", 0.75, "primer", 0.25));
    assertThat(paint.list().get(0).logRatio()).isCloseTo(Math.log(1.1), within(1e-12));
  }

  @Test
  void aFactorAlreadyAppliedIsDividedOut() {
    PastLine line =
        new PastLine("latex", "walls", "", 12, 6, 3, new PastLine.Factors(1.2, 1.5), Set.of());
    assertThat(line.estimated(Measure.PAINT)).isCloseTo(10, within(1e-12));
    assertThat(line.estimated(Measure.HOURS)).isCloseTo(4, within(1e-12));
  }

  @Test
  void anOutcomeOrEstimateThatIsNotAboveZeroIsListedAndNotUsed() {
    PastLine good = line("latex", "walls", 10);
    PastLine empty = line("latex", "walls", Double.NaN);
    PastBids bids =
        new PastBids()
            .bid("A", List.of(good), List.of(new Actual(Measure.PAINT, List.of(good), 0)))
            .bid("A", List.of(good), List.of(new Actual(Measure.PAINT, List.of(good), Double.NaN)))
            .bid("A", List.of(empty), List.of(new Actual(Measure.PAINT, List.of(empty), 3)))
            .bid("A", List.of(good), List.of(new Actual(Measure.PAINT, List.of(good), 11)));
    Observations paint = Observations.of(Measure.PAINT, bids.list());
    assertThat(paint.list()).extracting(Observation::bid).containsExactly(3);
    assertThat(paint.unused())
        .extracting(Observations.Unused::bid)
        .containsExactly("job 1", "job 2", "job 3");
    assertThat(paint.unused())
        .extracting(Observations.Unused::reason)
        .containsExactly("no outcome above 0", "no outcome above 0", "no estimate above 0");
  }

  @Test
  void bidsFallIntoThirdsByTheirEstimate() {
    PastBids bids = new PastBids();
    for (double gallons : new double[] {30, 5, 12, 60, 8, 20}) {
      bids.byJob("A", List.of(line("latex", "walls", gallons)), 1, 1);
    }
    assertThat(Observations.of(Measure.PAINT, bids.list()).list())
        .extracting(one -> one.shares().get(GroupedBy.SIZE).keySet().iterator().next())
        .containsExactly(
            "largest third",
            "smallest third",
            "middle third",
            "largest third",
            "smallest third",
            "middle third");
  }

  @Test
  void aCrewIsSplitByHeightOnlyWhereItWorkedAtMoreThanOne() {
    PastLine low = at("up to 10 ft");
    PastLine high = at("over 20 ft");
    PastBids bids =
        new PastBids()
            .byJob("A", List.of(low), 1, 1)
            .byJob("A", List.of(high), 1, 1)
            .byJob("B", List.of(high), 1, 1);
    Observations paint = Observations.of(Measure.PAINT, bids.list());
    assertThat(paint.groups(GroupedBy.CREW_AT_HEIGHT))
        .containsExactly("A at heights over 20 ft", "A at heights up to 10 ft");
    assertThat(paint.crewOf("A at heights over 20 ft")).isEqualTo("A");
  }

  private static PastLine at(String height) {
    return new PastLine("latex", "walls", height, 10, 5, 3, PastLine.Factors.NONE, Set.of());
  }
}
