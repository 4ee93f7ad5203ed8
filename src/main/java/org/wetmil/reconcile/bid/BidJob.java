package org.wetmil.reconcile.bid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Names;
import org.wetmil.ledger.CurrencyName;
import org.wetmil.ledger.ItemName;

/**
 * A job as it was bid.
 *
 * @param name the job's name, or its number and name
 * @param uses one for each coating
 * @param currency what its prices are in; empty when it does not say
 * @param otherNames other trade words by the key of the coating or class that they mean; every
 *     coating of the catalogue is there, so that one not bid is told from tape and paper
 * @param items the bid's own table of items
 */
public record BidJob(
    String name,
    List<BidUse> uses,
    String currency,
    Map<String, List<String>> otherNames,
    List<ItemName> items) {
  public BidJob {
    uses = List.copyOf(uses);
    items = List.copyOf(items);
    otherNames = Collections.unmodifiableMap(new LinkedHashMap<>(otherNames));
  }

  /** The same with no price that can only be in another currency. */
  public BidJob pricedIn(String money) {
    return CurrencyName.contradict(currency, money)
        ? new BidJob(
            name, uses.stream().map(BidUse::withoutPrice).toList(), currency, otherNames, items)
        : this;
  }

  /** Bids of one job as one: those of the same name, as a change order is. */
  public static List<BidJob> byName(List<BidJob> bids) {
    Map<String, List<BidJob>> byName = new LinkedHashMap<>();
    bids.forEach(
        bid -> byName.computeIfAbsent(Names.key(bid.name()), k -> new ArrayList<>()).add(bid));
    return byName.values().stream().map(BidJob::together).toList();
  }

  private static BidJob together(List<BidJob> bids) {
    if (bids.size() == 1) {
      return bids.get(0);
    }
    Map<String, List<BidUse>> uses = new LinkedHashMap<>();
    Map<String, List<String>> otherNames = new LinkedHashMap<>();
    for (BidJob bid : bids) {
      bid.uses()
          .forEach(
              use ->
                  uses.computeIfAbsent(Names.key(use.coating()), k -> new ArrayList<>()).add(use));
      otherNames.putAll(bid.otherNames());
    }
    return new BidJob(
        bids.get(0).name(),
        uses.values().stream().map(BidUse::together).toList(),
        bids.get(0).currency(),
        otherNames,
        bids.stream().flatMap(bid -> bid.items().stream()).toList());
  }
}
