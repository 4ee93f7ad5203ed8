package org.wetmil.trade;

import org.wetmil.quantity.Require;
import org.wetmil.quantity.Unit;

/**
 * What comes through an orifice under pressure.
 *
 * <p>Q = Cd (pi/4) d² sqrt(2 dP / rho) (published, the orifice equation). Assumes a round hole of
 * the diameter marked, open air beyond it, and a coating whose viscosity does not count at the
 * shear in the tip. The real hole of a fan tip is a cat's eye; Cd takes that up, which is why a
 * bucket test is better than any table.
 */
public final class Flow {
  private Flow() {}

  /**
   * Flow through an orifice.
   *
   * @param dischargeCoefficient Cd, above 0 and at most 1; 1 gives the theoretical flow
   * @param orificeThou diameter in thousandths of an inch, above 0
   * @param gunPsi pressure at the tip in psi, at least 0
   * @param densityKgPerL density of the coating as sprayed in kg/L, above 0
   * @return flow in US gallons per minute
   */
  public static double gpm(
      double dischargeCoefficient, double orificeThou, double gunPsi, double densityKgPerL) {
    Require.share("dischargeCoefficient", dischargeCoefficient);
    Require.positive("orificeThou", orificeThou);
    double diameterM = Unit.THOU.to(Unit.METRE, orificeThou);
    double areaM2 = Math.PI / 4 * diameterM * diameterM;
    double speedMPerS = jetMPerS(gunPsi, densityKgPerL);
    return dischargeCoefficient * areaM2 * speedMPerS / Unit.GALLON_PER_MINUTE.si();
  }

  /**
   * Flow that an ideal orifice (Cd 1) would pass; the upper bound of {@link #gpm}.
   *
   * @param orificeThou diameter in thousandths of an inch, above 0
   * @param gunPsi pressure at the tip in psi, at least 0
   * @param densityKgPerL density of the coating as sprayed in kg/L, above 0
   * @return flow in US gallons per minute
   */
  public static double theoreticalGpm(double orificeThou, double gunPsi, double densityKgPerL) {
    return gpm(1, orificeThou, gunPsi, densityKgPerL);
  }

  /**
   * Flow at another pressure than that of a bucket test, which went with its square root (derived
   * from the orifice equation). Same tip, same coating, both pressures at the tip.
   *
   * @param testGpm measured flow in US gallons per minute, above 0
   * @param testPsi pressure at the tip during the test in psi, above 0
   * @param gunPsi pressure at the tip now in psi, at least 0
   * @return flow in US gallons per minute
   */
  public static double bucketTestGpm(double testGpm, double testPsi, double gunPsi) {
    Require.positive("testGpm", testGpm);
    Require.positive("testPsi", testPsi);
    Require.notNegative("gunPsi", gunPsi);
    return testGpm * Math.sqrt(gunPsi / testPsi);
  }

  /**
   * The discharge coefficient that a bucket test shows (derived). Over 1 cannot be: a worn tip, a
   * wrong gauge or a wrong mark; the caller says so.
   *
   * @param testGpm measured flow in US gallons per minute, above 0
   * @param orificeThou diameter in thousandths of an inch, above 0
   * @param testPsi pressure at the tip during the test in psi, above 0
   * @param densityKgPerL density of the coating as sprayed in kg/L, above 0
   * @return Cd as a ratio
   */
  public static double dischargeCoefficient(
      double testGpm, double orificeThou, double testPsi, double densityKgPerL) {
    Require.positive("testGpm", testGpm);
    Require.positive("testPsi", testPsi);
    return testGpm / theoreticalGpm(orificeThou, testPsi, densityKgPerL);
  }

  /**
   * Density of a thinned coating: (rho + t rho of the thinner) / (1 + t) (derived; volumes are
   * taken to add up).
   *
   * @param coatingKgPerL density of the coating as bought in kg/L, above 0
   * @param thinnerShare t, volume of thinner per volume of coating, at least 0
   * @param thinnerKgPerL density of the thinner in kg/L, above 0
   * @return density of the mix in kg/L
   */
  public static double thinnedKgPerL(
      double coatingKgPerL, double thinnerShare, double thinnerKgPerL) {
    Require.positive("coatingKgPerL", coatingKgPerL);
    Require.notNegative("thinnerShare", thinnerShare);
    Require.positive("thinnerKgPerL", thinnerKgPerL);
    return (coatingKgPerL + thinnerShare * thinnerKgPerL) / (1 + thinnerShare);
  }

  private static double jetMPerS(double gunPsi, double densityKgPerL) {
    Require.notNegative("gunPsi", gunPsi);
    Require.positive("densityKgPerL", densityKgPerL);
    double pascal = gunPsi * Unit.PSI.si();
    double kgPerM3 = densityKgPerL * Unit.KILOGRAM_PER_LITRE.si();
    return Math.sqrt(2 * pascal / kgPerM3);
  }
}
