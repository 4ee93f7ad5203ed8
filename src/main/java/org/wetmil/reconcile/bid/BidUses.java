package org.wetmil.reconcile.bid;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.catalogue.Texture;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.price.Containers;
import org.wetmil.ledger.CurrencyName;
import org.wetmil.ledger.ItemName;
import org.wetmil.quantity.Unit;
import org.wetmil.trade.Yield;

/** Takes from a filled bid what each coating of the job was to use. */
public final class BidUses {
  private BidUses() {}

  /**
   * The lines that count, summed by coating in the order of the bid.
   *
   * @param items the bid's own table of items
   */
  public static BidJob of(FilledBid filled, List<ItemName> items) {
    Catalogue catalogue = filled.bid().catalogue();
    Map<String, List<BidUse>> byCoating = new LinkedHashMap<>();
    filled
        .lines()
        .filter(FilledLine::isCounted)
        .filter(line -> line.base(FilledColumn.PAINT) > 0)
        .forEach(
            line ->
                byCoating
                    .computeIfAbsent(line.work().coating().name(), name -> new ArrayList<>())
                    .add(use(line, catalogue)));
    Map<String, List<String>> otherNames = new LinkedHashMap<>();
    catalogue
        .rows(Tables.COATINGS)
        .forEach(
            row ->
                otherNames.put(
                    Names.key(row.name()), catalogue.otherNames(Tables.COATINGS, row.name())));
    return new BidJob(
        filled.bid().job(),
        byCoating.values().stream().map(BidUse::together).toList(),
        CurrencyName.of(catalogue.text(Setting.CURRENCY)),
        otherNames,
        items);
  }

  private static BidUse use(FilledLine line, Catalogue catalogue) {
    Coating coating = line.work().coating();
    double area = line.base(FilledColumn.NET_AREA);
    double coats = line.base(FilledColumn.COATS);
    double dryMil = line.base(FilledColumn.DRY_FILM) / coats;
    double paint = line.base(FilledColumn.PAINT);
    double theoretical = Yield.theoreticalGallons(area, coats, dryMil, coating.volumeSolids());
    double waste = catalogue.number(line.work().waste());
    Texture texture = line.work().texture();
    double roughness = texture == null || coating.fillsVoids() ? 1 : texture.roughness();
    Containers containers = Containers.of(catalogue, coating, line.system());
    double smallest =
        containers.sizes().stream()
            .mapToDouble(size -> containers.unit().to(Unit.GALLON, size.size().doubleValue()))
            .min()
            .orElseThrow();
    return new BidUse(
        coating.name(),
        coating.className(),
        area,
        area * coats,
        dryMil,
        theoretical,
        paint,
        Yield.impliedTransferEfficiency(theoretical / paint, waste, roughness),
        waste,
        roughness,
        containers.isPriced() ? BigDecimal.valueOf(containers.cheapest(Unit.GALLON)) : null,
        smallest);
  }
}
