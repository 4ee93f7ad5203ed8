package org.wetmil.workbook.read;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.stream.CellAddress;

/**
 * Where the tables of a bid sheet stand.
 *
 * @param system units of the sheet
 * @param tables from top to bottom and left to right
 * @param ourColumns columns, from 0, that an earlier fill wrote
 */
public record SheetLayout(
    String sheet, UnitSystem system, List<TableLayout> tables, Set<Integer> ourColumns) {
  public SheetLayout {
    tables = List.copyOf(tables);
    ourColumns = Collections.unmodifiableSet(new TreeSet<>(ourColumns));
  }

  /**
   * The cell of a bid line.
   *
   * @param row the line's row, from 1
   * @param before how many lines stand to the left in the row, where tables stand side by side
   * @param column the input; null, or one that the table lacks, for the first cell of the line
   * @return as in C4; empty when no table has the row
   */
  public String address(int row, int before, InputColumn column) {
    return tables.stream()
        .filter(table -> Collections.binarySearch(table.lineRows(), row - 1) >= 0)
        .skip(before)
        .findFirst()
        .map(
            table -> {
              Integer found = column == null ? null : table.columns().get(column);
              int at = found == null ? table.firstColumn() : found;
              return new CellAddress(row - 1, at).toString();
            })
        .orElse("");
  }
}
