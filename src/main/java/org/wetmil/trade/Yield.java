package org.wetmil.trade;

import org.wetmil.quantity.Require;

/** The share of the paint used that is found again as film on the surface. */
public final class Yield {
  private Yield() {}

  /**
   * Paint that a film holds, without any loss: area x coats x DFT / ((231000/144) VS) (derived).
   *
   * @param areaFt2 area in ft², at least 0
   * @param coats number of coats, at least 0
   * @param dryMil dry film of one coat in mil, above 0
   * @param volumeSolids VS of the unthinned coating, share above 0 and at most 1
   * @return US gallons of unthinned coating
   */
  public static double theoreticalGallons(
      double areaFt2, double coats, double dryMil, double volumeSolids) {
    return Spread.gallons(areaFt2, coats, Spread.theoreticalFt2PerGal(volumeSolids, dryMil));
  }

  /**
   * Yield found on a job: theoretical / used.
   *
   * @param theoreticalGallons paint that the film holds in US gallons, at least 0
   * @param usedGallons paint used in US gallons, above 0
   * @return a ratio; over 1 cannot be with the film and area stated, and the caller says so
   */
  public static double found(double theoreticalGallons, double usedGallons) {
    Require.notNegative("theoreticalGallons", theoreticalGallons);
    Require.positive("usedGallons", usedGallons);
    return theoreticalGallons / usedGallons;
  }

  /**
   * Yield that a bid plans with: TE (1 - waste) / roughness.
   *
   * @param transferEfficiency TE, share above 0 and at most 1
   * @param waste share of the paint bought that is never sprayed, at least 0 and below 1
   * @param roughness paint taken per flat area against a smooth one, above 0; smooth is 1
   * @return a share
   */
  public static double planned(double transferEfficiency, double waste, double roughness) {
    Require.share("transferEfficiency", transferEfficiency);
    Require.loss("waste", waste);
    Require.positive("roughness", roughness);
    return transferEfficiency * (1 - waste) / roughness;
  }

  /**
   * Transfer efficiency that a yield implies; {@link #planned} solved for TE.
   *
   * @param yield yield found on the job, above 0
   * @param waste share of the paint bought that is never sprayed, at least 0 and below 1
   * @param roughness paint taken per flat area against a smooth one, above 0; smooth is 1
   * @return a ratio; over 1 cannot be, and the caller says so
   */
  public static double impliedTransferEfficiency(double yield, double waste, double roughness) {
    Require.positive("yield", yield);
    Require.loss("waste", waste);
    Require.positive("roughness", roughness);
    return yield * roughness / (1 - waste);
  }
}
