package org.wetmil.estimate;

import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Sprayer;

/**
 * The pressure that a line is sprayed with.
 *
 * @param psi the line's own where it is inside what airless spraying takes, else the coating's
 *     usual; never over the sprayer's rating
 * @param atGun whether it is wanted at the gun; a usual pressure is one set at the pump
 * @param own whether the line states it, rather than the coating's usual standing in
 */
public record Pressure(double psi, boolean atGun, boolean own) {

  public static Pressure of(Work work, Catalogue catalogue) {
    double stated = work.line().number(InputColumn.PRESSURE);
    boolean usable =
        stated >= catalogue.number(Setting.LEAST_PRESSURE)
            && stated <= catalogue.number(Setting.GREATEST_PRESSURE);
    double wanted = usable ? stated : work.coating().usualPsi();
    return new Pressure(
        Math.min(wanted, greatestPsi(work.sprayer())),
        usable && work.line().pressureAtGun(),
        usable);
  }

  /** The sprayer's rating; without one there is no limit. */
  static double greatestPsi(Sprayer sprayer) {
    return sprayer == null || Double.isNaN(sprayer.greatestPsi())
        ? Double.POSITIVE_INFINITY
        : sprayer.greatestPsi();
  }
}
