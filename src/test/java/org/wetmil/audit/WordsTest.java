package org.wetmil.audit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.stats.Interval;
import org.wetmil.quantity.UnitSystem;

class WordsTest {

  @Test
  void aRatioIsSaidInWholePercent() {
    assertThat(Words.over(1.124)).isEqualTo("12 % over");
    assertThat(Words.over(0.95)).isEqualTo("5 % under");
    assertThat(Words.over(1.004)).isEqualTo("on the estimate");
  }

  @Test
  void anIntervalSaysItsSideOnceWhereItHasOne() {
    assertThat(Words.likely(new Interval(1.07, 1.17))).isEqualTo("likely 7 to 17 %");
    assertThat(Words.likely(new Interval(0.83, 0.93))).isEqualTo("likely 7 to 17 %");
    assertThat(Words.likely(new Interval(0.97, 1.17)))
        .isEqualTo("likely between 3 % under and 17 % over");
    assertThat(Words.likely(Interval.UNKNOWN)).isEqualTo("too few bids to say how sure");
  }

  @Test
  void amountsAreInTheUnitsOfThePage() {
    assertThat(Words.amount(Measure.PAINT, 100, UnitSystem.US)).isEqualTo("100 gal");
    assertThat(Words.amount(Measure.PAINT, 100, UnitSystem.METRIC)).isEqualTo("379 L");
    assertThat(Words.amount(Measure.HOURS, 100, UnitSystem.METRIC)).isEqualTo("100 h");
  }
}
