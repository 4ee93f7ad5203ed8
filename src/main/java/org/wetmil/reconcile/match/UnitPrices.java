package org.wetmil.reconcile.match;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.wetmil.ledger.HouseFigure;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.ledger.LineKind;

/**
 * Prices of a US gallon by item, to find quantities in a wrong unit: a pail of 5 gal typed as a
 * gallon shows at five times the usual price.
 */
public final class UnitPrices {
  /** Sizes of containers change a price less, and pails for gallons change it more. */
  public static final HouseFigure FAR =
      new HouseFigure(
          "Price far from the others",
          "3",
          "times",
          "times or parts of the usual price of an item from which a unit mistake is likely");

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
   * What a line's price is to be compared with: the median of the item's other prices and the price
   * bid. One other purchase alone tells nothing, since either may be wrong.
   *
   * @param bidPerGal price bid; NaN when not known
   * @return NaN when there is nothing to compare with, or the two in the middle are far apart
   */
  public double usual(LedgerLine line, double bidPerGal) {
    double[] prices = byItem.getOrDefault(key(line), new double[0]);
    int at = Arrays.binarySearch(prices, pricePerGal(line));
    int others = prices.length - 1;
    if (others >= 3) {
      return middle(rank -> prices[rank < at ? rank : rank + 1], others);
    }
    double[] few =
        DoubleStream.concat(
                IntStream.range(0, prices.length).filter(i -> i != at).mapToDouble(i -> prices[i]),
                DoubleStream.of(bidPerGal).filter(bid -> !Double.isNaN(bid)))
            .sorted()
            .toArray();
    boolean oneOther = few.length == 1 && Double.isNaN(bidPerGal);
    return few.length == 0 || oneOther ? Double.NaN : middle(rank -> few[rank], few.length);
  }

  private static double middle(IntToDoubleFunction sorted, int count) {
    double low = sorted.applyAsDouble((count - 1) / 2);
    double high = sorted.applyAsDouble(count / 2);
    return isFar(high, low) ? Double.NaN : (low + high) / 2;
  }

  public static boolean isFar(double pricePerGal, double usual) {
    double ratio = pricePerGal / usual;
    return ratio >= FAR.number() || ratio <= 1 / FAR.number();
  }

  private static String key(LedgerLine line) {
    return Phrases.key(line.itemOrDescription()) + " " + line.currency();
  }
}
