package org.wetmil.quantity;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RequireTest {

  @Test
  void theEndsOfARangeBelongToItAsItsWordsSay() {
    assertThatCode(
            () -> {
              Require.positive("x", Double.MIN_VALUE);
              Require.notNegative("x", 0);
              Require.share("x", 1);
              Require.loss("x", 0);
              Require.between("x", -45, -45, 60);
              Require.between("x", 60, -45, 60);
            })
        .doesNotThrowAnyException();
    assertThatIllegalArgumentException().isThrownBy(() -> Require.positive("x", 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Require.notNegative("x", -1e-9));
    assertThatIllegalArgumentException().isThrownBy(() -> Require.share("x", 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Require.loss("x", 1));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNoNumberIsInNoRange(double value) {
    assertThatIllegalArgumentException().isThrownBy(() -> Require.positive("x", value));
    assertThatIllegalArgumentException().isThrownBy(() -> Require.notNegative("x", value));
    assertThatIllegalArgumentException().isThrownBy(() -> Require.finite("x", value));
    assertThatIllegalArgumentException().isThrownBy(() -> Require.share("x", value));
    assertThatIllegalArgumentException().isThrownBy(() -> Require.loss("x", value));
    assertThatIllegalArgumentException().isThrownBy(() -> Require.between("x", value, 0, 1));
  }
}
