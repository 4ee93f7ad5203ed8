package org.wetmil.estimate;

import java.util.List;
import java.util.Map;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/**
 * A sheet that holds bid lines.
 *
 * @param unitsStated whether headings, settings or cells said what units it is in
 * @param columnUnits the unit that each column was read in, for Basis
 */
public record BidSheet(
    String name,
    UnitSystem system,
    boolean unitsStated,
    Map<InputColumn, Unit> columnUnits,
    List<BidLine> lines) {
  public BidSheet {
    lines = List.copyOf(lines);
  }

  public boolean has(InputColumn column) {
    return columnUnits.containsKey(column);
  }
}
