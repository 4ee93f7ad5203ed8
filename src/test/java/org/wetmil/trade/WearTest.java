package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;

class WearTest {

  static List<Published.Row> rises() {
    return Published.rows("tip-wear.csv");
  }

  @ParameterizedTest
  @MethodSource("rises")
  void flowRisesWithTheSquareOfTheDiameter(Published.Row row) {
    double asNew = Flow.theoreticalGpm(row.number("fromThou"), 2000, 1.3);
    row.check(Flow.theoreticalGpm(row.number("toThou"), 2000, 1.3) / asNew - 1);
  }

  @Test
  void wearGoesWithThePaintSprayedAndReachesTheLimitAtTheEndOfItsLife() {
    assertThat(Wear.expectedFlowRise(0, 40)).isZero();
    assertThat(Wear.expectedFlowRise(16, 40)).isCloseTo(0.10, within(1e-15));
    assertThat(Wear.expectedFlowRise(40, 40)).isEqualTo(0.25);
  }
}
