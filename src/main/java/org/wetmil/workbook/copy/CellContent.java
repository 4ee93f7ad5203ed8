package org.wetmil.workbook.copy;

import java.util.Objects;

/** What an added cell holds. */
public sealed interface CellContent {

  /** What is stored without being computed. */
  sealed interface Value extends CellContent {}

  /** Nothing but a format. */
  record Blank() implements CellContent {}

  /** A number; it has to be finite. */
  record Num(double value) implements Value {
    public Num {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("a cell cannot hold " + value);
      }
    }
  }

  /** Text, never read as a formula; at most {@link #MAX_LENGTH} characters. */
  record Text(String value) implements Value {
    /** Characters that a cell can hold (specification of Excel's limits). */
    public static final int MAX_LENGTH = 32_767;

    public Text {
      if (value.length() > MAX_LENGTH) {
        throw new IllegalArgumentException("a cell cannot hold " + value.length() + " characters");
      }
    }
  }

  /**
   * A formula without its equals sign, and the result that programs show which do not compute it.
   */
  record Formula(String formula, Value cached) implements CellContent {
    /** Characters that a formula can have (specification of Excel's limits). */
    public static final int MAX_LENGTH = 8_192;

    public Formula {
      Objects.requireNonNull(cached);
      if (formula.isEmpty() || formula.startsWith("=") || formula.length() > MAX_LENGTH) {
        throw new IllegalArgumentException("not a formula for a cell: " + formula);
      }
    }
  }
}
