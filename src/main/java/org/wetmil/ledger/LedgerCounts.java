package org.wetmil.ledger;

import java.util.List;

/**
 * What a ledger held.
 *
 * @param lines ledger lines, each handed over once
 * @param titles title lines, repeated headings and lines that only name a group
 * @param blanks lines without anything
 * @param totals totals lines
 */
public record LedgerCounts(long lines, long titles, long blanks, List<TotalsLine> totals) {
  public LedgerCounts {
    totals = List.copyOf(totals);
  }
}
