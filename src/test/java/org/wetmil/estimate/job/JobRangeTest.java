package org.wetmil.estimate.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COATING;
import static org.wetmil.estimate.InputColumn.COLOUR;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.INCLUDE;
import static org.wetmil.estimate.InputColumn.SPRAYER;
import static org.wetmil.estimate.InputColumn.SURFACE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.likely.Band;
import org.wetmil.estimate.likely.Factor;
import org.wetmil.quantity.UnitSystem;

class JobRangeTest {
  /** sqrt of the sum of squared logs of 1.20, 1.18 and 1.03. */
  private static final double PAINT = 1.2834;

  @Test
  void orderAtNinetyPercentCoversWhatNineJobsOfTenTake() {
    Order likely = Order.of(fill(priced(), cabinets(COLOUR, "White")));
    Order sure = Order.of(fill(priced("Order by", "90 %"), cabinets(COLOUR, "White")));
    Order.Item item = sure.items().get(0);

    assertThat(likely.items().get(0).allowanceGal()).isZero();
    // the closed form, within three standard errors of 4000 plain draws
    assertThat(item.needGal() / item.paintGal()).isCloseTo(PAINT, within(3 * 0.0067));
    assertThat(item.paintGal()).isEqualTo(likely.items().get(0).paintGal());
    assertThat(item.cover().leftOver()).isNotNegative();
  }

  @Test
  void hoursAtTheEndsFollowFromSprayingByTheFormulasOfTheJob() {
    FilledJob job = job(Catalogue.builtIn(), cabinets());
    JobHours hours = job.hours();
    double spray = hours.number(JobFigure.SPRAY);
    JobHours more = hours.withSpray(job.filled().bid(), 2 * spray);

    assertThat(more.number(JobFigure.TOUCH_UP)).isCloseTo(0.2 * spray, within(1e-9));
    assertThat(more.number(JobFigure.MASK)).isEqualTo(hours.number(JobFigure.MASK));
    assertThat(hours.withSpray(job.filled().bid(), spray).figures()).isEqualTo(hours.figures());
    Band band = job.range().hours();
    assertThat(band.low()).isLessThan(hours.number(JobFigure.TOTAL));
    assertThat(band.high()).isGreaterThan(hours.number(JobFigure.TOTAL));
  }

  @Test
  void priceRangesWithPaintAndHours() {
    FilledJob job = job(priced(), cabinets(), wall());
    MoneyBand price = job.range().beforeTax().orElseThrow();
    MoneyBand direct = job.range().direct().orElseThrow();
    Band hours = job.range().hours();

    assertThat(price.stated()).isEqualTo(job.price().price().orElseThrow().beforeTax());
    assertThat(price.low()).isLessThan(price.stated());
    assertThat(price.high()).isGreaterThan(price.stated());
    // a mark-up of nothing: the price is the direct cost
    assertThat(price).isEqualTo(direct);
    // labour is most of it, so that the cost ranges little less than the hours do
    assertThat(direct.high().doubleValue() / direct.stated().doubleValue())
        .isBetween(1 + (hours.highRatio() - 1) * 0.6, hours.highRatio());
    assertThat(price.low().scale()).isLessThanOrEqualTo(2);
  }

  @Test
  void priceThatIsAskedDoesNotMove() {
    JobRange range = job(priced("Price asked", 5000), cabinets()).range();

    assertThat(range.beforeTax()).isEmpty();
    assertThat(range.direct()).isPresent();
    assertThat(range.direct().orElseThrow().high())
        .isGreaterThan(range.direct().orElseThrow().stated());
  }

  /** 600 in of hose of 1/4 in and the 0.2 gal left in it are the job's, whatever is drawn. */
  @Test
  void paintOfTheHoseIsInTheJobAndDoesNotRange() {
    Catalogue rig =
        Bids.with(
            Tables.SPRAYERS,
            List.of(Bids.row(0, "Sprayer", "rig", "Hose bore", 0.25, "Hose length", 50)));
    double hose = Math.PI / 4 * 0.0625 * 600 / 231 + 0.2;
    FilledJob job = job(rig, wall(SPRAYER, "rig"));
    Order.Item item = job.order().items().get(0);
    double lines = job.filled().total(FilledColumn.PAINT);

    assertThat(job.paintGal()).isCloseTo(lines + hose, within(1e-9));
    assertThat(Order.hoseGal(job.filled())).isCloseTo(hose, within(1e-9));
    assertThat(job.range().paintGal().stated()).isCloseTo(lines + hose, within(1e-9));
    assertThat(item.needGal()).isCloseTo(lines + hose, within(1e-9));
    assertThat(item.cover().leftOver())
        .isCloseTo(
            item.cover().lots().stream()
                    .mapToDouble(lot -> lot.count() * lot.container().size().doubleValue())
                    .sum()
                - lines
                - hose,
            within(1e-9));
    assertThat(job.order().enoughGal()).isCloseTo(item.enoughGal() + hose, within(1e-9));
    assertThat(item.enoughGal()).isGreaterThan(lines);
    Band band = job.range().paintGal();
    assertThat(band.high() - hose).isCloseTo(item.enoughGal(), within(1e-9));
    assertThat(band.low() - hose).isBetween(lines * 0.6, lines);
    QuickRange quick = QuickRange.of(job.filled(), job.hours(), hose);
    assertThat(quick.jobGal().stated()).isCloseTo(lines + hose, within(1e-9));
    assertThat(quick.jobGal().low()).isCloseTo(quick.linesGal().low() + hose, within(1e-9));
    assertThat(quick.jobGal().high()).isCloseTo(quick.linesGal().high() + hose, within(1e-9));
    assertThat(quick.lineHours().low())
        .isCloseTo(
            job.filled().total(FilledColumn.LABOUR)
                - quick.sprayHours().stated()
                + quick.sprayHours().low(),
            within(1e-9));
  }

  @Test
  void withoutPricesNoAmountHasARange() {
    assertThat(job(Catalogue.builtIn(), cabinets()).range().direct()).isEmpty();
  }

  @Test
  void triggerMovesHoursAloneAndWasteMovesPaintAlone() {
    JobRange range = job(Catalogue.builtIn(), cabinets()).range();
    Map<Factor, Driver> drivers = new EnumMap<>(Factor.class);
    range.drivers().forEach(driver -> drivers.put(driver.factor(), driver));

    assertThat(drivers.get(Factor.TRIGGER).paint().highRatio()).isCloseTo(1, within(1e-12));
    assertThat(drivers.get(Factor.KEPT).hours().highRatio()).isCloseTo(1, within(1e-12));
    assertThat(drivers.get(Factor.KEPT).paint().highRatio()).isCloseTo(1.03, within(0.003));
    assertThat(drivers.get(Factor.FILM).paint().highRatio()).isCloseTo(1.18, within(0.01));
    assertThat(drivers.get(Factor.TRANSFER).paint().highRatio()).isCloseTo(1.20, within(0.01));
  }

  @Test
  void jobWithNothingToPaintHasNoRange() {
    JobRange range = job(Catalogue.builtIn(), wall(INCLUDE, "no")).range();

    assertThat(range.paintGal()).isEqualTo(new Band(0, 0, 0));
    assertThat(range.hours()).isEqualTo(new Band(0, 0, 0));
  }

  @Test
  void amountsAreDecimal() {
    MoneyBand band =
        MoneyBand.around(new BigDecimal("12.10"), new BigDecimal("11.90"), new BigDecimal("13"));

    assertThat(band.low()).isEqualByComparingTo("11.90");
  }

  private static FilledJob job(Catalogue catalogue, BidLine... lines) {
    return FilledJob.of(fill(catalogue, lines));
  }

  private static FilledBid fill(Catalogue catalogue, BidLine... lines) {
    return Estimator.fill(Bids.bid(catalogue, UnitSystem.US, lines));
  }

  private static Catalogue priced(Object... settings) {
    List<StatedRow> rows = new ArrayList<>();
    rows.add(Bids.row(0, "Setting", "Labour rate", "Value", 32));
    for (int i = 0; i < settings.length; i += 2) {
      rows.add(Bids.row(i + 1, "Setting", settings[i], "Value", settings[i + 1]));
    }
    List<StatedRow> coatings =
        List.of(
            Bids.row(0, "Coating", "latex", "Container sizes", "1; 5", "Price", "42; 190"),
            Bids.row(1, "Coating", "lacquer", "Container sizes", "1", "Price", "60"));
    return Catalogue.builtIn()
        .with(
            Map.of(Tables.SETTINGS, rows, Tables.COATINGS, coatings),
            UnitSystem.US,
            new ArrayList<>());
  }

  private static BidLine cabinets(Object... more) {
    return line(new Object[] {SURFACE, "cabinets", COATING, "lacquer", COUNT, 40}, more);
  }

  private static BidLine wall(Object... more) {
    return line(new Object[] {SURFACE, "walls", COATING, "latex", AREA, 2000}, more);
  }

  private static BidLine line(Object[] cells, Object... more) {
    List<Object> all = new ArrayList<>(List.of(cells));
    all.addAll(List.of(more));
    return Bids.line(all.toArray());
  }
}
