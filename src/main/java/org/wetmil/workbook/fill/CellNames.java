package org.wetmil.workbook.fill;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import org.apache.poi.ss.util.CellReference;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.formula.Place;

/** What the formulas of one row write for each place: cells of their own row, and Basis. */
final class CellNames implements Function<Place, String> {
  private final BasisBook basis;
  private final Map<FilledColumn, String> filled = new EnumMap<>(FilledColumn.class);
  private final Map<InputColumn, String> inputs = new EnumMap<>(InputColumn.class);
  private int row;

  CellNames(SheetPlan.Block block, BasisBook basis) {
    this.basis = basis;
    block.columns().forEach(column -> filled.put(column, block.letters(column)));
    block
        .table()
        .columns()
        .forEach((column, at) -> inputs.put(column, CellReference.convertNumToColString(at)));
  }

  /**
   * Goes to a row.
   *
   * @param number from 1, as in an address
   */
  CellNames at(int number) {
    row = number;
    return this;
  }

  @Override
  public String apply(Place place) {
    if (place instanceof FilledColumn column) {
      return filled.get(column) + row;
    }
    if (place instanceof InputColumn column) {
      return inputs.get(column) + row;
    }
    String reference = basis.reference(place);
    if (reference == null) {
      throw new IllegalStateException("Basis does not show " + place);
    }
    return reference;
  }
}
