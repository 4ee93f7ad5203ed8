package org.wetmil.estimate.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bids;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

class ContainersTest {

  @Test
  void sizesNotStatedAreTheUsualOnesOfTheJobsUnits() {
    assertThat(shown(of("", "", UnitSystem.US))).isEqualTo("1 gal; 5 gal");
    assertThat(shown(of("", "", UnitSystem.METRIC))).isEqualTo("1 L; 5 L; 15 L");
  }

  @ParameterizedTest
  @CsvSource({
    "1; 5, 42; 190, 1 gal @42; 5 gal @190",
    "5, 190, 5 gal @190",
    "1 L; 10 L, 12.50; 99, 1 L @12.5; 10 L @99",
    "0.946 L; 3.785 L, 12; 40, 0.946 L @12; 3.785 L @40",
    "5; 1, $190; $42, 5 gal @190; 1 gal @42",
    "'1; 5', '42,50; 190,00', 1 gal @42.5; 5 gal @190",
    "1; 5, 0; 100000000, 1 gal @0; 5 gal @100000000"
  })
  void sizesAndPricesAreTwoListsInOneOrder(String sizes, String prices, String expected) {
    Containers containers = of(sizes, prices, UnitSystem.US);

    assertThat(shown(containers)).isEqualTo(expected);
    assertThat(containers.sizesFault()).isEmpty();
    assertThat(containers.pricesFault()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "a can; 5, '', sizes in one unit",
    "1 gal; 5 L, '', sizes in one unit",
    "0; 5, '', sizes in one unit",
    "5; 5, '', sizes in one unit",
    "1.2345; 5, '', sizes in one unit",
    "5 ft; 1 ft, '', sizes in one unit"
  })
  void oddSizesFallBackToTheUsualOnesAndAreTold(String sizes, String prices, String fault) {
    Containers containers = of(sizes, prices, UnitSystem.US);

    assertThat(shown(containers)).isEqualTo("1 gal; 5 gal");
    assertThat(containers.sizesFault()).startsWith(fault);
  }

  @ParameterizedTest
  @CsvSource({
    "1; 5, 42, as many prices as sizes",
    "1; 5, 42; on request, prices without",
    "1; 5, -42; 190, prices without",
    "1; 5, 42; 100000000.01, prices without",
    "1; 5, 42; 190.00001, prices without",
    "a can; 5, 42; 190, sizes that can be read"
  })
  void oddPricesCountAsNotStatedAndAreTold(String sizes, String prices, String fault) {
    Containers containers = of(sizes, prices, UnitSystem.US);

    assertThat(containers.isPriced()).isFalse();
    assertThat(containers.pricesFault()).startsWith(fault);
  }

  @Test
  void cheapestVolumeIsTakenOverTheSizes() {
    Containers containers = of("1; 5", "42; 190", UnitSystem.US);

    assertThat(containers.cheapest(Unit.GALLON)).isEqualTo(38);
    assertThat(containers.cheapest(Unit.LITRE)).isCloseTo(38 / 3.785411784, within(1e-12));
  }

  @Test
  void needInGallonsIsCoveredInTheUnitOfTheSizes() {
    Containers litres = of("1 L; 5 L", "", UnitSystem.US);

    assertThat(litres.cover(2).lots())
        .extracting(lot -> lot.container().size().intValue() + " x " + lot.count())
        .containsExactly("5 x 1", "1 x 3");
  }

  @Test
  void unitOfTheHeadingHoldsForTheList() {
    Map<String, StatedRow.StatedCell> cells = new LinkedHashMap<>();
    cells.put("Coating", new StatedRow.StatedCell("A2", "latex", Double.NaN, null, false, false));
    cells.put(
        "Container sizes",
        new StatedRow.StatedCell("B2", "1; 5", Double.NaN, Unit.LITRE, false, false));
    Catalogue catalogue = Bids.with(Tables.COATINGS, List.of(new StatedRow("Coatings", 2, cells)));

    assertThat(shown(Containers.of(catalogue, catalogue.coating("latex").orNull(), UnitSystem.US)))
        .isEqualTo("1 L; 5 L");
  }

  private static Containers of(String sizes, String prices, UnitSystem system) {
    Catalogue catalogue =
        Bids.with(
            Tables.COATINGS,
            List.of(
                Bids.row(
                    0,
                    "Coating",
                    "wall white",
                    "Class",
                    "latex",
                    "Container sizes",
                    sizes,
                    "Price",
                    prices)));
    return Containers.of(catalogue, catalogue.coating("wall white").orNull(), system);
  }

  private static String shown(Containers containers) {
    return containers.sizes().stream()
        .map(
            each ->
                each.size().toPlainString()
                    + " "
                    + containers.unit().symbol()
                    + (each.isPriced() ? " @" + each.price().toPlainString() : ""))
        .collect(Collectors.joining("; "));
  }
}
