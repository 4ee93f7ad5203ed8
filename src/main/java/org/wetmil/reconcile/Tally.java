package org.wetmil.reconcile;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import org.wetmil.ledger.LedgerLine;

/** How many lines, and their amounts as written, by currency; money is never rounded here. */
public final class Tally {
  private final SortedMap<String, BigDecimal> amounts = new TreeMap<>();
  private long lines;
  private long withoutAmount;

  public void add(LedgerLine line) {
    lines++;
    if (line.amount() == null) {
      withoutAmount++;
    } else {
      amounts.merge(line.currency(), line.amount(), BigDecimal::add);
    }
  }

  public long lines() {
    return lines;
  }

  /** Lines that state no amount that can be read. */
  public long withoutAmount() {
    return withoutAmount;
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
