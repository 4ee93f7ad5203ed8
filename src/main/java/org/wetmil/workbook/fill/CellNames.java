package org.wetmil.workbook.fill;

import java.util.Map;
import java.util.function.Function;
import org.apache.poi.ss.util.CellReference;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.formula.Place;

/** What the formulas of one row write for each place: cells of their own row, and Basis. */
final class CellNames implements Function<Place, String> {
  private final SheetPlan.Block block;
  private final BasisBook basis;
  private final int row;

  /**
   * @param row from 1, as in an address
   */
  CellNames(SheetPlan.Block block, BasisBook basis, int row) {
    this.block = block;
    this.basis = basis;
    this.row = row;
  }

  @Override
  public String apply(Place place) {
    if (place instanceof FilledColumn column) {
      return block.letters(column) + row;
    }
    if (place instanceof InputColumn column) {
      Map<InputColumn, Integer> columns = block.table().columns();
      return CellReference.convertNumToColString(columns.get(column)) + row;
    }
    String reference = basis.reference(place);
    if (reference == null) {
      throw new IllegalStateException("Basis does not show " + place);
    }
    return reference;
  }
}
