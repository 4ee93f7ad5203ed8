package org.wetmil.measure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "$34 | 34",
        "34 $ | 34",
        "€34,50 | 34.5",
        "34.50 EUR | 34.5",
        "USD 1,250 | 1250",
        "£34/h | 34",
        "$34 per hour | 34",
        "34 | 34",
        "1,250.75 | 1250.75"
      })
  void amountIsReadWithoutItsCurrency(String text, double amount) {
    assertThat(MoneyText.read(text, DecimalMark.UNKNOWN))
        .isInstanceOfSatisfying(
            Typed.Value.class, value -> assertThat(value.value()).isEqualTo(amount));
  }

  @ParameterizedTest
  @ValueSource(strings = {"thirty", "34 or 36", "$", "34 to 36", "about 34", "($34)", "$34/day"})
  void whatIsNoAmountIsRefused(String text) {
    assertThat(MoneyText.read(text, DecimalMark.UNKNOWN)).isInstanceOf(Typed.Refused.class);
  }
}
