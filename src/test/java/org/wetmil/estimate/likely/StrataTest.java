package org.wetmil.estimate.likely;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StrataTest {
  /** The platform's generator is of the same published algorithm. */
  @Test
  void theOrderIsAShuffleByThePlatformsGenerator() {
    for (long seed : new long[] {0, 1, -1, 20260101, Strata.seed("walls"), Long.MIN_VALUE}) {
      assertThat(new Strata(5_000).order(seed)).as("seed %d", seed).isEqualTo(shuffled(seed));
    }
  }

  @Test
  void valuesAreTheMiddlesOfEquallyLikelyParts() {
    double[] values = new Strata(5).lognormal(0.5, 0.2);

    // standard normal deviate of 0.9, to five digits as tables print it
    assertThat(Math.log(values[4])).isCloseTo(0.5 + 0.2 * 1.28155, within(1e-6));
    assertThat(Math.log(values[2])).isCloseTo(0.5, within(1e-12));
    assertThat(Math.log(values[0])).isCloseTo(0.5 - 0.2 * 1.28155, within(1e-6));
  }

  @Test
  void scoresAreDeviatesOfTheMiddles() {
    // standard normal deviates of 0.125, 0.375, 0.625 and 0.875, as tables print them
    assertThat(Strata.scores(4))
        .containsExactly(new double[] {-1.15035, -0.31864, 0.31864, 1.15035}, within(1e-5));
  }

  @Test
  void drawAtAShareIsThatOfItsRank() {
    double[] draws = {50, 10, 40, 20, 30};

    assertThat(Strata.drawAt(draws, 0.4, -1)).isEqualTo(3);
    assertThat(Strata.drawAt(draws, 0.4, 0)).isEqualTo(4);
    assertThat(Strata.drawAt(draws, 0.8, 0)).isZero();
    // of five values the i-th stands for (i - 0.5) / 5
    assertThat(Strata.quantile(draws, 0.1)).isEqualTo(10);
    assertThat(Strata.quantile(draws, 0.5)).isEqualTo(30);
    assertThat(Strata.quantile(draws, 0.6)).isCloseTo(35, within(1e-12));
  }

  private static short[] shuffled(long seed) {
    short[] order = new short[5_000];
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 1; i < order.length; i++) {
      int other = random.nextInt(i + 1);
      order[i] = order[other];
      order[other] = (short) i;
    }
    return order;
  }
}
