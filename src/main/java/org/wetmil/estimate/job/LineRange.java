package org.wetmil.estimate.job;

import org.wetmil.catalogue.Surface;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.likely.Band;
import org.wetmil.trade.Film;

/** The likely range of one line, as its filled cells have it; no other line has a part in it. */
public final class LineRange {
  private LineRange() {}

  /** Paint of a filled line in gallons. */
  public static Band paintGal(FilledLine line) {
    return band(line, FilledColumn.PAINT_LOW, FilledColumn.PAINT, FilledColumn.PAINT_HIGH);
  }

  /** Person-hours of a filled line's own tasks. */
  public static Band hours(FilledLine line) {
    return band(line, FilledColumn.LABOUR_LOW, FilledColumn.LABOUR, FilledColumn.LABOUR_HIGH);
  }

  private static Band band(
      FilledLine line, FilledColumn low, FilledColumn stated, FilledColumn high) {
    return Band.around(line.base(low), line.base(stated), line.base(high));
  }

  /** The share of the paint sprayed that stays on the work, as stated for the line. */
  static double transfer(FilledLine line) {
    Surface surface = line.work().surface();
    double hit =
        line.stroke().narrow()
            ? Film.narrowHit(surface.hit(), line.stroke().widthIn(), line.followed().fanIn())
            : surface.hit();
    return surface.stick() * hit;
  }
}
