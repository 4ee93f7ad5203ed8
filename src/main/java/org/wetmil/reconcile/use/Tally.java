package org.wetmil.reconcile.use;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.wetmil.ledger.LedgerLine;

/** How many lines, and their amounts as written, by currency; money is never rounded here. */
public final class Tally {
  private final SortedMap<String, BigDecimal> amounts = new TreeMap<>();
  private final SortedMap<String, Long> linesIn = new TreeMap<>();
  private long lines;

  public void add(LedgerLine line) {
    lines++;
    if (line.amount() != null) {
      amounts.merge(line.currency(), line.amount(), BigDecimal::add);
      linesIn.merge(line.currency(), 1L, Long::sum);
    }
  }

  public long lines() {
    return lines;
  }

  /** Lines with an amount that can be read, by currency; the empty name is for none stated. */
  public SortedMap<String, Long> linesIn() {
    return Collections.unmodifiableSortedMap(linesIn);
  }

  /** Sums of the amounts by currency; the empty name is for lines that state none. */
  public SortedMap<String, BigDecimal> amounts() {
    return Collections.unmodifiableSortedMap(amounts);
  }

  /** The sum in one currency. */
  public BigDecimal amount(String currency) {
    return amounts.getOrDefault(currency, BigDecimal.ZERO);
  }
}
