package org.wetmil.estimate;

import org.wetmil.quantity.Unit;

/**
 * What one cell of a bid line holds.
 *
 * @param state how reading went
 * @param raw the text as it stands in the cell
 * @param number the number in the kept unit of its column; of a range, its middle; NaN when none.
 *     One that is beyond stays, so that a finding can say it
 * @param low least of a range, else the number
 * @param high greatest of a range, else the number
 * @param cellNumber the true number that the cell holds, in {@code unit}; NaN when a formula must
 *     not point at the cell
 * @param unit the unit that the cell was read in
 * @param expected what would have been read, when it could not be
 */
public record InputValue(
    State state,
    String raw,
    double number,
    double low,
    double high,
    double cellNumber,
    Unit unit,
    String expected) {

  /** How reading a cell went. */
  public enum State {
    BLANK,
    READ,
    UNREADABLE,
    FORMULA_ERROR,
    DATE,
    /** A number past the greatest that its column is taken with; it counts as not stated. */
    BEYOND
  }

  /** Nothing on a site comes near; it keeps every formula within what a spreadsheet holds. */
  public static final double MOST = 1e12;

  public InputValue {
    boolean isNumber = state == State.READ && !Double.isNaN(number);
    if (isNumber && !(Math.abs(number) <= MOST)) {
      state = State.UNREADABLE;
      expected = "a number below 1,000,000,000,000";
      isNumber = false;
    }
    if (!isNumber && state != State.BEYOND) {
      number = Double.NaN;
      low = Double.NaN;
      high = Double.NaN;
    }
    // the cell may be in a smaller unit than the number is kept in, and a text may stand for one
    if (state != State.READ || !(Math.abs(cellNumber) <= MOST * MOST)) {
      cellNumber = Double.NaN;
    }
  }

  public static final InputValue NOTHING =
      new InputValue(State.BLANK, "", Double.NaN, Double.NaN, Double.NaN, Double.NaN, Unit.ONE, "");

  public static InputValue text(String raw) {
    return text(raw, Double.NaN);
  }

  /** A text that a cell shows for the number that it holds. */
  public static InputValue text(String raw, double cellNumber) {
    return new InputValue(
        State.READ, raw, Double.NaN, Double.NaN, Double.NaN, cellNumber, Unit.ONE, "");
  }

  /** A dash or n/a, which says that nothing is known yet. */
  public static InputValue open(String raw) {
    return new InputValue(
        State.BLANK, raw, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Unit.ONE, "");
  }

  public static InputValue fault(State state, String raw, String expected) {
    return new InputValue(
        state, raw, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Unit.ONE, expected);
  }

  /** The same number, which is past what its column is taken with. */
  InputValue beyond() {
    return new InputValue(State.BEYOND, raw, number, low, high, Double.NaN, unit, "");
  }

  public boolean isBlank() {
    return state == State.BLANK;
  }

  public boolean isFault() {
    return state != State.BLANK && state != State.READ;
  }

  /** Whether the cell was read as a number that counts. */
  public boolean hasNumber() {
    return state == State.READ && !Double.isNaN(number);
  }

  /** Whether a formula may point at the cell. */
  public boolean isLive() {
    return !Double.isNaN(cellNumber);
  }
}
