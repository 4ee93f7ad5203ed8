package org.wetmil.reconcile.use;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * What a difference of price and a difference of quantity cost, to the cent.
 *
 * <p>Price variance = used x (price paid - price bid); quantity variance = (used - bid) x price
 * bid; together used x price paid - bid x price bid (the identity of standard costing in textbooks;
 * common practice). Each of the three products is rounded to the cent once, so that the parts add
 * up exactly.
 *
 * @param actual used at the price paid
 * @param bid the quantity bid at the price bid
 * @param price what the difference of price cost; negative is a saving
 * @param quantity what the difference of quantity cost; negative is a saving
 */
public record MoneyVariance(
    BigDecimal actual, BigDecimal bid, BigDecimal price, BigDecimal quantity) {

  /** No money at all. */
  public static final MoneyVariance NOTHING =
      new MoneyVariance(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO);

  /**
   * Splits a variance.
   *
   * @param usedGal used, US gallons
   * @param pricePaid of a gallon
   * @param bidGal bid, US gallons
   * @param priceBid of a gallon; null values the bid at the price paid, with no variance of price
   */
  public static MoneyVariance of(
      double usedGal, BigDecimal pricePaid, double bidGal, BigDecimal priceBid) {
    BigDecimal standard = priceBid == null ? pricePaid : priceBid;
    BigDecimal actual = cost(usedGal, pricePaid);
    BigDecimal usedAtBidPrice = cost(usedGal, standard);
    BigDecimal bid = cost(bidGal, standard);
    return new MoneyVariance(
        actual, bid, actual.subtract(usedAtBidPrice), usedAtBidPrice.subtract(bid));
  }

  public BigDecimal total() {
    return actual.subtract(bid);
  }

  public MoneyVariance plus(MoneyVariance other) {
    return new MoneyVariance(
        actual.add(other.actual),
        bid.add(other.bid),
        price.add(other.price),
        quantity.add(other.quantity));
  }

  private static BigDecimal cost(double gallons, BigDecimal price) {
    return price.multiply(BigDecimal.valueOf(gallons)).setScale(2, RoundingMode.HALF_UP);
  }
}
