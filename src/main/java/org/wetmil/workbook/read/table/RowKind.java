package org.wetmil.workbook.read.table;

/** What a row under the headings of a bid is. */
public enum RowKind {
  LINE,
  BLANK,
  /** A section's title or a note: text alone, with nothing to measure or to paint. */
  TITLE,
  TOTAL,
  REPEATED_HEADING,
  /** Something below the table that is no part of it. */
  BELOW
}
