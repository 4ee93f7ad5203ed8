package org.wetmil.ledger;

import java.util.List;

/** A ledger that no line can be read from; the message says what was there and what to do. */
public final class UnusableLedgerException extends Exception {
  private static final long serialVersionUID = 1;
  private static final int LONGEST = 200;

  UnusableLedgerException(String message) {
    super(message);
  }

  /** A row as it stands; it may be as long as a book. */
  static String row(List<String> fields) {
    String row = String.join(" | ", fields);
    return row.length() <= LONGEST ? row : row.substring(0, LONGEST) + "...";
  }
}
