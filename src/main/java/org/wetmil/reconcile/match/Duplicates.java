package org.wetmil.reconcile.match;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;

/**
 * Lines that say the same twice: kind, date, item, quantity, amount and document. Where no document
 * is stated the job counts too, since the same paint may go to two jobs on one day.
 */
public final class Duplicates {
  private final Map<List<Object>, LedgerLine> first = new HashMap<>();

  /** The earlier line that this one repeats; null when there is none. */
  public LedgerLine earlier(LedgerLine line) {
    return first.putIfAbsent(key(line), line);
  }

  private static List<Object> key(LedgerLine line) {
    String document = Phrases.key(line.text(LedgerColumn.DOCUMENT));
    List<Object> key = new ArrayList<>();
    key.add(line.kind());
    key.add(line.date());
    key.add(Phrases.key(line.itemOrDescription()));
    key.add(plain(line.quantity()));
    key.add(plain(line.amount()));
    key.add(document);
    key.add(document.isEmpty() ? Phrases.key(line.text(LedgerColumn.JOB)) : "");
    return key;
  }

  /** 5 and 5.00 are one quantity. */
  private static BigDecimal plain(BigDecimal number) {
    return number == null ? null : number.stripTrailingZeros();
  }
}
