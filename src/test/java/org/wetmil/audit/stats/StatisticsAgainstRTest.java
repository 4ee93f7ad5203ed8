package org.wetmil.audit.stats;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class StatisticsAgainstRTest {

  @Test
  void aSampleHasItsMeanIntervalAndMedian() {
    Worked worked = Worked.example("sample");
    Sample sample = Sample.of(worked.series("x"));
    worked.check("mean", sample.mean());
    worked.check("variance", sample.variance());
    worked.check("low", sample.interval().low());
    worked.check("high", sample.interval().high());
    worked.check("median", sample.median());
  }

  @Test
  void samplesThatScatterDifferentlyAreComparedByWelch() {
    Worked worked = Worked.example("difference");
    Difference difference =
        Difference.between(
            Sample.of(worked.series("y")), Sample.of(Worked.example("sample").series("x")));
    worked.check("mean", difference.mean());
    worked.check("low", difference.interval().low());
    worked.check("high", difference.interval().high());
    worked.check("chance", difference.chance());
  }

  @Test
  void samplesOfTheSameUnitsScatterAsTheirPairsDo() {
    Worked worked = Worked.example("paired");
    int[] units = {0, 1, 2, 3, 4};
    Difference difference =
        Difference.between(
            Sample.of(Worked.example("difference").series("y")),
            Sample.of(worked.series("x")),
            units,
            units);
    worked.check("mean", difference.mean());
    // The t is that of half of Welch's degrees of freedom, so the error is compared by itself.
    double half = (difference.interval().high() - difference.interval().low()) / 2;
    double one = Sample.of(worked.series("x")).variance();
    double two = Sample.of(Worked.example("difference").series("y")).variance();
    double welch = 4 * Math.pow(one + two, 2) / (one * one + two * two);
    worked.check("error", half / Sample.quantile(welch / 2));
  }

  @Test
  void anOutlierIsToldByItsModifiedScore() {
    Worked worked = Worked.example("outliers");
    double[] scores = Outliers.scores(worked.series("x"));
    worked.checkSeries("score", scores);
    assertThat(Arrays.stream(scores).filter(Outliers::isOutlier)).hasSize(1);
  }

  @Test
  void whereOverHalfAreEqualTheMeanDistanceStandsIn() {
    Worked worked = Worked.example("outliers-tied");
    worked.checkSeries("score", Outliers.scores(worked.series("x")));
  }

  @Test
  void aDriftIsToldWithTiesInTimesAndNumbers() {
    Worked worked = Worked.example("trend");
    Trend trend = Trend.of(worked.series("time"), worked.series("x"));
    worked.check("slope", trend.slope());
    worked.check("chance", trend.chance());
  }

  @Test
  void manyLooksRaiseTheBarByBenjaminiAndHochberg() {
    Worked worked = Worked.example("false-alarms");
    worked.checkSeries("adjusted", FalseAlarms.adjusted(worked.series("chance")));
  }

  @Test
  void varianceSplitsIntoWithinAndBetweenGroups() {
    Worked worked = Worked.example("one-way");
    double[] group = worked.series("group");
    double[] x = worked.series("x");
    OneWay oneWay =
        OneWay.of(
            List.of(1, 2, 3).stream()
                .map(
                    g ->
                        Sample.of(
                            IntStream.range(0, x.length)
                                .filter(i -> group[i] == g)
                                .mapToDouble(i -> x[i])
                                .toArray()))
                .toList());
    worked.check("within", oneWay.within());
    worked.check("between", oneWay.between());
  }

  @Test
  void aRegressionHasItsSlopeAndInterval() {
    Worked worked = Worked.example("regression");
    Line line = Line.through(worked.series("estimate"), worked.series("actual"));
    worked.check("intercept", line.intercept());
    worked.check("slope", line.slope());
    worked.check("low", line.slopeInterval().low());
    worked.check("high", line.slopeInterval().high());
  }
}
