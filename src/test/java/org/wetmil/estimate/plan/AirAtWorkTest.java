package org.wetmil.estimate.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.Bids;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.DewPoint;

class AirAtWorkTest {

  @ParameterizedTest
  @CsvSource({"70, 0.65, 62", "50, 0.80, 50", "95, 0.55, 100", "33, 1, 40"})
  void formulaIsTheLawOfTheDewPointInBothFamilies(double airF, double humidity, double surfaceF) {
    Catalogue catalogue = air(airF, humidity, surfaceF);
    double dewF = DewPoint.fahrenheit(airF, humidity * 100);
    AirAtWork us = AirAtWork.of(catalogue, UnitSystem.US).orElseThrow();
    AirAtWork metric = AirAtWork.of(catalogue, UnitSystem.METRIC).orElseThrow();

    assertThat(us.dewPoint().value()).isCloseTo(dewF, within(1e-9));
    assertThat(metric.dewPoint().value()).isCloseTo((dewF - 32) / 1.8, within(1e-9));
    assertThat(us.above().value()).isCloseTo(surfaceF - dewF, within(1e-9));
    assertThat(metric.above().value()).isCloseTo((surfaceF - dewF) / 1.8, within(1e-9));
    assertThat(us.wanted().value()).isEqualTo(5);
    assertThat(metric.wanted().value()).isCloseTo(5 / 1.8, within(1e-12));
    assertThat(us.isEnough()).isEqualTo(surfaceF - dewF >= 5).isEqualTo(metric.isEnough());
  }

  @Test
  void nothingIsJudgedThatIsNotStated() {
    assertThat(AirAtWork.of(Catalogue.builtIn(), UnitSystem.US)).isEmpty();
    assertThat(AirAtWork.of(Bids.settings("Air temperature", 70, "Humidity", 0.5), UnitSystem.US))
        .isEmpty();
    assertThat(AirAtWork.of(air(70, 0, 60), UnitSystem.US)).isEmpty();
  }

  private static Catalogue air(double airF, double humidity, double surfaceF) {
    return Bids.settings(
        "Air temperature", airF, "Humidity", humidity, "Surface temperature", surfaceF);
  }
}
