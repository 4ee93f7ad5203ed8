package org.wetmil.reconcile.bid;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Tables;
import org.wetmil.catalogue.Texture;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.Yield;

/** Takes from a filled bid what each coating of the job was to use. */
public final class BidUses {
  private BidUses() {}

  /** The lines that count, summed by coating in the order of the bid. */
  public static BidJob of(FilledBid filled) {
    Catalogue catalogue = filled.bid().catalogue();
    UnitSystem system = filled.bid().system();
    Map<String, List<BidUse>> byCoating = new LinkedHashMap<>();
    filled
        .lines()
        .filter(FilledLine::isCounted)
        .filter(line -> line.base(FilledColumn.PAINT) > 0)
        .forEach(
            line ->
                byCoating
                    .computeIfAbsent(line.work().coating().name(), name -> new ArrayList<>())
                    .add(use(line, catalogue, system)));
    Map<String, List<String>> otherNames = new LinkedHashMap<>();
    catalogue
        .rows(Tables.COATINGS)
        .forEach(
            row ->
                otherNames.put(
                    Names.key(row.name()), catalogue.otherNames(Tables.COATINGS, row.name())));
    return new BidJob(
        filled.bid().job(), byCoating.values().stream().map(BidUse::together).toList(), otherNames);
  }

  private static BidUse use(FilledLine line, Catalogue catalogue, UnitSystem system) {
    Coating coating = line.work().coating();
    double area = line.base(FilledColumn.NET_AREA);
    double coats = line.base(FilledColumn.COATS);
    double dryMil = line.base(FilledColumn.DRY_FILM) / coats;
    double paint = line.base(FilledColumn.PAINT);
    double theoretical = Yield.theoreticalGallons(area, coats, dryMil, coating.volumeSolids());
    double waste = catalogue.number(line.work().waste());
    Texture texture = line.work().texture();
    double roughness = texture == null || coating.fillsVoids() ? 1 : texture.roughness();
    List<Container> containers = Container.of(coating.row(), system);
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
        Container.pricePerGal(containers),
        containers.stream().mapToDouble(Container::gallons).min().orElse(Double.NaN));
  }

  /** A container as sold: the two lists of the Coatings table, side by side. */
  private record Container(double gallons, BigDecimal price) {

    static List<Container> of(Row row, UnitSystem system) {
      String[] sizes = row.text("Container sizes").split(";");
      String[] prices = row.text("Price").split(";");
      Unit unit = system == UnitSystem.US ? Unit.GALLON : Unit.LITRE;
      List<Container> containers = new ArrayList<>();
      for (int i = 0; i < sizes.length; i++) {
        BigDecimal size = number(sizes[i]);
        if (size != null && size.signum() > 0) {
          BigDecimal price = prices.length == sizes.length ? number(prices[i]) : null;
          containers.add(new Container(unit.to(Unit.GALLON, size.doubleValue()), price));
        }
      }
      return containers;
    }

    /** Price of a gallon in the largest container that has a price; null without any. */
    static BigDecimal pricePerGal(List<Container> containers) {
      Container largest = null;
      for (Container container : containers) {
        if (container.price != null && (largest == null || container.gallons > largest.gallons)) {
          largest = container;
        }
      }
      return largest == null
          ? null
          : largest.price.divide(BigDecimal.valueOf(largest.gallons), MathContext.DECIMAL64);
    }

    private static BigDecimal number(String text) {
      try {
        return new BigDecimal(text.strip());
      } catch (NumberFormatException e) {
        return null; // a finding about the Coatings sheet says so
      }
    }
  }
}
