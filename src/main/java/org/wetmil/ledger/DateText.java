package org.wetmil.ledger;

import java.time.LocalDate;
import java.util.Optional;

/** One date by itself, where no column tells the order of day and month. */
public final class DateText {
  private DateText() {}

  /** Reads a date; of 3/4/26 the month comes first (house). Empty when it is none. */
  public static Optional<LocalDate> read(String text) {
    return DateColumn.read(text, DateOrder.MONTH_FIRST);
  }
}
