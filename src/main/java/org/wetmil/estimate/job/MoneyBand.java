package org.wetmil.estimate.job;

import java.math.BigDecimal;

/**
 * An amount with its likely range.
 *
 * @param low 10 % of jobs come out below
 * @param stated the amount itself, never outside
 * @param high 10 % of jobs come out above
 */
public record MoneyBand(BigDecimal low, BigDecimal stated, BigDecimal high) {

  /** A range that is widened where the stated amount would lie outside. */
  static MoneyBand around(BigDecimal low, BigDecimal stated, BigDecimal high) {
    return new MoneyBand(low.min(stated), stated, high.max(stated));
  }
}
