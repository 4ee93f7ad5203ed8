package org.wetmil.estimate.price;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Coating;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Origin;
import org.wetmil.catalogue.Setting;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/**
 * The sizes that a product is sold in, with their prices.
 *
 * <p>Sizes and prices are two lists in one order: {@code 1; 5} and {@code 42; 190}.
 *
 * @param unit what the sizes are in
 * @param sizes at least one; all priced or none
 * @param sizesFault what is wrong with the sizes that the estimator states; empty when nothing is
 * @param pricesFault what is wrong with the prices; empty when nothing is
 */
public record Containers(Unit unit, List<Container> sizes, String sizesFault, String pricesFault) {
  /** Finer or larger sizes are not sold, and would make the search for a mix slow (house). */
  private static final int MOST_DECIMALS = 3;

  private static final BigDecimal LARGEST = BigDecimal.valueOf(1500);

  /** No container costs more; with four decimals the search stays in whole numbers (house). */
  private static final BigDecimal DEAREST = BigDecimal.valueOf(100_000_000);

  private static final int MOST_PRICE_DECIMALS = 4;

  public Containers {
    sizes = List.copyOf(sizes);
  }

  /** The sizes of a coating, else the usual ones of the settings. */
  public static Containers of(Catalogue catalogue, Coating coating, UnitSystem system) {
    Entry stated = coating.row().get("Container sizes");
    Unit fallback = Quantity.VOLUME.unit(system);
    Sizes sizes = sizes(catalogue.text(usual(system)), fallback);
    if (sizes.values().isEmpty()) {
      sizes = new Sizes(fallback, List.of(BigDecimal.ONE), sizes.fault());
    }
    if (stated.isStated()) {
      Sizes own = sizes(stated.text(), unit(stated).orElse(fallback));
      sizes = own.fault().isEmpty() ? own : new Sizes(sizes.unit(), sizes.values(), own.fault());
    }
    return priced(sizes, coating.row().text("Price"));
  }

  /** The setting that holds the sizes of coatings that state none. */
  public static Setting usual(UnitSystem system) {
    return system == UnitSystem.US ? Setting.CONTAINER_SIZES : Setting.CONTAINER_SIZES_METRIC;
  }

  /** What is wrong with the sizes of that setting; empty when nothing is. */
  public static String usualFault(Catalogue catalogue, UnitSystem system) {
    return sizes(catalogue.text(usual(system)), Quantity.VOLUME.unit(system)).fault();
  }

  /** The sizes as a list for the reader, with their unit. */
  public String shown() {
    return sizes.stream()
        .map(each -> each.size().toPlainString() + " " + unit.symbol())
        .collect(Collectors.joining("; "));
  }

  public boolean isPriced() {
    return sizes.get(0).isPriced();
  }

  /** Least price of one unit of volume over the sizes; only where they are priced. */
  public double cheapest(Unit of) {
    double inUnit = of.to(unit, 1);
    return sizes.stream()
            .map(size -> size.price().divide(size.size(), MathContext.DECIMAL64))
            .min(BigDecimal::compareTo)
            .orElseThrow()
            .doubleValue()
        * inUnit;
  }

  /** The best mix of these for a need. */
  public Cover cover(double needGal) {
    return Cover.best(sizes, Unit.GALLON.to(unit, needGal));
  }

  private static Containers priced(Sizes sizes, String text) {
    List<BigDecimal> prices = new ArrayList<>();
    String fault = "";
    if (!text.isBlank()) {
      List<String> parts = parts(text.replaceAll("\\p{Sc}", ""));
      for (String part : parts) {
        number(part, DecimalMark.seenIn(parts))
            .filter(value -> value.unit().isEmpty())
            .map(value -> Decimal.typed(value.value()))
            .filter(Containers::isPrice)
            .ifPresent(prices::add);
      }
      if (prices.size() != parts.size()) {
        fault = "prices without currency or unit, separated by semicolons: 42; 190";
      } else if (prices.size() != sizes.values().size()) {
        fault = "as many prices as sizes: " + sizes.values().size();
      } else if (!sizes.fault().isEmpty()) {
        fault = "sizes that can be read beside these prices";
      }
    }
    List<Container> containers = new ArrayList<>();
    for (int i = 0; i < sizes.values().size(); i++) {
      boolean known = fault.isEmpty() && !prices.isEmpty();
      containers.add(new Container(sizes.values().get(i), known ? prices.get(i) : null));
    }
    return new Containers(sizes.unit(), containers, sizes.fault(), fault);
  }

  /** Sizes in one unit; empty where they cannot be read. */
  private record Sizes(Unit unit, List<BigDecimal> values, String fault) {}

  private static Sizes sizes(String text, Unit fallback) {
    List<String> parts = parts(text);
    List<Typed.Value> typed =
        parts.stream().flatMap(part -> number(part, DecimalMark.seenIn(parts)).stream()).toList();
    List<Unit> units = typed.stream().map(each -> each.unit().orElse(fallback)).distinct().toList();
    List<BigDecimal> values = typed.stream().map(each -> Decimal.typed(each.value())).toList();
    boolean good =
        !parts.isEmpty()
            && typed.size() == parts.size()
            && units.size() == 1
            && units.get(0).dimension() == Dimension.VOLUME
            && values.stream().distinct().count() == values.size()
            && values.stream().allMatch(Containers::isSold);
    return good
        ? new Sizes(units.get(0), values, "")
        : new Sizes(
            fallback, List.of(), "sizes in one unit, separated by semicolons: 1; 5 or 1 L; 15 L");
  }

  private static boolean isSold(BigDecimal size) {
    return size.signum() > 0 && size.scale() <= MOST_DECIMALS && size.compareTo(LARGEST) <= 0;
  }

  private static boolean isPrice(BigDecimal price) {
    return price.signum() >= 0
        && price.scale() <= MOST_PRICE_DECIMALS
        && price.compareTo(DEAREST) <= 0;
  }

  private static Optional<Unit> unit(Entry entry) {
    return entry.origin() instanceof Origin.Cell cell && cell.unit().dimension() == Dimension.VOLUME
        ? Optional.of(cell.unit())
        : Optional.empty();
  }

  private static List<String> parts(String text) {
    return Stream.of(text.split(";")).map(String::strip).filter(part -> !part.isEmpty()).toList();
  }

  private static Optional<Typed.Value> number(String part, DecimalMark mark) {
    return NumberText.read(part, mark) instanceof Typed.Value value
        ? Optional.of(value)
        : Optional.empty();
  }
}
