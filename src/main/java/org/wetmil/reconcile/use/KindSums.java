package org.wetmil.reconcile.use;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumMap;
import java.util.Map;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.ledger.LineKind;

/** Volume and money of some lines, by kind. */
public final class KindSums {
  private final Map<LineKind, Double> gallons = new EnumMap<>(LineKind.class);
  private final Map<LineKind, BigDecimal> money = new EnumMap<>(LineKind.class);
  private BigDecimal pricedMoney = BigDecimal.ZERO;
  private double pricedGal;
  private int lines;

  /**
   * Adds a line.
   *
   * @param inCurrency whether its money is in the currency that is summed
   */
  public void add(LedgerLine line, boolean inCurrency) {
    lines++;
    if (line.hasVolume()) {
      gallons.merge(line.kind(), line.volumeGal(), Double::sum);
    }
    if (line.money() != null && inCurrency) {
      money.merge(line.kind(), line.money(), BigDecimal::add);
      if (line.kind() == LineKind.PURCHASE && line.hasVolume()) {
        pricedMoney = pricedMoney.add(line.money());
        pricedGal += line.volumeGal();
      }
    }
  }

  /** Adds what other sums hold. */
  public void add(KindSums other) {
    lines += other.lines;
    other.gallons.forEach((kind, more) -> gallons.merge(kind, more, Double::sum));
    other.money.forEach((kind, more) -> money.merge(kind, more, BigDecimal::add));
    pricedMoney = pricedMoney.add(other.pricedMoney);
    pricedGal += other.pricedGal;
  }

  public int lines() {
    return lines;
  }

  /** US gallons of one kind, never negative. */
  public double gallons(LineKind kind) {
    return gallons.getOrDefault(kind, 0.0);
  }

  public BigDecimal money(LineKind kind) {
    return money.getOrDefault(kind, BigDecimal.ZERO);
  }

  /**
   * Used = opening stock + bought + moved in - returned - moved out - left over - waste, in US
   * gallons (derived: what went in less what came out again).
   */
  public double usedGal() {
    double used = 0;
    for (LineKind kind : LineKind.values()) {
      used += kind.sign() * gallons(kind);
    }
    return used;
  }

  /** Money spent less money back, over the lines that state an amount; waste stays paid for. */
  public BigDecimal spent() {
    BigDecimal spent = BigDecimal.ZERO;
    for (LineKind kind : LineKind.values()) {
      if (kind != LineKind.WASTE) {
        spent = kind.sign() > 0 ? spent.add(money(kind)) : spent.subtract(money(kind));
      }
    }
    return spent;
  }

  /** Price of a gallon as bought: purchases with both volume and amount; null without any. */
  public BigDecimal pricePerGal() {
    return pricedGal > 0
        ? pricedMoney.divide(BigDecimal.valueOf(pricedGal), MathContext.DECIMAL64)
        : null;
  }
}
