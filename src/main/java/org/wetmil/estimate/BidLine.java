package org.wetmil.estimate;

import java.util.Map;
import org.wetmil.quantity.UnitSystem;

/**
 * One line of a bid as read.
 *
 * @param sheet the sheet it stands on
 * @param row its row, from 1
 * @param system the units of its sheet
 * @param pressureAtGun whether the pressure column says that it is measured at the gun
 * @param values its cells; a column that the sheet lacks is absent
 * @param earlier what the cells of an earlier fill hold
 */
public record BidLine(
    String sheet,
    int row,
    UnitSystem system,
    boolean pressureAtGun,
    Map<InputColumn, InputValue> values,
    EarlierCells earlier) {

  /** A line that was not filled before. */
  public BidLine(
      String sheet,
      int row,
      UnitSystem system,
      boolean pressureAtGun,
      Map<InputColumn, InputValue> values) {
    this(sheet, row, system, pressureAtGun, values, EarlierCells.NONE);
  }

  /** The same line with the cells of an earlier fill. */
  public BidLine with(EarlierCells cells) {
    return new BidLine(sheet, row, system, pressureAtGun, values, cells);
  }

  /** The same line with other cells. */
  BidLine with(Map<InputColumn, InputValue> cells) {
    return new BidLine(sheet, row, system, pressureAtGun, cells, earlier);
  }

  /** The cell under a column; nothing when the sheet lacks the column. */
  public InputValue get(InputColumn column) {
    InputValue value = values.get(column);
    return value == null ? InputValue.NOTHING : value;
  }

  /** The text of a cell, trimmed; empty when blank. */
  public String text(InputColumn column) {
    InputValue value = get(column);
    return value.isBlank() ? "" : value.raw().strip();
  }

  /** The number of a cell in the kept unit; NaN when there is none that the column takes. */
  public double number(InputColumn column) {
    InputValue value = get(column);
    return value.hasNumber() && column.takes(value.number()) ? value.number() : Double.NaN;
  }

  public boolean has(InputColumn column) {
    return !Double.isNaN(number(column));
  }
}
