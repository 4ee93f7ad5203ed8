package org.wetmil.estimate.price;

import java.math.BigDecimal;
import java.math.MathContext;

/** Decimal numbers from figures that are kept as binary ones. */
public final class Decimal {
  /** Digits that people type; the bits behind them are noise of the binary number. */
  private static final MathContext TYPED = new MathContext(12);

  private Decimal() {}

  /** The decimal number that was typed: 0.035, although 3.5 x 0.01 has more digits. */
  public static BigDecimal typed(double value) {
    BigDecimal plain = new BigDecimal(value).round(TYPED).stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }
}
