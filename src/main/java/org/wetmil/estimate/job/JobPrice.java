package org.wetmil.estimate.job;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.price.CostItem;
import org.wetmil.estimate.price.Cover;
import org.wetmil.estimate.price.Decimal;
import org.wetmil.estimate.price.Price;
import org.wetmil.estimate.price.PriceTerms;

/**
 * The price of a job, where everything that it needs is stated: a price is never invented.
 *
 * @param price empty when something is missing or nothing is priced
 * @param missing what would have to be stated; empty when there is a price, or when no price is
 *     stated anywhere, so that none is asked for
 */
public record JobPrice(Optional<Price> price, List<String> missing) {
  public JobPrice {
    missing = List.copyOf(missing);
  }

  /** Prices a filled bid from its hours and its order. */
  public static JobPrice of(FilledBid filled, JobHours hours, Order order) {
    Catalogue catalogue = filled.bid().catalogue();
    boolean wage = catalogue.entry(Setting.LABOUR_RATE).isStated();
    boolean anyPaint = order.items().stream().anyMatch(item -> item.containers().isPriced());
    if (!wage && !anyPaint) {
      return new JobPrice(Optional.empty(), List.of());
    }
    List<String> missing = new ArrayList<>();
    if (!wage) {
      missing.add("the setting " + Setting.LABOUR_RATE.title());
    }
    order.items().stream()
        .filter(item -> !item.containers().isPriced())
        .map(item -> "the price of " + item.product().name())
        .distinct()
        .forEach(missing::add);
    if (!PriceTerms.isPossible(catalogue)) {
      missing.add("overhead and profit that are below 100 % together, since they are margins");
    }
    if (!missing.isEmpty() || order.items().isEmpty()) {
      return new JobPrice(Optional.empty(), missing);
    }
    Price price = Price.of(items(catalogue, hours, order, item -> 1), PriceTerms.of(catalogue));
    return new JobPrice(Optional.of(price), List.of());
  }

  /** Wage with burden for one person-hour. */
  static BigDecimal burdenedRate(Catalogue catalogue) {
    BigDecimal burden = Decimal.typed(catalogue.number(Setting.BURDEN));
    return Decimal.typed(catalogue.number(Setting.LABOUR_RATE))
        .multiply(BigDecimal.ONE.add(burden));
  }

  /**
   * What the job costs.
   *
   * @param ofOrdered how much is taken of an item against what is ordered of it
   */
  static List<CostItem> items(
      Catalogue catalogue, JobHours hours, Order order, ToDoubleFunction<Order.Item> ofOrdered) {
    List<CostItem> items = new ArrayList<>();
    items.add(
        new CostItem(
            CostItem.Kind.LABOUR,
            "Labour, hours",
            Decimal.typed(hours.number(JobFigure.TOTAL)),
            burdenedRate(catalogue)));
    for (Order.Item item : order.items()) {
      BigDecimal share = Decimal.typed(ofOrdered.applyAsDouble(item));
      for (Cover.Lot lot : item.cover().lots()) {
        items.add(
            new CostItem(
                CostItem.Kind.MATERIAL,
                "%s, %s %s"
                    .formatted(
                        item.title(),
                        lot.container().size().toPlainString(),
                        item.containers().unit().symbol()),
                BigDecimal.valueOf(lot.count()).multiply(share),
                lot.container().price()));
      }
    }
    stated(catalogue, Setting.EQUIPMENT, CostItem.Kind.EQUIPMENT, items);
    stated(catalogue, Setting.ACCESS, CostItem.Kind.ACCESS, items);
    return items;
  }

  private static void stated(
      Catalogue catalogue, Setting setting, CostItem.Kind kind, List<CostItem> items) {
    if (catalogue.entry(setting).isStated()) {
      items.add(CostItem.of(kind, setting.title(), Decimal.typed(catalogue.number(setting))));
    }
  }
}
