package org.wetmil.estimate.job;

import java.util.Optional;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.Setup;
import org.wetmil.estimate.Stroke;
import org.wetmil.trade.Film;

/**
 * A line whose planned tip is not the recommended one, with what each of the two would take.
 *
 * <p>The line's own figures follow one of them. The other's follow from those by the laws of film
 * and pace: paint goes with wet film over hit, spraying with the inverse of speed, width and hit;
 * area, coats, losses and thinner are the same.
 *
 * @param line the line
 * @param planned the planned tip
 * @param recommended the recommended tip
 */
public record TipSwitch(FilledLine line, Side planned, Side recommended) {

  /**
   * One tip on the line.
   *
   * @param setup the tip at work
   * @param paintGal paint of all coats in gallons
   * @param sprayHours person-hours of spraying
   */
  public record Side(Setup setup, double paintGal, double sprayHours) {
    /** Work narrower than any number of it that meets a fan leaves nothing to compare. */
    private boolean isFinite() {
      return Double.isFinite(paintGal) && Double.isFinite(sprayHours);
    }
  }

  /**
   * Empty without a planned tip that works, without another one recommended, or without an area.
   */
  public static Optional<TipSwitch> of(FilledLine line) {
    boolean both =
        line.isFilled()
            && line.planned() != null
            && line.planned().gun().flowGpm() > 0
            && line.recommended().isTip()
            && !line.planned().tip().equals(line.recommended().tip());
    return both
        ? Optional.of(
                new TipSwitch(line, side(line, line.planned()), side(line, line.recommended())))
            .filter(each -> each.planned().isFinite() && each.recommended().isFinite())
        : Optional.empty();
  }

  private static Side side(FilledLine line, Setup setup) {
    Setup own = line.followed();
    double paint = paint(line.stroke(), setup) / paint(line.stroke(), own);
    double pace = pace(line.stroke(), setup) / pace(line.stroke(), own);
    return new Side(
        setup, line.base(FilledColumn.PAINT) * paint, line.base(FilledColumn.SPRAY) / pace);
  }

  /** Paint of an area, up to what both tips share: the film, over the share that meets the work. */
  private static double paint(Stroke stroke, Setup setup) {
    return setup.wetMil() / hit(stroke, setup);
  }

  /** Area an hour, up to what both tips share. */
  private static double pace(Stroke stroke, Setup setup) {
    return setup.speedInPerS() * setup.fanIn() * (1 - stroke.overlap()) * hit(stroke, setup);
  }

  /** Of a fan wider than narrow work only the share that meets it counts. */
  private static double hit(Stroke stroke, Setup setup) {
    return stroke.narrow() ? Film.narrowHit(1, stroke.widthIn(), setup.fanIn()) : 1;
  }
}
