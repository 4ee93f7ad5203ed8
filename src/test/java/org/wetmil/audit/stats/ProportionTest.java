package org.wetmil.audit.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProportionTest {

  /**
   * Newcombe 1998, Two-sided confidence intervals for the single proportion, Statistics in Medicine
   * 17, table I, method 3 (from memory): four printed decimals.
   */
  @ParameterizedTest
  @CsvSource({
    "81, 263, 0.2553, 0.3662",
    "15, 148, 0.0624, 0.1605",
    "0, 20, 0.0000, 0.1611",
    "1, 29, 0.0061, 0.1718"
  })
  void intervalsAreTheScoreIntervalsOfAPublishedComparison(
      int count, int of, double low, double high) {
    Interval interval = Proportion.interval(count, of);
    assertThat(interval.low()).isCloseTo(low, within(0.00005));
    assertThat(interval.high()).isCloseTo(high, within(0.00005));
  }

  /** By the formula of the binomial distribution: powers of 0.2 and 0.8. */
  @ParameterizedTest
  @CsvSource({"0, 1, 0.2", "0, 3, 0.008", "1, 3, 0.104", "3, 3, 0.512", "16, 16, 0.028147"})
  void aChanceIsTheTailOfTheBinomialDistribution(int count, int of, double chance) {
    assertThat(Proportion.chance(count, of, 0.8)).isCloseTo(chance, within(1e-6));
  }

  @Test
  void allIsTheMirrorOfNone() {
    assertThat(Proportion.interval(20, 20).low())
        .isCloseTo(1 - Proportion.interval(0, 20).high(), within(1e-12));
    assertThat(Proportion.interval(20, 20).high()).isEqualTo(1);
  }

  @Test
  void ofNoneNothingIsKnown() {
    assertThat(Proportion.interval(0, 0).isKnown()).isFalse();
  }
}
