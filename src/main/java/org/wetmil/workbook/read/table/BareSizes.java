package org.wetmil.workbook.read.table;

import java.util.List;
import java.util.Optional;
import org.wetmil.quantity.Quantity;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** Lengths and areas that are numbers alone, without a unit in the cell. */
final class BareSizes {
  private BareSizes() {}

  /** The first of a sheet in reading order. */
  static Optional<RawCell> first(Grid grid, List<BidTable> tables) {
    for (BidTable table : tables) {
      for (GridRow row : SheetUnits.rows(grid, table)) {
        for (RawCell cell : row.cells()) {
          if (cell.kind() == CellKind.NUMBER && isSize(table, cell.column())) {
            boolean area = quantity(table, cell.column()) == Quantity.AREA;
            if (SheetUnits.unitIn(grid, cell, area).isEmpty()) {
              return Optional.of(cell);
            }
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isSize(BidTable table, int column) {
    Quantity quantity = quantity(table, column);
    return quantity == Quantity.AREA || quantity == Quantity.LENGTH;
  }

  private static Quantity quantity(BidTable table, int column) {
    return table.columns().entrySet().stream()
        .filter(entry -> entry.getValue().column() == column)
        .map(entry -> entry.getKey().quantity())
        .findFirst()
        .orElse(null);
  }
}
