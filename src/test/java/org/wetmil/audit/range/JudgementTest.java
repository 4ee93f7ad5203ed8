package org.wetmil.audit.range;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.estimate.likely.Inside;
import org.wetmil.estimate.likely.Spreads;

class JudgementTest {

  @ParameterizedTest
  @CsvSource({
    // few bids say nothing unless they are far off
    "4, 5, TOO_FEW",
    "0, 4, TOO_NARROW",
    // one job in five comes out outside of the best of ranges
    "0, 1, TOO_FEW",
    "1, 3, TOO_FEW",
    "2, 5, TOO_FEW",
    "0, 3, TOO_NARROW",
    "1, 1, TOO_FEW",
    "10, 10, TOO_FEW",
    // just inside and just past 80 %
    "13, 22, TOO_NARROW",
    "14, 22, TOO_FEW",
    "16, 22, ABOUT_RIGHT",
    "15, 15, TOO_FEW",
    "16, 16, TOO_WIDE",
    "80, 100, ABOUT_RIGHT",
    "71, 100, TOO_NARROW",
    "87, 100, ABOUT_RIGHT",
    "88, 100, TOO_WIDE"
  })
  void aCountIsJudgedByWhatItRulesOut(int inside, int of, Judgement expected) {
    assertThat(Judgement.of(new Inside(0, inside, of - inside))).isEqualTo(expected);
  }

  /** Areas of the standard normal curve, as any table prints them. */
  @ParameterizedTest
  @CsvSource({"1, 0.8000", "0.5, 0.4783", "2, 0.9896"})
  void whatComesOutInsideOfOtherWidthsIsAnAreaUnderTheNormalCurve(double width, double share) {
    assertThat(Spreads.insideOf(width)).isCloseTo(share, within(0.0001));
  }
}
