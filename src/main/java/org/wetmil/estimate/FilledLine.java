package org.wetmil.estimate;

import java.util.Map;
import org.wetmil.quantity.UnitSystem;

/**
 * A bid line with what Wetmil makes of it.
 *
 * @param work the line with its names looked up
 * @param area null when the surface is not known
 * @param stroke null when coating or surface are not known
 * @param coats null when coating or surface are not known
 * @param setPsi pressure to set at the pump; NaN when coating or surface are not known
 * @param recommended null when coating or surface are not known
 * @param planned the planned tip by the same figures; null when none was planned
 * @param followed the one that film, paint and hours rest on
 * @param figures what stands in the filled cells
 */
public record FilledLine(
    Work work,
    Area area,
    Stroke stroke,
    CoatPlan coats,
    double setPsi,
    Setup recommended,
    Setup planned,
    Setup followed,
    Map<FilledColumn, Figure> figures) {

  public BidLine line() {
    return work.line();
  }

  public UnitSystem system() {
    return line().system();
  }

  /** Whether the line has paint and hours. */
  public boolean isFilled() {
    Figure paint = figures.get(FilledColumn.PAINT);
    return paint instanceof Figure.Live
        || (paint instanceof Figure.Typed typed && Double.isFinite(typed.formula().value()));
  }

  /** Whether coating and surface are known, so that a tip could be chosen. */
  public boolean isSetUp() {
    return followed != null;
  }

  /** Whether the line counts in the totals. */
  public boolean isCounted() {
    return isFilled() && figures.get(FilledColumn.COUNTED).number() > 0;
  }

  /** Whether Include leaves the line out of the totals, be it filled or not. */
  public boolean isLeftOut() {
    return isFilled() ? !isCounted() : !work.isIncluded();
  }

  /** A filled figure in the kept unit of its column; NaN when there is none. */
  public double base(FilledColumn column) {
    Figure figure = figures.get(column);
    double shown = figure == null ? Double.NaN : figure.number();
    return column.quantity().unit(system()).to(column.quantity().base(), shown);
  }
}
