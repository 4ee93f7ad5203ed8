package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FlowTest {

  @Test
  void paintFlowsLessThanWaterByTheRootOfItsDensity() {
    double water = Flow.gpm(0.8, 17, 2000, 1.0);
    assertThat(Flow.gpm(0.8, 17, 2000, 1.3) / water).isCloseTo(0.877, within(0.0005));
  }

  @Test
  void aBucketTestAtItsOwnPressureIsTheFlow() {
    assertThat(Flow.bucketTestGpm(0.31, 1800, 1800)).isEqualTo(0.31);
    assertThat(Flow.bucketTestGpm(0.31, 1000, 3000) / 0.31).isCloseTo(1.732, within(0.0005));
  }

  @Test
  void theCoefficientFromABucketTestGivesItsFlowBack() {
    double cd = Flow.dischargeCoefficient(0.27, 17, 2000, 1.3);
    assertThat(Flow.gpm(cd, 17, 2000, 1.3)).isCloseTo(0.27, within(1e-15));
  }

  @Test
  void thinnerMovesTheDensityTowardsItsOwn() {
    assertThat(Flow.thinnedKgPerL(1.3, 0, 1.0)).isEqualTo(1.3);
    assertThat(Flow.thinnedKgPerL(1.3, 1, 1.0)).isCloseTo(1.15, within(1e-12));
    assertThat(Flow.thinnedKgPerL(1.15, 0.1, 0.8)).isCloseTo(1.23 / 1.1, within(1e-12));
  }

  @Test
  void noPressureNoFlow() {
    assertThat(Flow.gpm(0.8, 17, 0, 1.3)).isZero();
  }
}
