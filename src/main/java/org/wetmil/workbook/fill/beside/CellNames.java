package org.wetmil.workbook.fill.beside;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.formula.Place;
import org.wetmil.workbook.read.TableLayout;
import org.wetmil.workbook.stream.CellAddress;

/** What the formulas of one row write for each place: cells of their own row, and Basis. */
final class CellNames implements Function<Place, String> {
  private final BasisBook basis;
  private final TableLayout table;
  private final Map<FilledColumn, String> filled = new EnumMap<>(FilledColumn.class);
  private final Map<InputColumn, String> inputs = new EnumMap<>(InputColumn.class);
  private int row;

  CellNames(SheetPlan.Block block, BasisBook basis) {
    this.basis = basis;
    this.table = block.table();
    block.columns().forEach(column -> filled.put(column, block.letters(column)));
    table.columns().forEach((column, at) -> inputs.put(column, CellAddress.letters(at)));
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
      List<CellAddress> there = table.elsewhere().getOrDefault(row - 1, Map.of()).get(column);
      return there == null ? inputs.get(column) + row : first(there.get(0));
    }
    String reference = basis.reference(place);
    if (reference == null) {
      throw new IllegalStateException("Basis does not show " + place);
    }
    return reference;
  }

  /** Of merged cells the first, wherever the row goes. */
  private String first(CellAddress there) {
    return there.row() == row - 1
        ? there.toString()
        : "$" + CellAddress.letters(there.column()) + "$" + (there.row() + 1);
  }
}
