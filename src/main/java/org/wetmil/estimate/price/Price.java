package org.wetmil.estimate.price;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.wetmil.estimate.price.CostItem.Kind;

/**
 * A price with all its parts. Parts are rounded to the smallest amount of the terms before they are
 * added, so that what is printed adds up.
 *
 * @param parts the direct cost, item by item, in the order labour, material, sundries, equipment,
 *     access, tax on material
 * @param direct sum of the parts
 * @param overhead amount for overhead
 * @param profit amount for profit
 * @param toMinimum what lifts the price to the minimum charge, else 0
 * @param rounding what the rounding step adds or takes
 * @param adjustment what leads from the computed price to the one asked, else 0
 * @param beforeTax the price before tax
 * @param tax tax on the price
 * @param total what is to be paid
 */
public record Price(
    List<Part> parts,
    BigDecimal direct,
    BigDecimal overhead,
    BigDecimal profit,
    BigDecimal toMinimum,
    BigDecimal rounding,
    BigDecimal adjustment,
    BigDecimal beforeTax,
    BigDecimal tax,
    BigDecimal total) {

  public Price {
    parts = List.copyOf(parts);
  }

  /** One item of the direct cost with its amount. */
  public record Part(CostItem item, BigDecimal amount) {}

  /**
   * Adds up items and takes them to a price.
   *
   * <p>direct = items + sundries share x (labour + material) + tax share x material. As mark-up:
   * overhead on direct, profit on both; as mark-up on direct: both on direct; as margin: direct /
   * (1 - overhead - profit). Then the minimum charge, the rounding step, the price asked, the tax.
   */
  public static Price of(List<CostItem> items, PriceTerms terms) {
    List<Part> parts = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      items.stream().filter(item -> item.kind() == kind).forEach(item -> add(parts, item, terms));
      if (kind == Kind.SUNDRIES) {
        BigDecimal of = sum(parts, Kind.LABOUR).add(sum(parts, Kind.MATERIAL));
        addShare(parts, kind, "Sundries", terms.sundries(), of, terms);
      } else if (kind == Kind.TAX) {
        BigDecimal of = sum(parts, Kind.MATERIAL);
        addShare(parts, kind, "Tax on material", terms.taxOnMaterial(), of, terms);
      }
    }
    BigDecimal direct = parts.stream().map(Part::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    return priced(parts, direct, terms);
  }

  private static Price priced(List<Part> parts, BigDecimal direct, PriceTerms terms) {
    BigDecimal overhead;
    BigDecimal profit;
    switch (terms.profitAs()) {
      case MARK_UP -> {
        overhead = rounded(direct.multiply(terms.overhead()), terms.coin());
        profit = rounded(direct.add(overhead).multiply(terms.profit()), terms.coin());
      }
      case MARK_UP_ON_DIRECT -> {
        overhead = rounded(direct.multiply(terms.overhead()), terms.coin());
        profit = rounded(direct.multiply(terms.profit()), terms.coin());
      }
      default -> {
        BigDecimal kept = BigDecimal.ONE.subtract(terms.overhead()).subtract(terms.profit());
        BigDecimal price = rounded(direct.divide(kept, MathContext.DECIMAL128), terms.coin());
        overhead = rounded(price.multiply(terms.overhead()), terms.coin());
        profit = price.subtract(direct).subtract(overhead);
      }
    }
    BigDecimal computed = direct.add(overhead).add(profit);
    BigDecimal lifted = computed.max(terms.minimum());
    BigDecimal stepped = rounded(lifted, terms.step());
    BigDecimal beforeTax = terms.asked() == null ? stepped : terms.asked();
    BigDecimal share =
        terms.taxAs() == PriceTerms.TaxAs.ON_TOP
            ? terms.taxOnPrice()
            : terms
                .taxOnPrice()
                .divide(BigDecimal.ONE.subtract(terms.taxOnPrice()), MathContext.DECIMAL128);
    BigDecimal tax = rounded(beforeTax.multiply(share), terms.coin());
    return new Price(
        parts,
        direct,
        overhead,
        profit,
        lifted.subtract(computed),
        stepped.subtract(lifted),
        beforeTax.subtract(stepped),
        beforeTax,
        tax,
        beforeTax.add(tax));
  }

  /** What the items of one kind come to. */
  public BigDecimal amount(Kind kind) {
    return sum(parts, kind);
  }

  /** Whether the price is under what the work itself costs. */
  public boolean isBelowDirect() {
    return isBelow(beforeTax, direct);
  }

  /** Whether a price before tax is under a direct cost. */
  public static boolean isBelow(BigDecimal price, BigDecimal direct) {
    return price.compareTo(direct) < 0;
  }

  /** What is over the direct cost, as a share of the direct cost; null without a cost. */
  public BigDecimal markUp() {
    return over(direct);
  }

  /** What is over the direct cost, as a share of the price before tax; null without a price. */
  public BigDecimal margin() {
    return over(beforeTax);
  }

  private BigDecimal over(BigDecimal whole) {
    return whole.signum() == 0
        ? null
        : beforeTax.subtract(direct).divide(whole, MathContext.DECIMAL64);
  }

  /** Nearest multiple of a step, half away from zero; the value itself where the step is 0. */
  static BigDecimal rounded(BigDecimal value, BigDecimal step) {
    return step.signum() == 0 ? value : value.divide(step, 0, RoundingMode.HALF_UP).multiply(step);
  }

  private static void add(List<Part> parts, CostItem item, PriceTerms terms) {
    parts.add(new Part(item, rounded(item.quantity().multiply(item.unitPrice()), terms.coin())));
  }

  private static void addShare(
      List<Part> parts,
      Kind kind,
      String title,
      BigDecimal share,
      BigDecimal of,
      PriceTerms terms) {
    if (share.signum() > 0) {
      add(parts, new CostItem(kind, title, share, of), terms);
    }
  }

  private static BigDecimal sum(List<Part> parts, Kind kind) {
    return parts.stream()
        .filter(part -> part.item().kind() == kind)
        .map(Part::amount)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
