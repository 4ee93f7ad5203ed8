package org.wetmil.ledger;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;

/** Amounts of the lines read so far, each currency by itself. */
final class RunningSums {
  private final Map<String, BigDecimal> all = new HashMap<>();
  private final Map<String, BigDecimal> sinceLast = new HashMap<>();

  void add(String currency, BigDecimal amount) {
    if (amount != null) {
      all.merge(currency, amount, BigDecimal::add);
      sinceLast.merge(currency, amount, BigDecimal::add);
    }
  }

  /** Begins anew, as under a totals line. */
  void begin() {
    sinceLast.clear();
  }

  BigDecimal ofAll(String currency) {
    return sum(all, currency);
  }

  BigDecimal sinceLast(String currency) {
    return sum(sinceLast, currency);
  }

  /** The only sum there is, else that of the currency named; null when none is named. */
  private static BigDecimal sum(Map<String, BigDecimal> sums, String currency) {
    if (sums.size() > 1) {
      return currency.isEmpty() ? null : sums.get(currency);
    }
    return sums.values().stream().findFirst().orElse(BigDecimal.ZERO);
  }
}
