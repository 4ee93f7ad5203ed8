package org.wetmil.estimate;

import org.wetmil.trade.TipCode;

/**
 * A tip at work on a line: what it passes, how fast the hand moves, and the film that it lays.
 *
 * @param tip null when no tip serves; then the target film, the easy pace and the widest fan that
 *     the surface takes are assumed
 * @param fanIn width of the fan on the surface
 * @param gun pressure and flow at the tip
 * @param speedInPerS the pace that lays the target, held into the comfortable band
 * @param wetMil film laid at that pace
 * @param inside whether the film is inside the coating's range
 * @param belowUsual whether the orifice is under the coating's usual range
 */
public record Setup(
    TipCode tip,
    double fanIn,
    GunFlow.At gun,
    double speedInPerS,
    double wetMil,
    boolean inside,
    boolean belowUsual) {

  public boolean isTip() {
    return tip != null;
  }
}
