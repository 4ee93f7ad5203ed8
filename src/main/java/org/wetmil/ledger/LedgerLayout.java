package org.wetmil.ledger;

import java.nio.charset.Charset;
import java.util.List;
import java.util.Map;

/**
 * How a ledger is written, found from its content before a line is read.
 *
 * @param quotes whether a quote at the start of a field encloses it
 * @param headings the headings as written
 * @param headingRecord the record they stand on, from 1
 * @param columns where the known columns stand, from 0
 * @param unused headings that no column was taken from
 * @param marks the decimal mark of each number column
 * @param currency what the headings or the only currency seen say; empty when nothing does
 */
public record LedgerLayout(
    Charset encoding,
    char delimiter,
    boolean quotes,
    List<String> headings,
    long headingRecord,
    Map<LedgerColumn, Integer> columns,
    List<String> unused,
    DateOrder dateOrder,
    Map<LedgerColumn, Mark> marks,
    String currency,
    List<LedgerNote> notes) {

  /** The character before the decimals. */
  public enum Mark {
    POINT,
    COMMA
  }

  public boolean has(LedgerColumn column) {
    return columns.containsKey(column);
  }
}
