package org.wetmil.trade;

import org.wetmil.quantity.Require;

/** How far a tip has worn. For findings only: the figures of a bid use the mark on the tip. */
public final class Wear {
  private Wear() {}

  /**
   * Flow above the mark after so much paint: 25 % x gallons sprayed / life (house, taken as linear;
   * a tip is at the end of its life when it passes 25 % more than its mark).
   *
   * @param gallonsSprayed paint through this tip in US gallons, at least 0
   * @param lifeGallons life of a tip in this coating in US gallons, above 0
   * @return rise as a share of the flow when new
   */
  public static double expectedFlowRise(double gallonsSprayed, double lifeGallons) {
    Require.notNegative("gallonsSprayed", gallonsSprayed);
    Require.positive("lifeGallons", lifeGallons);
    return Constants.REPLACE_FLOW_RISE.value() * gallonsSprayed / lifeGallons;
  }
}
