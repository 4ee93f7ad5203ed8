package org.wetmil.trade;

/** How far a tip has worn. For findings only: the figures of a bid use the mark on the tip. */
public final class Wear {
  /** One orifice size up, in thousandths of an inch (practice: the odd sizes in stock). */
  private static final double ONE_SIZE_THOU = 2;

  private Wear() {}

  /**
   * Rise in flow as an orifice wears from one diameter to another: (to / from)² - 1 (derived from
   * the orifice equation).
   *
   * @param fromThou diameter when new in thousandths of an inch, above 0
   * @param toThou diameter now in thousandths of an inch, above 0
   * @return rise as a share of the flow when new
   */
  public static double flowRise(double fromThou, double toThou) {
    Require.positive("fromThou", fromThou);
    Require.positive("toThou", toThou);
    double ratio = toThou / fromThou;
    return ratio * ratio - 1;
  }

  /**
   * Rise in flow when a tip has worn by one size, two thousandths.
   *
   * @param orificeThou diameter when new in thousandths of an inch, above 0
   * @return rise as a share of the flow when new
   */
  public static double oneSizeFlowRise(double orificeThou) {
    return flowRise(orificeThou, orificeThou + ONE_SIZE_THOU);
  }

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
