package org.wetmil.checks;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Quoted;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.estimate.job.JobPrice;
import org.wetmil.estimate.job.Order;
import org.wetmil.estimate.price.Containers;
import org.wetmil.estimate.price.Price;
import org.wetmil.quantity.UnitSystem;

/** Containers and their prices, and the price of the job. */
final class MoneyChecks {
  private static final int MOST_NAMED = 5;

  static final List<Check> ALL =
      List.of(
          new Check(
              "container-sizes",
              Severity.WARNING,
              "Container sizes cannot be used",
              "The order is made in sizes that may not be sold.",
              Kind.HOUSE,
              "sizes above 0 in one unit, each once, with up to three decimals",
              "Type the sizes in one unit, separated by semicolons, as in 1; 5.",
              Rule.ofBid(MoneyChecks::sizes)),
          new Check(
              "container-prices",
              Severity.WARNING,
              "Container prices cannot be used",
              "Without a price for each size there is no cost and no price of the job.",
              Kind.HOUSE,
              "sizes and prices are two lists in one order",
              "Type one price for each size, separated by semicolons, as in 42; 190.",
              Rule.ofBid(MoneyChecks::prices)),
          new Check(
              "price-missing",
              Severity.NOTE,
              "Something is missing for a price",
              "A price is never made up, so there is none and no page for the customer.",
              Kind.HOUSE,
              "a labour rate and a price for every coating of the order",
              "State what is named, if a price is wanted.",
              Rule.ofBid(MoneyChecks::missing)),
          new Check(
              "price-below-cost",
              Severity.WARNING,
              "The price is below its own direct cost",
              "Each hour and each gallon would be done at a loss, before any overhead.",
              Kind.DERIVED,
              "labour, paint, sundries, equipment, access and tax on material of this bid",
              "Raise the price asked, or look for what is counted too high.",
              Rule.ofBid(MoneyChecks::belowCost)));

  private MoneyChecks() {}

  private static Stream<Fault> sizes(FilledBid bid) {
    Catalogue catalogue = bid.bid().catalogue();
    UnitSystem system = bid.bid().system();
    Entry usual = catalogue.entry(Containers.usual(system));
    String fault = Containers.usualFault(catalogue, system);
    Stream<Fault> ofSetting =
        fault.isEmpty() ? Stream.empty() : Stream.of(unusable(usual, "sizes", "1 alone is", fault));
    return Stream.concat(
        ofSetting,
        coatings(bid)
            .filter(coating -> coating.row().get("Container sizes").origin().isYours())
            .filter(coating -> !containers(bid, coating).sizesFault().isEmpty())
            .map(
                coating -> {
                  Containers taken = containers(bid, coating);
                  return unusable(
                      coating.row().get("Container sizes"),
                      "sizes",
                      taken.shown() + " are",
                      taken.sizesFault());
                }));
  }

  private static Stream<Fault> prices(FilledBid bid) {
    return coatings(bid)
        .filter(coating -> coating.row().get("Price").origin().isYours())
        .filter(coating -> !containers(bid, coating).pricesFault().isEmpty())
        .map(
            coating ->
                unusable(
                    coating.row().get("Price"),
                    "prices",
                    "none is",
                    containers(bid, coating).pricesFault()));
  }

  private static Fault unusable(Entry entry, String as, String taken, String expected) {
    String raw = Quoted.of(entry.text());
    return Fault.at(
        Spot.of(entry),
        raw,
        expected,
        "%s cannot be used as %s, so %s taken; expected %s.".formatted(raw, as, taken, expected));
  }

  private static Stream<Coating> coatings(FilledBid bid) {
    Catalogue catalogue = bid.bid().catalogue();
    return catalogue.rows(Tables.COATINGS).stream()
        .map(row -> catalogue.coating(row.name()).orNull());
  }

  private static Containers containers(FilledBid bid, Coating coating) {
    return Containers.of(bid.bid().catalogue(), coating, bid.bid().system());
  }

  private static Stream<Fault> missing(FilledBid bid) {
    List<String> missing = price(bid).missing();
    if (missing.isEmpty()) {
      return Stream.empty();
    }
    int more = missing.size() - MOST_NAMED;
    String named =
        more > 0
            ? String.join(", ", missing.subList(0, MOST_NAMED)) + " and " + more + " more"
            : Say.and(missing);
    return Stream.of(
        Fault.ofJob(
            "",
            "",
            "There is no price for want of %s; state %s if one is wanted."
                .formatted(named, missing.size() == 1 ? "it" : "them")));
  }

  private static Stream<Fault> belowCost(FilledBid bid) {
    return price(bid).price().filter(Price::isBelowDirect).stream()
        .map(
            price -> {
              Entry asked = bid.bid().catalogue().entry(Setting.PRICE_ASKED);
              String currency = bid.bid().catalogue().text(Setting.CURRENCY);
              String measured = amount(price.beforeTax(), currency);
              String limit = amount(price.direct(), currency);
              return Fault.at(
                  Spot.of(asked),
                  measured,
                  limit,
                  "The price of %s before tax is below its own direct cost of %s; %s."
                      .formatted(
                          measured,
                          limit,
                          asked.isStated()
                              ? "raise the price asked"
                              : "look at the rounding step"));
            });
  }

  private static String amount(BigDecimal amount, String currency) {
    return (amount.toPlainString() + " " + currency).strip();
  }

  /** Worked out only where prices are stated. */
  private static JobPrice price(FilledBid bid) {
    Catalogue catalogue = bid.bid().catalogue();
    boolean any =
        catalogue.entry(Setting.LABOUR_RATE).isStated()
            || catalogue.rows(Tables.COATINGS).stream()
                .anyMatch(row -> row.get("Price").isStated());
    return any
        ? JobPrice.of(bid, JobHours.of(bid), Order.asBought(bid))
        : new JobPrice(Optional.empty(), List.of());
  }
}
