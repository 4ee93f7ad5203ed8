package org.wetmil.workbook.fill.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.price.Decimal;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.look.Look;

/** Amounts of money on sheets: rounded to the smallest amount, as the price itself is. */
public final class Coin {
  private final BigDecimal step;
  private final String name;
  private final Look look;

  public Coin(FilledBid filled, BasisBook basis, Look look) {
    double number = filled.bid().catalogue().number(Setting.SMALLEST_AMOUNT);
    this.step = number > 0 ? Decimal.typed(number) : BigDecimal.ZERO;
    this.name = basis.reference(Setting.SMALLEST_AMOUNT);
    this.look = look;
  }

  /** A formula for an amount, rounded. */
  String rounded(String formula) {
    return step.signum() == 0 ? formula : "ROUND((" + formula + ")/" + name + ",0)*" + name;
  }

  BigDecimal rounded(BigDecimal amount) {
    return step.signum() == 0
        ? amount
        : amount.divide(step, 0, RoundingMode.HALF_UP).multiply(step);
  }

  XSSFCellStyle look() {
    return look.number(decimals());
  }

  XSSFCellStyle strong() {
    return look.strongNumber(decimals());
  }

  int decimals() {
    return step.signum() == 0 ? 2 : Math.max(0, step.stripTrailingZeros().scale());
  }
}
