package org.wetmil.trade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;

class DewPointTest {

  static List<Published.Row> celsius() {
    return Published.rows("dew-point.csv");
  }

  static List<Published.Row> fahrenheit() {
    return Published.rows("dew-point-chart.csv");
  }

  @ParameterizedTest
  @MethodSource("celsius")
  void theDewPointIsThatOfTheFormula(Published.Row row) {
    row.check(DewPoint.celsius(row.number("airC"), row.number("humidityPercent")));
  }

  @ParameterizedTest
  @MethodSource("fahrenheit")
  void theDewPointInFahrenheitIsNearTheChart(Published.Row row) {
    row.check(DewPoint.fahrenheit(row.number("airF"), row.number("humidityPercent")));
  }

  /** Two other sets of Magnus constants in use (seen in public texts) agree within 0.02 C. */
  @ParameterizedTest
  @CsvSource({"17.625, 243.04", "17.27, 237.7"})
  void otherConstantsInUseGiveTheSame(double a, double b) {
    for (Published.Row row : celsius()) {
      double airC = row.number("airC");
      double g = Math.log(row.number("humidityPercent") / 100) + a * airC / (b + airC);
      assertThat(DewPoint.celsius(airC, row.number("humidityPercent")))
          .as("%s", row)
          .isCloseTo(b * g / (a - g), within(0.02));
    }
  }

  @Test
  void inSaturatedAirTheDewPointIsTheAir() {
    assertThat(DewPoint.celsius(18, 100)).isCloseTo(18, within(1e-12));
  }

  @Test
  void humidityAboveAHundredIsAFault() {
    assertThatIllegalArgumentException().isThrownBy(() -> DewPoint.celsius(18, 101));
    assertThatIllegalArgumentException().isThrownBy(() -> DewPoint.celsius(70, 50));
  }
}
