package org.wetmil.estimate.price;

import java.math.BigDecimal;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;

/**
 * How a direct cost becomes a price. Shares are plain ratios: 0.10 is 10 %.
 *
 * @param sundries share of paint and labour, at least 0
 * @param taxOnMaterial share of the paint's cost, at least 0
 * @param overhead share, at least 0; of what, {@code profitAs} says
 * @param profit share, at least 0; of what, {@code profitAs} says
 * @param profitAs how overhead and profit are counted
 * @param minimum least price before tax; 0 where there is none
 * @param step price before tax is rounded to the nearest multiple, half up; 0 for none
 * @param asked price before tax that the estimator asks instead; null for the computed one
 * @param taxOnPrice share, at least 0 and below 1
 * @param taxAs what the tax is a share of
 * @param coin every amount is rounded to the nearest multiple of it, half up; 0 for none
 */
public record PriceTerms(
    BigDecimal sundries,
    BigDecimal taxOnMaterial,
    BigDecimal overhead,
    BigDecimal profit,
    ProfitAs profitAs,
    BigDecimal minimum,
    BigDecimal step,
    BigDecimal asked,
    BigDecimal taxOnPrice,
    TaxAs taxAs,
    BigDecimal coin) {

  public PriceTerms {
    if (profitAs == ProfitAs.MARGIN && overhead.add(profit).compareTo(BigDecimal.ONE) >= 0) {
      throw new IllegalArgumentException(
          "overhead and profit as margins must be below 1 together, but are "
              + overhead.add(profit));
    }
  }

  /** How overhead and profit are counted. */
  public enum ProfitAs {
    /** Overhead on the direct cost, profit on both. */
    MARK_UP("mark-up"),
    /** Both on the direct cost. */
    MARK_UP_ON_DIRECT("mark-up on direct"),
    /** Both as shares of the price. */
    MARGIN("margin");

    private final String word;

    ProfitAs(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    static ProfitAs of(String word) {
      for (ProfitAs way : values()) {
        if (way.word.equals(word)) {
          return way;
        }
      }
      throw new IllegalArgumentException(word);
    }
  }

  /** What the tax on the price is a share of. */
  public enum TaxAs {
    /** Of the price before tax. */
    ON_TOP,
    /** Of the total that is paid. */
    INSIDE
  }

  /** Whether the settings' overhead and profit leave a price: as margins, below 1 together. */
  public static boolean isPossible(Catalogue catalogue) {
    return ProfitAs.of(catalogue.text(Setting.PROFIT_AS)) != ProfitAs.MARGIN
        || share(catalogue, Setting.OVERHEAD)
                .add(share(catalogue, Setting.PROFIT))
                .compareTo(BigDecimal.ONE)
            < 0;
  }

  /** The terms that the settings of a bid state; what is not stated is 0. */
  public static PriceTerms of(Catalogue catalogue) {
    return new PriceTerms(
        share(catalogue, Setting.SUNDRIES),
        share(catalogue, Setting.TAX_ON_MATERIAL),
        share(catalogue, Setting.OVERHEAD),
        share(catalogue, Setting.PROFIT),
        ProfitAs.of(catalogue.text(Setting.PROFIT_AS)),
        share(catalogue, Setting.MINIMUM_CHARGE),
        share(catalogue, Setting.ROUNDING_STEP),
        catalogue.entry(Setting.PRICE_ASKED).isStated()
            ? Decimal.typed(catalogue.number(Setting.PRICE_ASKED))
            : null,
        share(catalogue, Setting.TAX_ON_PRICE),
        catalogue.text(Setting.TAX_AS).equals("inside") ? TaxAs.INSIDE : TaxAs.ON_TOP,
        share(catalogue, Setting.SMALLEST_AMOUNT));
  }

  private static BigDecimal share(Catalogue catalogue, Setting setting) {
    double number = catalogue.number(setting);
    return Double.isNaN(number) ? BigDecimal.ZERO : Decimal.typed(number);
  }
}
