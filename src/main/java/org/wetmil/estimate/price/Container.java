package org.wetmil.estimate.price;

import java.math.BigDecimal;

/**
 * A size that a product is sold in.
 *
 * @param size what it holds, above 0, in the unit of its list
 * @param price price of one, at least 0; null where none is stated
 */
public record Container(BigDecimal size, BigDecimal price) {
  public Container {
    if (size.signum() <= 0) {
      throw new IllegalArgumentException("size must be above 0, but is " + size);
    }
    if (price != null && price.signum() < 0) {
      throw new IllegalArgumentException("price must be at least 0, but is " + price);
    }
  }

  public boolean isPriced() {
    return price != null;
  }
}
