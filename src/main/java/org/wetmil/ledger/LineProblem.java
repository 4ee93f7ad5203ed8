package org.wetmil.ledger;

/**
 * What could not be read on a line, as data.
 *
 * @param column the column; null when it is about the whole line
 * @param raw the text as it stands in the ledger
 * @param expected what would have been read, to be shown after "expected"
 */
public record LineProblem(Type type, LedgerColumn column, String raw, String expected) {

  /** What kind of problem it is. */
  public enum Type {
    UNREADABLE_NUMBER,
    UNREADABLE_DATE,
    UNKNOWN_KIND,
    /** Cells of known columns are missing at the end. */
    TOO_SHORT,
    /** There are cells beyond the last heading. */
    TOO_LONG,
    /** A cell holds what looks like whole lines: a closing quote may be missing. */
    LINES_IN_A_CELL,
    /** Quantity times unit price is not the amount. */
    AMOUNT_DIFFERS,
    /** A purchase with a negative quantity or amount. */
    READ_AS_RETURN
  }
}
