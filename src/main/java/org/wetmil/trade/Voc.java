package org.wetmil.trade;

import org.wetmil.quantity.Require;

/**
 * Volatile organic compounds of a coating as it is sprayed, in grams to the litre, by the two ways
 * in which rules count them.
 */
public final class Voc {
  private Voc() {}

  /**
   * VOC less water and exempt solvents (published: 40 CFR 59.406 counts neither their mass nor
   * their volume; the equations themselves are images and their form is from memory). Water as
   * thinner changes nothing; a solvent adds its mass and its volume. The coating itself is taken to
   * hold no water where it is thinned with solvent.
   *
   * @param suppliedGL VOC less water of the coating as supplied, at least 0
   * @param thinnerShare thinner by volume of coating, at least 0
   * @param thinnerGL VOC in a litre of thinner, at least 0; 0 for water
   */
  public static double lessWater(double suppliedGL, double thinnerShare, double thinnerGL) {
    Require.notNegative("suppliedGL", suppliedGL);
    return thinnerGL == 0 ? suppliedGL : mixed(suppliedGL, thinnerShare, thinnerGL);
  }

  /**
   * VOC of the product ready to use, water included (published: 2004/42/CE limits are for that).
   *
   * @param suppliedGL VOC of the product as supplied, at least 0
   * @param thinnerShare thinner by volume of coating, at least 0
   * @param thinnerGL VOC in a litre of thinner, at least 0; 0 for water
   */
  public static double readyToUse(double suppliedGL, double thinnerShare, double thinnerGL) {
    Require.notNegative("suppliedGL", suppliedGL);
    return mixed(suppliedGL, thinnerShare, thinnerGL);
  }

  private static double mixed(double suppliedGL, double thinnerShare, double thinnerGL) {
    Require.notNegative("thinnerShare", thinnerShare);
    Require.notNegative("thinnerGL", thinnerGL);
    return (suppliedGL + thinnerShare * thinnerGL) / (1 + thinnerShare);
  }
}
