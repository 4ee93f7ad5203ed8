package org.wetmil.estimate.price;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * Something that a job costs: a quantity at a unit price.
 *
 * @param kind what it counts as
 * @param title what it is, for the reader
 * @param quantity hours, containers or 1 for a stated amount
 * @param unitPrice price of one
 */
public record CostItem(Kind kind, String title, BigDecimal quantity, BigDecimal unitPrice) {
  public CostItem {
    Objects.requireNonNull(quantity, title);
    Objects.requireNonNull(unitPrice, title);
  }

  /** What an item counts as. */
  public enum Kind {
    LABOUR,
    MATERIAL,
    SUNDRIES,
    EQUIPMENT,
    ACCESS,
    TAX
  }

  /** A stated amount. */
  public static CostItem of(Kind kind, String title, BigDecimal amount) {
    return new CostItem(kind, title, BigDecimal.ONE, amount);
  }
}
