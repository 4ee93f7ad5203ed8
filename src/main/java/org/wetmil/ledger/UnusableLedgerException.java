package org.wetmil.ledger;

/** A ledger that no line can be read from; the message says what was there and what to do. */
public final class UnusableLedgerException extends Exception {
  private static final long serialVersionUID = 1;

  UnusableLedgerException(String message) {
    super(message);
  }
}
