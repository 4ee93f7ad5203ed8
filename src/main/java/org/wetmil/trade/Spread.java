package org.wetmil.trade;

import org.wetmil.quantity.Require;

/** How far a gallon goes, and how many gallons an area takes; always of unthinned coating. */
public final class Spread {
  private Spread() {}

  /**
   * Theoretical spread: (231000/144) VS / DFT (derived; handbooks print the constant as 1604).
   * Thinner does not change it: the solids are those of the gallon bought.
   *
   * @param volumeSolids VS of the unthinned coating, share above 0 and at most 1
   * @param dryMil dry film in mil, above 0
   * @return ft² per US gallon without any loss
   */
  public static double theoreticalFt2PerGal(double volumeSolids, double dryMil) {
    Require.share("volumeSolids", volumeSolids);
    Require.positive("dryMil", dryMil);
    return Constants.SPREAD_FT2_MIL_PER_GAL.value() * volumeSolids / dryMil;
  }

  /**
   * Practical spread of one coat: theoretical x TE x (1 - waste) / roughness (derived).
   *
   * @param theoreticalFt2PerGal spread without loss in ft²/gal, above 0
   * @param transferEfficiency TE, share of the paint sprayed that ends on the surface, above 0 and
   *     at most 1
   * @param waste share of the paint bought that is never sprayed, at least 0 and below 1
   * @param roughness paint taken per flat area against a smooth one, above 0; smooth is 1
   * @return ft² per US gallon
   */
  public static double practicalFt2PerGal(
      double theoreticalFt2PerGal, double transferEfficiency, double waste, double roughness) {
    Require.positive("theoreticalFt2PerGal", theoreticalFt2PerGal);
    return theoreticalFt2PerGal * Yield.planned(transferEfficiency, waste, roughness);
  }

  /**
   * Paint for an area: area x coats / spread (derived).
   *
   * @param areaFt2 net area in ft², at least 0
   * @param coats number of coats, at least 0
   * @param ft2PerGal spread of one coat in ft²/gal, above 0
   * @return US gallons of unthinned coating
   */
  public static double gallons(double areaFt2, double coats, double ft2PerGal) {
    Require.notNegative("areaFt2", areaFt2);
    Require.notNegative("coats", coats);
    Require.positive("ft2PerGal", ft2PerGal);
    return areaFt2 * coats / ft2PerGal;
  }
}
