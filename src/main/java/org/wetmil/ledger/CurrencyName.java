package org.wetmil.ledger;

import java.util.Locale;
import java.util.Set;

/** The name that a currency is kept by: a code, or a symbol that several currencies share. */
public final class CurrencyName {
  /** Currencies whose amounts are written with a dollar sign (ISO 4217 codes; from memory). */
  private static final Set<String> DOLLAR_SIGN =
      Set.of(
          "USD", "CAD", "AUD", "NZD", "SGD", "HKD", "TWD", "MXN", "ARS", "CLP", "COP", "UYU", "BZD",
          "JMD", "TTD", "BSD", "BBD", "XCD");

  private CurrencyName() {}

  /** The currency that a text names, as in EUR, € or US$; empty when it names none. */
  public static String of(String text) {
    String code = text.strip().toUpperCase(Locale.ROOT);
    return NumberColumn.isCurrency(code) ? code : NumberColumn.currency(code + " 0");
  }

  /** Whether two names cannot mean one currency; a dollar sign may be that of any dollar. */
  public static boolean contradict(String one, String other) {
    return !one.isEmpty()
        && !other.isEmpty()
        && !one.equals(other)
        && !(one.equals("$") && DOLLAR_SIGN.contains(other))
        && !(other.equals("$") && DOLLAR_SIGN.contains(one));
  }
}
