package org.wetmil.workbook.read.cell;

import java.util.Optional;
import org.wetmil.estimate.InputColumn;
import org.wetmil.measure.DecimalMark;
import org.wetmil.quantity.Unit;

/**
 * What is known of a column before its cells are read.
 *
 * @param unit the unit of numbers without one: the heading's or the sheet's
 * @param stated whether the heading itself states it
 * @param mark the decimal mark that the column's typed numbers show
 */
public record CellContext(InputColumn column, Unit unit, boolean stated, DecimalMark mark) {

  /** The same column in a row that states its own unit, if it measures the same. */
  CellContext in(Optional<Unit> rowUnit) {
    return rowUnit
        .filter(each -> !stated && each.dimension() == unit.dimension() && each != Unit.ONE)
        .map(each -> new CellContext(column, each, true, mark))
        .orElse(this);
  }
}
