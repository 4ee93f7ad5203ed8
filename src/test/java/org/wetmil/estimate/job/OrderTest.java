package org.wetmil.estimate.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COLOUR;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.SHEEN;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.price.Container;
import org.wetmil.estimate.price.CostItem;
import org.wetmil.estimate.price.Price;
import org.wetmil.quantity.UnitSystem;

class OrderTest {

  @Test
  void containersAreNotSharedAcrossColoursAndSheens() {
    Order order =
        order(
            Catalogue.builtIn(),
            wall(COLOUR, "White", SHEEN, "matt"),
            wall(COLOUR, "grey", SHEEN, "matt"),
            wall(COLOUR, "white", SHEEN, "gloss"),
            wall(COLOUR, "white ", SHEEN, "Matt"),
            wall(COLOUR, "white", SHEEN, "matt", INCLUDE, "no"));

    assertThat(order.items())
        .extracting(Order.Item::title)
        .containsExactly("latex, White, matt", "latex, grey, matt", "latex, white, gloss");
    assertThat(order.items()).extracting(Order.Item::lines).containsExactly(2, 1, 1);
  }

  @Test
  void orderCoversThePaintOfItsLines() {
    FilledBid filled =
        Estimator.fill(
            Bids.bid(Catalogue.builtIn(), UnitSystem.US, wall(AREA, 1500), wall(AREA, 700)));
    Order.Item item = Order.of(filled).items().get(0);

    assertThat(item.needGal()).isCloseTo(filled.total(FilledColumn.PAINT), within(1e-9));
    // 2200 ft2 in two coats at about 237 ft2/gal
    assertThat(item.needGal()).isCloseTo(18.6, within(0.1));
    assertThat(item.cover().lots())
        .extracting(lot -> lot.container().size().intValue() + " x " + lot.count())
        .containsExactly("5 x 3", "1 x 4");
    assertThat(item.cover().leftOver()).isCloseTo(19 - item.needGal(), within(1e-9));
  }

  @Test
  void eachColourFillsTheHoseOnceForEachMachine() {
    Catalogue catalogue =
        Bids.with(
            Tables.SPRAYERS,
            List.of(
                Bids.row(0, "Sprayer", "a", "Hose bore", 0.25, "Hose length", 50),
                Bids.row(1, "Sprayer", "b", "Hose bore", 0.375, "Hose length", 100),
                Bids.row(2, "Sprayer", "c")));
    Order order =
        order(
            catalogue,
            wall(SPRAYER, "a"),
            wall(SPRAYER, "a"),
            wall(SPRAYER, "b"),
            wall(SPRAYER, "a", COLOUR, "grey"),
            wall(SPRAYER, "c", COLOUR, "red"));

    // 50 ft of 1/4 in hold 0.1275 gal, 100 ft of 3/8 in hold 0.5738 gal; 0.2 gal with each
    assertThat(order.items().get(0).hoseGal()).isCloseTo(1.1013, within(0.0001));
    assertThat(order.items().get(1).hoseGal()).isCloseTo(0.3275, within(0.0001));
    assertThat(order.items().get(2).hoseGal()).isZero();
    assertThat(order.hoseGal()).isCloseTo(1.4288, within(0.0002));
  }

  @Test
  void metricJobIsOrderedInLitres() {
    FilledBid filled =
        Estimator.fill(
            Bids.bid(
                Catalogue.builtIn(),
                UnitSystem.METRIC,
                Bids.line(
                    UnitSystem.METRIC,
                    SURFACE,
                    "walls",
                    COATING,
                    "latex",
                    AREA,
                    140,
                    HEIGHT,
                    2.7)));
    Order.Item item = Order.of(filled).items().get(0);

    assertThat(item.containers().unit().symbol()).isEqualTo("L");
    assertThat(item.containers().sizes())
        .extracting(Container::size)
        .extracting(Number::intValue)
        .containsExactly(1, 5, 15);
  }

  @Test
  void pricedJobAddsUpLabourPaintAndWhatIsStated() {
    FilledBid filled = Estimator.fill(Bids.bid(priced(), UnitSystem.US, wall(AREA, 2200)));
    JobHours hours = JobHours.of(filled);
    JobPrice priced = JobPrice.of(filled, hours, Order.of(filled));
    Price price = priced.price().orElseThrow();

    assertThat(priced.missing()).isEmpty();
    // three pails of 190 and four cans of 42 are 738; four pails cover it for 760
    assertThat(price.amount(CostItem.Kind.MATERIAL)).isEqualByComparingTo("738");
    assertThat(price.amount(CostItem.Kind.LABOUR).doubleValue())
        .isCloseTo(hours.number(JobFigure.TOTAL) * 25 * 1.28, within(0.005));
    assertThat(price.amount(CostItem.Kind.EQUIPMENT)).isEqualByComparingTo("75");
    assertThat(price.amount(CostItem.Kind.ACCESS)).isEqualByComparingTo("0");
    assertThat(price.parts())
        .extracting(part -> part.item().title())
        .containsExactly("Labour, hours", "latex, 5 gal", "latex, 1 gal", "Sundries", "Equipment");
  }

  @Test
  void lineCostsUseTheCheapestGallonAndTheBurdenedRate() {
    FilledBid filled = Estimator.fill(Bids.bid(priced(), UnitSystem.US, wall(AREA, 2200)));

    assertThat(filled.total(FilledColumn.PAINT_COST))
        .isCloseTo(filled.total(FilledColumn.PAINT) * 38, within(1e-9));
    assertThat(filled.total(FilledColumn.LABOUR_COST))
        .isCloseTo(filled.total(FilledColumn.LABOUR) * 32, within(1e-9));
    assertThat(FilledColumn.shown(priced()))
        .contains(FilledColumn.PAINT_COST, FilledColumn.LABOUR_COST);
  }

  @Test
  void priceIsNeverInvented() {
    FilledBid nothing = Estimator.fill(Bids.bid(wall()));
    FilledBid wageOnly =
        Estimator.fill(Bids.bid(Bids.settings("Labour rate", 25), UnitSystem.US, wall()));
    FilledBid otherPaint =
        Estimator.fill(Bids.bid(priced(), UnitSystem.US, wall(), wall(COATING, "primer")));

    assertThat(price(nothing)).isEqualTo(new JobPrice(Optional.empty(), List.of()));
    assertThat(price(wageOnly).price()).isEmpty();
    assertThat(price(wageOnly).missing()).containsExactly("the price of latex");
    assertThat(price(otherPaint).missing()).containsExactly("the price of primer");
    assertThat(nothing.lines().findFirst().orElseThrow().figures())
        .doesNotContainKeys(FilledColumn.PAINT_COST, FilledColumn.LABOUR_COST);
  }

  private static JobPrice price(FilledBid filled) {
    return JobPrice.of(filled, JobHours.of(filled), Order.of(filled));
  }

  private static Catalogue priced() {
    List<StatedRow> settings =
        List.of(
            Bids.row(0, "Setting", "Labour rate", "Value", 25),
            Bids.row(1, "Setting", "Burden", "Value", 28),
            Bids.row(2, "Setting", "Equipment", "Value", 75));
    List<StatedRow> coatings =
        List.of(Bids.row(0, "Coating", "latex", "Container sizes", "1; 5", "Price", "42; 190"));
    return Catalogue.builtIn()
        .with(
            Map.of(Tables.SETTINGS, settings, Tables.COATINGS, coatings),
            UnitSystem.US,
            new ArrayList<>());
  }

  private static Order order(Catalogue catalogue, BidLine... lines) {
    return Order.of(Estimator.fill(Bids.bid(catalogue, UnitSystem.US, lines)));
  }

  private static BidLine wall(Object... more) {
    Object[] cells =
        Stream.concat(
                Stream.of(SURFACE, "walls", COATING, "latex", AREA, 800, HEIGHT, 9),
                Stream.of(more))
            .toArray();
    return Bids.line(cells);
  }
}
