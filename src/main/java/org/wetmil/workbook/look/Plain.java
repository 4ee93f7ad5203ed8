package org.wetmil.workbook.look;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers within words, without zeros that say nothing. */
public final class Plain {
  private static final MathContext DIGITS = new MathContext(6);

  private Plain() {}

  public static String number(double value) {
    return BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros().toPlainString();
  }

  /** A share as a percentage. */
  public static String percent(double share) {
    return number(share * 100) + " %";
  }

  /** With spaces at which no line breaks, so that a number keeps its unit. */
  public static String unbroken(String text) {
    return text.replace(' ', '\u00a0');
  }
}
