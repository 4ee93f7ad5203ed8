package org.wetmil.workbook.reconcile;

import org.apache.poi.ss.util.CellReference;
import org.wetmil.workbook.stream.SheetReference;

/**
 * Where the rows of coatings stand on the page, for formulas of other sheets.
 *
 * @param paintFirst first row of paint, from 1
 * @param costFirst first row of cost, from 1; 0 without that block
 * @param count how many rows each block has
 */
record UseRows(int paintFirst, int costFirst, int count) {
  /** Without any there are no groups either, and so no formulas over them. */
  static final UseRows NONE = new UseRows(0, 0, 0);

  String paint(int column) {
    return range(paintFirst, column);
  }

  String cost(int column) {
    return range(costFirst, column);
  }

  private String range(int first, int column) {
    return SheetReference.quoted(ReconcilePage.NAME)
        + "!"
        + new CellReference(first - 1, column, true, true).formatAsString()
        + ":"
        + new CellReference(first + count - 2, column, true, true).formatAsString();
  }
}
