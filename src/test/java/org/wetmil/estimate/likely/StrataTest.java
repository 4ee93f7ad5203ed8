package org.wetmil.estimate.likely;

import static org.assertj.core.api.Assertions.assertThat;

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
