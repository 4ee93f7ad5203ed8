package org.wetmil.estimate.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CoverTest {

  @Test
  void largestContainersFirstIsNotAlwaysCheapest() {
    // 8 gal: two pails are 80, one pail and three cans are 85; one pail and one of 3 gal are 62
    Cover cover = Cover.best(List.of(sold("5", "40"), sold("3", "22"), sold("1", "15")), 8);

    assertThat(cover.lots())
        .containsExactly(new Cover.Lot(sold("5", "40"), 1), new Cover.Lot(sold("3", "22"), 1));
    assertThat(cover.cost()).isEqualByComparingTo("62");
    assertThat(cover.leftOver()).isZero();
  }

  @Test
  void anotherPailIsTakenWhereItCostsLessThanTheCans() {
    Cover cover = Cover.best(List.of(sold("1", "42"), sold("5", "160")), 9);

    assertThat(cover.lots()).containsExactly(new Cover.Lot(sold("5", "160"), 2));
    assertThat(cover.leftOver()).isCloseTo(1, within(1e-12));
  }

  @Test
  void equalCostLeavesLeastOver() {
    Cover cover = Cover.best(List.of(sold("1", "10"), sold("2", "10")), 1);

    assertThat(cover.lots()).containsExactly(new Cover.Lot(sold("1", "10"), 1));
  }

  @Test
  void equalCostAndRestTakesTheFewest() {
    Cover cover = Cover.best(List.of(sold("1", "8"), sold("5", "40")), 10);

    assertThat(cover.lots()).containsExactly(new Cover.Lot(sold("5", "40"), 2));
  }

  @Test
  void withoutPricesLeastIsLeftOverThenFewestTaken() {
    assertThat(Cover.best(List.of(sold("1"), sold("5")), 7.2).lots())
        .containsExactly(new Cover.Lot(sold("5"), 1), new Cover.Lot(sold("1"), 3));
    assertThat(Cover.best(List.of(sold("1"), sold("5"), sold("15")), 14.5).lots())
        .containsExactly(new Cover.Lot(sold("15"), 1));
  }

  @Test
  void needExactlyAtAContainerBuysNoOther() {
    assertThat(Cover.best(List.of(sold("1"), sold("5")), 5 + 4e-16).count()).isEqualTo(1);
    assertThat(Cover.best(List.of(sold("1"), sold("5")), 5.001).count()).isEqualTo(2);
  }

  @Test
  void nothingNeededBuysNothing() {
    Cover cover = Cover.best(List.of(sold("5", "40")), 0);

    assertThat(cover.lots()).isEmpty();
    assertThat(cover.cost()).isEqualByComparingTo("0");
  }

  @Test
  void costIsDecimal() {
    Cover cover = Cover.best(List.of(sold("1", "0.10")), 3);

    assertThat(cover.cost()).isEqualTo(new BigDecimal("0.30"));
  }

  @Test
  void hugeNeedInOddSizesIsCovered() {
    Cover cover = Cover.best(List.of(sold("0.946"), sold("3.785"), sold("18.927")), 20_000);

    double bought =
        cover.lots().stream()
            .mapToDouble(lot -> lot.count() * lot.container().size().doubleValue())
            .sum();
    assertThat(bought).isGreaterThanOrEqualTo(20_000);
    assertThat(cover.leftOver()).isLessThan(0.01);
  }

  @Test
  void needPastEveryJobIsStillCovered() {
    Cover cover = Cover.best(List.of(sold("1", "42"), sold("5", "190")), 1e15);

    assertThat(cover.lots()).containsExactly(new Cover.Lot(sold("5", "190"), 200_000_000_000_000L));
    assertThat(cover.cost()).isEqualByComparingTo("38000000000000000");
  }

  @Test
  void everyMixTriedByHandFindsNothingBetter() {
    Random random = new Random(20_240_517);
    for (int round = 0; round < 2_000; round++) {
      List<Container> sizes = new ArrayList<>();
      int kinds = 1 + random.nextInt(3);
      boolean priced = random.nextInt(4) > 0;
      for (int i = 0; i < kinds; i++) {
        BigDecimal size = BigDecimal.valueOf(25 + 25L * random.nextInt(24), 2);
        BigDecimal price = priced ? BigDecimal.valueOf(100 + random.nextInt(900), 1) : null;
        sizes.add(new Container(size, price));
      }
      double need = random.nextInt(4) == 0 ? random.nextInt(13) : random.nextDouble() * 12;

      assertThat(score(Cover.best(sizes, need), need))
          .as("seed round %s: %s of %s", round, need, sizes)
          .isEqualTo(new Best(sizes, need).find());
    }
  }

  @Test
  void sizesOfWhichSomeAreWithoutPriceAreRefused() {
    assertThatThrownBy(() -> Cover.best(List.of(sold("1", "10"), sold("5")), 3))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Cost, volume bought and containers, as exact text. */
  private static List<BigDecimal> score(Cover cover, double need) {
    BigDecimal volume = BigDecimal.ZERO;
    for (Cover.Lot lot : cover.lots()) {
      volume = volume.add(lot.container().size().multiply(BigDecimal.valueOf(lot.count())));
    }
    assertThat(volume.doubleValue()).isGreaterThanOrEqualTo(need - 1e-9);
    BigDecimal cost = cover.cost() == null ? BigDecimal.ZERO : cover.cost();
    return plain(cost, volume, cover.count());
  }

  private static List<BigDecimal> plain(BigDecimal cost, BigDecimal volume, long count) {
    return List.of(
        cost.stripTrailingZeros(), volume.stripTrailingZeros(), BigDecimal.valueOf(count));
  }

  /** Tries every mix, up to one container beyond the need. */
  private static final class Best {
    private final List<Container> sizes;
    private final BigDecimal need;
    private BigDecimal cost;
    private BigDecimal volume;
    private int count;

    Best(List<Container> sizes, double need) {
      this.sizes = sizes;
      this.need = new BigDecimal(need);
    }

    List<BigDecimal> find() {
      visit(0, BigDecimal.ZERO, BigDecimal.ZERO, 0);
      return plain(cost, volume, count);
    }

    private void visit(int at, BigDecimal spent, BigDecimal bought, int taken) {
      if (at == sizes.size()) {
        if (bought.compareTo(need) >= 0 && isBetter(spent, bought, taken)) {
          cost = spent;
          volume = bought;
          count = taken;
        }
        return;
      }
      Container size = sizes.get(at);
      BigDecimal price = size.isPriced() ? size.price() : BigDecimal.ZERO;
      for (int n = 0; ; n++) {
        BigDecimal own = size.size().multiply(BigDecimal.valueOf(n));
        visit(at + 1, spent.add(price.multiply(BigDecimal.valueOf(n))), bought.add(own), taken + n);
        if (own.compareTo(need) >= 0) {
          return;
        }
      }
    }

    private boolean isBetter(BigDecimal spent, BigDecimal bought, int taken) {
      if (cost == null || spent.compareTo(cost) != 0) {
        return cost == null || spent.compareTo(cost) < 0;
      }
      int byVolume = bought.compareTo(volume);
      return byVolume < 0 || (byVolume == 0 && taken < count);
    }
  }

  private static Container sold(String size, String price) {
    return new Container(new BigDecimal(size), new BigDecimal(price));
  }

  private static Container sold(String size) {
    return new Container(new BigDecimal(size), null);
  }
}
