package org.wetmil.audit.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The edges, where there are too few numbers or none differs. */
class StatisticsTest {

  @Test
  void twoNumbersGiveNoInterval() {
    assertThat(Sample.of(0.1, 0.2).interval()).isEqualTo(Interval.UNKNOWN);
    assertThat(Sample.of(0.1, 0.2, 0.3).interval().isKnown()).isTrue();
  }

  @Test
  void numbersThatAreHalfAboutTheMatterCountAsHalf() {
    double[] halves = {0.5, 0.5, 0.5, 0.5};
    Sample sample = Sample.ofParts(new double[] {0.1, 0.2, 0.3, 0.4}, halves);
    assertThat(sample.weight()).isEqualTo(2);
    assertThat(sample.mean()).isCloseTo(0.25, within(1e-15));
    assertThat(sample.median()).isCloseTo(0.25, within(1e-15));
    assertThat(sample.interval().isKnown()).isFalse();
  }

  @Test
  void theMedianOfNothingIsNotANumber() {
    assertThat(Sample.of().median()).isNaN();
    assertThat(Sample.of().mean()).isNaN();
  }

  @Test
  void equalNumbersGiveAnIntervalWithoutWidth() {
    assertThat(Sample.of(0.1, 0.1, 0.1).interval().high()).isCloseTo(0.1, within(1e-15));
  }

  @Test
  void tooFewOnEitherSideGiveNoDifference() {
    Difference difference = Difference.between(Sample.of(0, 1, 2), Sample.of(0, 1));
    assertThat(difference.interval().isKnown()).isFalse();
    assertThat(difference.chance()).isNaN();
  }

  @Test
  void samplesWithoutScatterDifferForCertainOrNotAtAll() {
    Sample zeros = Sample.of(0, 0, 0);
    assertThat(Difference.between(zeros, zeros).chance()).isEqualTo(1);
    assertThat(Difference.between(Sample.of(1, 1, 1), zeros).chance()).isEqualTo(0);
  }

  @Test
  void amongFiveNumbersNoneIsOdd() {
    assertThat(Outliers.scores(0, 0.01, 0.02, 0.01, 9)).containsOnly(0);
    assertThat(Outliers.scores(0, 0.01, 0.02, 0.01, 0, 9)[5]).isGreaterThan(3.5);
  }

  @Test
  void equalNumbersHaveNoOutlier() {
    assertThat(Outliers.scores(1, 1, 1, 1, 1, 1)).containsOnly(0);
  }

  @Test
  void fiveJobsOrOneDateShowNoDrift() {
    assertThat(Trend.of(new double[] {0, 1, 2, 3, 4}, new double[] {0, 1, 2, 3, 4}))
        .isEqualTo(Trend.UNKNOWN);
    assertThat(Trend.of(new double[6], new double[] {0, 1, 2, 3, 4, 5})).isEqualTo(Trend.UNKNOWN);
  }

  @Test
  void numbersThatNeverChangeDoNotDrift() {
    assertThat(Trend.of(new double[] {0, 1, 2, 3, 4, 5}, new double[6])).isEqualTo(new Trend(0, 1));
  }

  @Test
  void aGroupThatCouldNotBeTestedIsNotCountedAsTested() {
    assertThat(FalseAlarms.adjusted(0.02, Double.NaN, 0.04))
        .satisfies(q -> assertThat(q[0]).isCloseTo(0.04, within(1e-15)))
        .satisfies(q -> assertThat(q[1]).isNaN())
        .satisfies(q -> assertThat(q[2]).isCloseTo(0.04, within(1e-15)));
  }

  @Test
  void groupsThatDifferLessThanTheirScatterHaveNoVarianceBetween() {
    OneWay oneWay = OneWay.of(List.of(Sample.of(-1, 1, 0), Sample.of(-1, 1, 0.1)));
    assertThat(oneWay.between()).isZero();
    assertThat(oneWay.within()).isPositive();
  }

  @Test
  void oneGroupOrOneNumberEachTellsNothingOfVariance() {
    assertThat(OneWay.of(List.of(Sample.of(1, 2, 3))).between()).isNaN();
    assertThat(OneWay.of(List.of(Sample.of(1), Sample.of(2))).between()).isNaN();
  }

  @Test
  void twoPointsGiveALineWithoutAnInterval() {
    Line line = Line.through(new double[] {0, 1}, new double[] {1, 3});
    assertThat(line.slope()).isEqualTo(2);
    assertThat(line.slopeInterval().isKnown()).isFalse();
  }
}
