package org.wetmil.trade;

import org.wetmil.quantity.Require;
import org.wetmil.quantity.Unit;

/**
 * The temperature at which the moisture of the air settles on a surface.
 *
 * <p>Magnus formula over water, es = 6.112 exp(17.62 T / (243.12 + T)) hPa (published, attributed
 * to the WMO); other constant sets in use differ by under 0.02 C. Given as a figure only: how far
 * above it a surface must be is for the data sheet to say.
 */
public final class DewPoint {
  private DewPoint() {}

  /**
   * Dew point: 243.12 g / (17.62 - g), g = ln(RH / 100) + 17.62 T / (243.12 + T).
   *
   * @param airC temperature of the air in C, -45..60
   * @param humidityPercent relative humidity in percent, above 0 and at most 100
   * @return dew point in C
   */
  public static double celsius(double airC, double humidityPercent) {
    Require.between("airC", airC, -45, 60);
    Require.share("humidityPercent / 100", humidityPercent / 100);
    double a = Constants.MAGNUS_A.value();
    double b = Constants.MAGNUS_B_C.value();
    double g = Math.log(humidityPercent / 100) + a * airC / (b + airC);
    return b * g / (a - g);
  }

  /**
   * Dew point in Fahrenheit; see {@link #celsius}.
   *
   * @param airF temperature of the air in F, -49..140
   * @param humidityPercent relative humidity in percent, above 0 and at most 100
   * @return dew point in F
   */
  public static double fahrenheit(double airF, double humidityPercent) {
    double airC = Unit.FAHRENHEIT.to(Unit.CELSIUS, airF);
    return Unit.CELSIUS.to(Unit.FAHRENHEIT, celsius(airC, humidityPercent));
  }
}
