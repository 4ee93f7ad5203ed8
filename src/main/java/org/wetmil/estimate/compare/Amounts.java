package org.wetmil.estimate.compare;

import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;

/**
 * What a line, or several, come to; a difference of two is one again.
 *
 * @param areaFt2 net area painted once
 * @param paintGal paint in gallons
 * @param hours person-hours
 * @param cost paint and labour at their stated prices, without what only the job has
 */
public record Amounts(double areaFt2, double paintGal, double hours, double cost) {
  public static final Amounts NONE = new Amounts(0, 0, 0, 0);

  /** Less than this, in the kept units, is the rounding of a computer. */
  private static final double NOTHING = 1e-7;

  /** A line that does not count comes to nothing. */
  public static Amounts of(FilledLine line) {
    return line == null || !line.isCounted()
        ? NONE
        : new Amounts(
            or0(line.base(FilledColumn.NET_AREA)),
            or0(line.base(FilledColumn.PAINT)),
            or0(line.base(FilledColumn.LABOUR)),
            or0(line.base(FilledColumn.PAINT_COST)) + or0(line.base(FilledColumn.LABOUR_COST)));
  }

  private static double or0(double number) {
    return Double.isNaN(number) ? 0 : number;
  }

  public Amounts minus(Amounts other) {
    return new Amounts(
        areaFt2 - other.areaFt2, paintGal - other.paintGal, hours - other.hours, cost - other.cost);
  }

  public Amounts plus(Amounts other) {
    return new Amounts(
        areaFt2 + other.areaFt2, paintGal + other.paintGal, hours + other.hours, cost + other.cost);
  }

  public boolean isNothing() {
    return Math.abs(areaFt2) <= NOTHING
        && Math.abs(paintGal) <= NOTHING
        && Math.abs(hours) <= NOTHING
        && Math.abs(cost) <= NOTHING * 100;
  }
}
