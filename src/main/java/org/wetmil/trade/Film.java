package org.wetmil.trade;

import org.wetmil.quantity.Require;

/**
 * Wet and dry film, and the film that a gun lays.
 *
 * <p>Two losses are kept apart (house). Stick is the share of the paint aimed at the surface that
 * stays on it: it thins the film. Hit is the share of the paint sprayed that is aimed at the
 * surface: it slows the progress. Their product is the transfer efficiency.
 */
public final class Film {
  private static final double MIL_PER_IN = 1000;
  private static final double S_PER_MIN = 60;
  private static final double IN2_PER_FT2 = 144;

  private Film() {}

  /**
   * Wet film that dries to a given film: WFT = DFT (1 + t) / VS (published without thinner,
   * MIL-HDBK-1110; derived with it, since thinner carries no solids).
   *
   * @param dryMil dry film in mil, above 0
   * @param volumeSolids VS of the unthinned coating, share above 0 and at most 1
   * @param thinnerShare t, volume of thinner per volume of coating, at least 0
   * @return wet film of the thinned coating in mil
   */
  public static double wetMil(double dryMil, double volumeSolids, double thinnerShare) {
    Require.positive("dryMil", dryMil);
    return dryMil / thinnedSolids(volumeSolids, thinnerShare);
  }

  /**
   * Dry film that a wet film leaves: DFT = WFT VS / (1 + t); the inverse of {@link #wetMil}.
   *
   * @param wetMil wet film of the thinned coating in mil, above 0
   * @param volumeSolids VS of the unthinned coating, share above 0 and at most 1
   * @param thinnerShare t, volume of thinner per volume of coating, at least 0
   * @return dry film in mil
   */
  public static double dryMil(double wetMil, double volumeSolids, double thinnerShare) {
    Require.positive("wetMil", wetMil);
    return wetMil * thinnedSolids(volumeSolids, thinnerShare);
  }

  /**
   * Wet film laid by overlapping passes: WFT = Q stick / (v W (1 - o)) (derived, conservation of
   * volume). Assumes the fan is even across its width and the gun moves at one speed.
   *
   * @param flowGpm flow through the tip in US gallons per minute, at least 0
   * @param stick share of the paint aimed at the surface that stays, above 0 and at most 1
   * @param speedInPerS speed of the gun in in/s, above 0
   * @param fanIn width of the fan on the surface in inches, above 0
   * @param overlap share of each pass that the next one covers, at least 0 and below 1
   * @return wet film in mil
   */
  public static double laidWetMil(
      double flowGpm, double stick, double speedInPerS, double fanIn, double overlap) {
    Require.notNegative("flowGpm", flowGpm);
    Require.share("stick", stick);
    return stuckIn3PerS(flowGpm, stick) / sweptIn2PerS(speedInPerS, fanIn, overlap) * MIL_PER_IN;
  }

  /**
   * Speed of the gun that lays a wanted wet film; {@link #laidWetMil} solved for the speed.
   *
   * @param flowGpm flow through the tip in US gallons per minute, above 0
   * @param stick share of the paint aimed at the surface that stays, above 0 and at most 1
   * @param wetMil wanted wet film in mil, above 0
   * @param fanIn width of the fan on the surface in inches, above 0
   * @param overlap share of each pass that the next one covers, at least 0 and below 1
   * @return speed in in/s, not yet held into what a hand can do
   */
  public static double speedInPerS(
      double flowGpm, double stick, double wetMil, double fanIn, double overlap) {
    Require.positive("flowGpm", flowGpm);
    Require.share("stick", stick);
    Require.positive("wetMil", wetMil);
    return stuckIn3PerS(flowGpm, stick) / (wetMil / MIL_PER_IN * sweptIn2PerS(1, fanIn, overlap));
  }

  /**
   * A speed held into the band that is comfortable for a hand.
   *
   * @param speedInPerS wanted speed in in/s, above 0
   * @param slowestInPerS slow end of the band in in/s, above 0
   * @param fastestInPerS fast end of the band in in/s, at least the slow end
   * @return the speed, or the end of the band that it lies beyond, in in/s
   */
  public static double heldInPerS(double speedInPerS, double slowestInPerS, double fastestInPerS) {
    Require.positive("speedInPerS", speedInPerS);
    Require.positive("slowestInPerS", slowestInPerS);
    if (!(fastestInPerS >= slowestInPerS)) {
      throw new IllegalArgumentException(
          "fastestInPerS " + fastestInPerS + " is below slowestInPerS " + slowestInPerS);
    }
    return Math.max(slowestInPerS, Math.min(fastestInPerS, speedInPerS));
  }

  /**
   * Surface covered while the trigger is on: v W (1 - o) hit (derived).
   *
   * @param speedInPerS speed of the gun in in/s, above 0
   * @param fanIn width of the fan on the surface in inches, above 0
   * @param overlap share of each pass that the next one covers, at least 0 and below 1
   * @param hit share of the paint sprayed that is aimed at the surface, above 0 and at most 1
   * @return area in ft² per minute of trigger-on time
   */
  public static double areaFt2PerMin(double speedInPerS, double fanIn, double overlap, double hit) {
    Require.share("hit", hit);
    return sweptIn2PerS(speedInPerS, fanIn, overlap) * hit * S_PER_MIN / IN2_PER_FT2;
  }

  /**
   * Hit on narrow work, done in one stroke: the fan beyond the edges misses (house).
   *
   * @param hit share of the paint sprayed that is aimed at such a surface, above 0 and at most 1
   * @param workIn narrowest dimension of the work in inches, above 0
   * @param fanIn width of the fan on the surface in inches, above 0
   * @return hit x min(1, work / fan), a share
   */
  public static double narrowHit(double hit, double workIn, double fanIn) {
    Require.share("hit", hit);
    Require.positive("workIn", workIn);
    Require.positive("fanIn", fanIn);
    return hit * Math.min(1, workIn / fanIn);
  }

  private static double thinnedSolids(double volumeSolids, double thinnerShare) {
    Require.share("volumeSolids", volumeSolids);
    Require.notNegative("thinnerShare", thinnerShare);
    return volumeSolids / (1 + thinnerShare);
  }

  private static double stuckIn3PerS(double flowGpm, double stick) {
    return flowGpm * Constants.GALLON_IN3.value() / S_PER_MIN * stick;
  }

  private static double sweptIn2PerS(double speedInPerS, double fanIn, double overlap) {
    Require.positive("speedInPerS", speedInPerS);
    Require.positive("fanIn", fanIn);
    Require.loss("overlap", overlap);
    return speedInPerS * fanIn * (1 - overlap);
  }
}
