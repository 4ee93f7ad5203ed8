package org.wetmil.ledger;

/**
 * Something about a ledger as a whole that the bookkeeper should know.
 *
 * @param detail what was found or assumed, as words that follow the type's meaning
 */
public record LedgerNote(String file, Type type, String detail) {

  /** What is to be known. */
  public enum Type {
    /** Nothing tells whether 3/4 is in March or April. */
    ORDER_ASSUMED,
    /** Some dates can only be read day first, others only month first. */
    ORDER_MIXED,
    /** Nothing tells whether 1.234 is a thousand or one. */
    MARK_ASSUMED,
    /** A quote is never closed, so quotes are read as inch marks and the like. */
    QUOTES_AS_TEXT
  }
}
