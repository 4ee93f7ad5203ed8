package org.wetmil.reconcile.use;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class MoneyVarianceTest {

  /** Arithmetic by hand of the textbook split; common practice, no source. */
  @Test
  void theSplitIsThatOfStandardCosting() {
    MoneyVariance variance =
        MoneyVariance.of(110, new BigDecimal("9.50"), 100, new BigDecimal("10.00"));

    assertThat(variance.price()).isEqualTo("-55.00");
    assertThat(variance.quantity()).isEqualTo("100.00");
    assertThat(variance.total()).isEqualTo("45.00");
  }

  @Test
  void thePartsAddUpToTheCentWhateverTheFigures() {
    SplittableRandom random = new SplittableRandom(6);
    for (int i = 0; i < 10_000; i++) {
      BigDecimal paid =
          BigDecimal.valueOf(random.nextInt(1, 100_000), 2)
              .divide(BigDecimal.valueOf(random.nextInt(1, 50)), MathContext.DECIMAL64);
      BigDecimal bid = BigDecimal.valueOf(random.nextInt(1, 10_000), 2);
      double used = random.nextDouble(500);
      double planned = random.nextDouble(500);

      MoneyVariance variance = MoneyVariance.of(used, paid, planned, bid);

      assertThat(variance.price().add(variance.quantity())).isEqualTo(variance.total());
      assertThat(variance.total()).isEqualTo(variance.actual().subtract(variance.bid()));
      assertThat(variance.total().scale()).isEqualTo(2);
    }
  }
}
