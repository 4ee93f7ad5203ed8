package org.wetmil.ledger;

import java.util.HashSet;
import java.util.Set;

/** What the rows of a ledger, taken together, say about the currency of those that name none. */
final class CurrencyMarks {
  private final Set<String> seen = new HashSet<>();
  private long with;
  private long without;
  private boolean onFirst;
  private boolean onLast;

  /**
   * Takes note of a row with money.
   *
   * @param currency what it names; empty when it names none
   */
  void see(String currency) {
    boolean named = !currency.isEmpty();
    if (named) {
      seen.add(currency);
    }
    onFirst = with + without == 0 ? named : onFirst;
    onLast = named;
    with += named ? 1 : 0;
    without += named ? 0 : 1;
  }

  /**
   * The only currency named, where most rows name it, or the first or the last, as accounts are
   * written; empty when it is an exception, or when there are several.
   */
  String ofTheRest() {
    boolean usual = onFirst || onLast || with >= without;
    return seen.size() == 1 && usual ? seen.iterator().next() : "";
  }
}
