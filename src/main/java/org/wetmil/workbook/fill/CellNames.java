package org.wetmil.workbook.fill;

import java.util.function.Function;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.formula.Place;
import org.wetmil.workbook.stream.CellAddress;

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
      CellAddress own = new CellAddress(row - 1, block.table().columns().get(column));
      CellAddress there = block.table().cells(row - 1, column).stream().findFirst().orElse(own);
      // of merged cells the first, wherever the row goes
      return there.row() == own.row()
          ? there.toString()
          : "$" + CellAddress.letters(there.column()) + "$" + (there.row() + 1);
    }
    String reference = basis.reference(place);
    if (reference == null) {
      throw new IllegalStateException("Basis does not show " + place);
    }
    return reference;
  }
}
