package org.wetmil.ledger;

import java.math.BigDecimal;

/**
 * A totals line of a ledger beside the sums of its lines.
 *
 * @param stated the amount on it; null when it has none that can be read
 * @param sumOfAll amounts of all lines above it
 * @param sumSinceLast amounts of the lines since the totals line before, or since the headings
 */
public record TotalsLine(
    String file,
    long line,
    String text,
    BigDecimal stated,
    BigDecimal sumOfAll,
    BigDecimal sumSinceLast) {

  /** The sum that it is compared with: the nearer of the two. */
  public BigDecimal sum() {
    boolean all =
        stated == null
            || stated.subtract(sumOfAll).abs().compareTo(stated.subtract(sumSinceLast).abs()) <= 0;
    return all ? sumOfAll : sumSinceLast;
  }

  /** Whether it states the sum of its lines to the cent; true where it states nothing. */
  public boolean agrees() {
    return stated == null || stated.compareTo(sum()) == 0;
  }
}
