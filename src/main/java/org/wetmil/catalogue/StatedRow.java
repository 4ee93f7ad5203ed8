package org.wetmil.catalogue;

import java.util.Map;
import org.wetmil.quantity.Unit;

/**
 * A row of one of the estimator's own tables, as read: cells by declared heading.
 *
 * @param onBasis whether it was typed over values on the Basis sheet of an earlier fill
 */
public record StatedRow(String sheet, int row, Map<String, StatedCell> cells, boolean onBasis) {

  /** A row of a sheet of the estimator's. */
  public StatedRow(String sheet, int row, Map<String, StatedCell> cells) {
    this(sheet, row, cells, false);
  }

  /** Where a cell of the row stands, for Basis to say. */
  Origin origin(StatedCell cell, Unit unit, double number) {
    return onBasis ? new Origin.OnBasis() : new Origin.Cell(sheet, cell.address(), unit, number);
  }

  /** What the cells of the row rest on, for Basis to say. */
  String source() {
    return onBasis ? "typed on this page" : "your sheet";
  }

  /**
   * One cell.
   *
   * @param raw the text as shown to the reader of the sheet
   * @param number the number read from it as typed; NaN when it is none
   * @param unit the unit of the cell, its heading or its row; null when none is stated
   * @param trueNumber whether the cell itself holds a number, so that a formula may point at it
   * @param share whether the cell has a percent format, so that its number is already a share
   */
  public record StatedCell(
      String address, String raw, double number, Unit unit, boolean trueNumber, boolean share) {}
}
