package org.wetmil.estimate;

import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Surface;

/**
 * How the hand works on a surface.
 *
 * @param slowestInPerS slow end of the comfortable band
 * @param fastestInPerS fast end of the comfortable band
 * @param easyInPerS easy pace inside it
 * @param overlap share of each stroke that the next one covers; 0 on narrow work
 * @param narrow whether the work is no wider than one stroke
 * @param widthIn narrowest dimension of the work; NaN when not known
 */
public record Stroke(
    double slowestInPerS,
    double fastestInPerS,
    double easyInPerS,
    double overlap,
    boolean narrow,
    double widthIn) {

  /** A last bit, as of a width in millimetres, must not change the fan (house). */
  private static final double SPARE = 1e-9;

  static Stroke of(Surface surface, double narrowestIn, Catalogue catalogue) {
    boolean joinery = surface.joinery();
    double widthIn = narrowestIn > 0 ? narrowestIn : Double.NaN;
    boolean narrow = widthIn <= catalogue.number(Setting.NARROW_WORK) * (1 + SPARE);
    return new Stroke(
        catalogue.number(joinery ? Setting.JOINERY_SLOWEST : Setting.BROAD_SLOWEST),
        catalogue.number(joinery ? Setting.JOINERY_FASTEST : Setting.BROAD_FASTEST),
        catalogue.number(joinery ? Setting.JOINERY_EASY : Setting.BROAD_EASY),
        narrow ? 0 : catalogue.number(Setting.OVERLAP),
        narrow,
        widthIn);
  }

  /** Whether a fan is no wider than the work; any is where the width is not known. */
  public boolean isInside(double fanIn) {
    return !(fanIn > widthIn * (1 + SPARE));
  }

  /** Whether a fan covers so much of the width of the work. */
  boolean isCovered(double fanIn, double share) {
    return fanIn >= share * widthIn * (1 - SPARE);
  }

  static Setting slowest(Surface surface) {
    return surface.joinery() ? Setting.JOINERY_SLOWEST : Setting.BROAD_SLOWEST;
  }

  static Setting fastest(Surface surface) {
    return surface.joinery() ? Setting.JOINERY_FASTEST : Setting.BROAD_FASTEST;
  }
}
