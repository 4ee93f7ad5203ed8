package org.wetmil.ledger;

import java.math.BigDecimal;

/**
 * A figure of judgement that is not for setting.
 *
 * @param unit what it is counted in; empty for none
 */
public record HouseFigure(String name, BigDecimal value, String unit, String meaning) {
  public HouseFigure(String name, String value, String unit, String meaning) {
    this(name, new BigDecimal(value), unit, meaning);
  }

  public double number() {
    return value.doubleValue();
  }
}
