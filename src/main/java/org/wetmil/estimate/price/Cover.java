package org.wetmil.estimate.price;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Whole containers that cover a need.
 *
 * <p>The cheapest mix; of equally cheap ones the one that leaves least over, then the one with the
 * fewest containers. Without prices, least left over, then fewest. The search is exact: over every
 * total in steps of the greatest common measure of the sizes, up to {@value #MOST_STEPS} of them.
 *
 * @param lots sizes taken, largest first; empty when nothing is needed
 * @param leftOver what is bought beyond the need, in the unit of the sizes
 * @param cost cost of all; null where prices are not stated
 */
public record Cover(List<Lot> lots, double leftOver, BigDecimal cost) {
  /** A last bit of a double must not buy another container (house). */
  private static final double ROUNDING = 1e-9;

  /**
   * Most steps searched; a larger need is first brought down by whole containers of the size that
   * is cheapest by volume (house: memory). In sizes that are whole this is past any job.
   */
  private static final long MOST_STEPS = 4_000_000;

  /** Containers of one size. */
  public record Lot(Container container, long count) {}

  public Cover {
    lots = List.copyOf(lots);
  }

  /** How many containers there are in all. */
  public long count() {
    return lots.stream().mapToLong(Lot::count).sum();
  }

  /**
   * The best mix.
   *
   * @param sizes at least one; all priced or none
   * @param need volume in the unit of the sizes, at least 0 and finite
   */
  public static Cover best(List<Container> sizes, double need) {
    if (sizes.isEmpty() || !(need >= 0) || Double.isInfinite(need)) {
      throw new IllegalArgumentException("no sizes, or a need of " + need);
    }
    boolean priced = sizes.stream().allMatch(Container::isPriced);
    if (!priced && sizes.stream().anyMatch(Container::isPriced)) {
      throw new IllegalArgumentException("some sizes have a price and some have none");
    }
    List<Container> largestFirst =
        sizes.stream().sorted(Comparator.comparing(Container::size).reversed()).toList();
    return new Search(largestFirst, priced).cover(need);
  }

  /** The search itself, in whole steps of volume and of money. */
  private static final class Search {
    private final List<Container> sizes;
    private final boolean priced;
    private final BigDecimal step;
    private final int[] steps;
    private final long[] prices;

    Search(List<Container> sizes, boolean priced) {
      this.sizes = sizes;
      this.priced = priced;
      this.step = commonMeasure(sizes.stream().map(Container::size).toList());
      this.steps =
          sizes.stream()
              .mapToInt(c -> c.size().divideToIntegralValue(step).intValueExact())
              .toArray();
      this.prices = priced ? inSmallestCoin() : new long[sizes.size()];
    }

    Cover cover(double need) {
      double least = Math.max(0, need - ROUNDING);
      long wanted =
          BigDecimal.valueOf(least).divide(step, 0, RoundingMode.CEILING).longValueExact();
      long[] counts = new long[sizes.size()];
      long rest = wanted;
      if (rest > MOST_STEPS) {
        int bulk = cheapestByVolume();
        counts[bulk] = (rest - MOST_STEPS) / steps[bulk];
        rest -= counts[bulk] * steps[bulk];
      }
      addBest(counts, (int) rest);
      return asCover(counts, need);
    }

    /** Cheapest way to every total, then the best total that covers the need. */
    private void addBest(long[] counts, int wanted) {
      int top = wanted + Arrays.stream(steps).max().orElseThrow();
      long[] cost = new long[top];
      int[] pieces = new int[top];
      int[] last = new int[top];
      Arrays.fill(last, -1);
      for (int total = 1; total < top; total++) {
        for (int i = 0; i < steps.length; i++) {
          int from = total - steps[i];
          if (from < 0 || (from > 0 && last[from] < 0)) {
            continue;
          }
          long price = cost[from] + prices[i];
          int number = pieces[from] + 1;
          if (last[total] < 0
              || price < cost[total]
              || (price == cost[total] && number < pieces[total])) {
            cost[total] = price;
            pieces[total] = number;
            last[total] = i;
          }
        }
      }
      int best = -1;
      for (int total = wanted; total < top; total++) {
        boolean reached = total == 0 || last[total] >= 0;
        if (reached && (best < 0 || cost[total] < cost[best])) {
          best = total;
        }
      }
      for (int total = best; total > 0; total -= steps[last[total]]) {
        counts[last[total]]++;
      }
    }

    private Cover asCover(long[] counts, double need) {
      List<Lot> lots = new ArrayList<>();
      BigDecimal volume = BigDecimal.ZERO;
      BigDecimal cost = BigDecimal.ZERO;
      for (int i = 0; i < counts.length; i++) {
        if (counts[i] > 0) {
          BigDecimal number = BigDecimal.valueOf(counts[i]);
          lots.add(new Lot(sizes.get(i), counts[i]));
          volume = volume.add(sizes.get(i).size().multiply(number));
          cost = priced ? cost.add(sizes.get(i).price().multiply(number)) : cost;
        }
      }
      return new Cover(lots, Math.max(0, volume.doubleValue() - need), priced ? cost : null);
    }

    /** Size with the least price for its volume; without prices the largest. */
    private int cheapestByVolume() {
      int best = 0;
      for (int i = 1; i < steps.length; i++) {
        if (Math.multiplyExact(prices[i], (long) steps[best])
            < Math.multiplyExact(prices[best], (long) steps[i])) {
          best = i;
        }
      }
      return best;
    }

    private long[] inSmallestCoin() {
      int scale = sizes.stream().mapToInt(c -> c.price().scale()).max().orElse(0);
      return sizes.stream()
          .mapToLong(c -> c.price().setScale(Math.max(0, scale)).unscaledValue().longValueExact())
          .toArray();
    }

    private static BigDecimal commonMeasure(List<BigDecimal> sizes) {
      int scale = Math.max(0, sizes.stream().mapToInt(BigDecimal::scale).max().orElse(0));
      BigInteger measure =
          sizes.stream()
              .map(size -> size.setScale(scale).unscaledValue())
              .reduce(BigInteger.ZERO, BigInteger::gcd);
      return new BigDecimal(measure, scale);
    }
  }
}
