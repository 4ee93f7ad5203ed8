package org.wetmil.reconcile.match;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.ledger.LineKind;

/**
 * Prices of a US gallon by item, to find quantities in a wrong unit: a pail of 5 gal typed as a
 * gallon shows at five times the usual price.
 */
public final class UnitPrices {
  /** Sizes of containers change a price less, and pails for gallons change it more (house). */
  private static final double FAR = 3;

  private final Map<String, double[]> byItem;

  public UnitPrices(List<LedgerLine> lines) {
    byItem =
        lines.stream()
            .filter(line -> !Double.isNaN(pricePerGal(line)))
            .collect(
                Collectors.groupingBy(
                    UnitPrices::key,
                    HashMap::new,
                    Collectors.collectingAndThen(
                        Collectors.toList(),
                        group ->
                            group.stream()
                                .mapToDouble(UnitPrices::pricePerGal)
                                .sorted()
                                .toArray())));
  }

  /** Money of a US gallon on a line; NaN when it is no purchase or return with both. */
  public static double pricePerGal(LedgerLine line) {
    boolean priced = line.kind() == LineKind.PURCHASE || line.kind() == LineKind.RETURN;
    if (!priced || line.money() == null || line.money().signum() == 0 || !(line.volumeGal() > 0)) {
      return Double.NaN;
    }
    return line.money().doubleValue() / line.volumeGal();
  }

  /**
   * What a line's price is to be compared with: the median of the item's other prices where there
   * are two or more, else the price bid.
   *
   * @param bidPerGal price bid; NaN when not known
   * @return NaN when there is nothing to compare with
   */
  public double usual(LedgerLine line, double bidPerGal) {
    double[] prices = byItem.getOrDefault(key(line), new double[0]);
    return prices.length >= 3 ? medianWithout(prices, pricePerGal(line)) : bidPerGal;
  }

  public static boolean isFar(double pricePerGal, double usual) {
    double ratio = pricePerGal / usual;
    return ratio >= FAR || ratio <= 1 / FAR;
  }

  private static double medianWithout(double[] sorted, double price) {
    int at = Arrays.binarySearch(sorted, price);
    int others = sorted.length - 1;
    int low = (others - 1) / 2;
    int high = others / 2;
    double a = sorted[low < at ? low : low + 1];
    double b = sorted[high < at ? high : high + 1];
    return (a + b) / 2;
  }

  private static String key(LedgerLine line) {
    return Phrases.key(line.itemOrDescription()) + " " + line.currency();
  }
}
