package org.wetmil.estimate.price;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.wetmil.estimate.price.PriceTerms.ProfitAs.MARGIN;
import static org.wetmil.estimate.price.PriceTerms.ProfitAs.MARK_UP;
import static org.wetmil.estimate.price.PriceTerms.ProfitAs.MARK_UP_ON_DIRECT;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.Published;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.price.CostItem.Kind;
import org.wetmil.estimate.price.PriceTerms.TaxAs;

class PriceTest {

  static Stream<Published.Row> analyses() {
    return Published.rows("rate-analyses.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void publicRateAnalysesComeOutToTheCent(Published.Row row) {
    Price price = analysis(row);

    assertThat(price.direct()).as("%s", row).isEqualByComparingTo(row.text("direct"));
    assertThat(price.overhead()).as("%s", row).isEqualByComparingTo(row.text("overheadAmount"));
    assertThat(price.profit()).as("%s", row).isEqualByComparingTo(row.text("profitAmount"));
    assertThat(price.beforeTax()).as("%s", row).isEqualByComparingTo(row.text("beforeTax"));
    assertThat(price.tax()).as("%s", row).isEqualByComparingTo(row.text("taxAmount"));
    assertThat(price.total()).as("%s", row).isEqualByComparingTo(row.text("total"));
  }

  @ParameterizedTest
  @MethodSource("analyses")
  void onlyTheAnalysisThatDropsItsBaseIsUnderItsDirectCost(Published.Row row) {
    boolean faulty = row.text("item").equals("160302");

    assertThat(Price.isBelow(amount(row.text("printed")), analysis(row).direct()))
        .isEqualTo(faulty);
  }

  @ParameterizedTest
  @CsvSource({"32.52.1, 10, 1, 117.3", "32.46.2, 10, 1, 137.7", "16.5, 100, 1, 69.9"})
  void unitPricesOfTheAnalysesComeOutAsPrinted(
      String item, BigDecimal quantity, int decimals, String printed) {
    Price price =
        analyses()
            .filter(row -> row.text("item").equals(item))
            .map(PriceTest::analysis)
            .findFirst()
            .orElseThrow();

    assertThat(price.total().divide(quantity, decimals, RoundingMode.HALF_UP))
        .isEqualByComparingTo(printed);
  }

  @Test
  void faultyUnitPriceIsWhatIsLeftWithoutTheBase() {
    Terms terms = new Terms();
    terms.tax = "0.055";
    terms.taxAs = TaxAs.INSIDE;
    Price loadingsOnly = Price.of(List.of(item(Kind.MATERIAL, "1", "26.22")), terms.build());

    assertThat(loadingsOnly.total()).isEqualByComparingTo("27.75");
    assertThat(Price.isBelow(loadingsOnly.total(), amount("194.24"))).isTrue();
  }

  @Test
  void faultyUnitPriceThatIsAskedIsToldToBeBelowItsCost() {
    Published.Row faulty =
        analyses().filter(row -> row.text("item").equals("160302")).findFirst().orElseThrow();
    Terms terms = terms(faulty);
    terms.asked = faulty.text("printed");
    Price price = Price.of(items(faulty), terms.build());

    assertThat(price.direct()).isEqualByComparingTo("194.24");
    assertThat(price.total()).isEqualByComparingTo("27.75");
    assertThat(price.isBelowDirect()).isTrue();
  }

  @Test
  void sundriesAreAShareOfPaintAndLabourAndTaxOneOfPaint() {
    Terms terms = new Terms();
    terms.sundries = "0.05";
    terms.materialTax = "0.08";
    Price price =
        Price.of(
            List.of(
                item(Kind.EQUIPMENT, "1", "75"),
                item(Kind.LABOUR, "20", "36"),
                item(Kind.MATERIAL, "2", "190"),
                item(Kind.ACCESS, "1", "120")),
            terms.build());

    assertThat(price.amount(Kind.SUNDRIES)).isEqualByComparingTo("55");
    assertThat(price.amount(Kind.TAX)).isEqualByComparingTo("30.40");
    assertThat(price.direct()).isEqualByComparingTo("1380.40");
    assertThat(price.parts())
        .extracting(part -> part.item().kind())
        .containsExactly(
            Kind.LABOUR, Kind.MATERIAL, Kind.SUNDRIES, Kind.EQUIPMENT, Kind.ACCESS, Kind.TAX);
  }

  @Test
  void markUpsGoOneOnTheOtherUnlessBothAreOnDirect() {
    assertThat(thousand(MARK_UP, "0.10", "0.20").beforeTax()).isEqualByComparingTo("1320");
    assertThat(thousand(MARK_UP_ON_DIRECT, "0.10", "0.20").beforeTax())
        .isEqualByComparingTo("1300");
  }

  @Test
  void marginsAreSharesOfThePrice() {
    Price price = thousand(MARGIN, "0.10", "0.15");

    assertThat(price.beforeTax()).isEqualByComparingTo("1333.33");
    assertThat(price.overhead()).isEqualByComparingTo("133.33");
    assertThat(price.profit()).isEqualByComparingTo("200.00");
    assertThat(price.margin().doubleValue()).isCloseTo(0.25, within(1e-5));
    assertThat(price.markUp().doubleValue()).isCloseTo(1 / 3.0, within(1e-5));
  }

  @Test
  void partsAlwaysAddUpToThePrice() {
    for (PriceTerms.ProfitAs way : PriceTerms.ProfitAs.values()) {
      Terms terms = new Terms();
      terms.profitAs = way;
      terms.overhead = "0.137";
      terms.profit = "0.093";
      terms.step = "7";
      terms.minimum = "900";
      Price price = Price.of(List.of(item(Kind.LABOUR, "17.333", "33.33")), terms.build());

      assertThat(
              price
                  .direct()
                  .add(price.overhead())
                  .add(price.profit())
                  .add(price.toMinimum())
                  .add(price.rounding())
                  .add(price.adjustment()))
          .isEqualByComparingTo(price.beforeTax());
    }
  }

  @Test
  void marginsOfOneOrMoreAreRefused() {
    assertThatThrownBy(() -> thousand(MARGIN, "0.5", "0.5"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(thousand(MARK_UP, "0.5", "0.5").beforeTax()).isEqualByComparingTo("2250");
  }

  @ParameterizedTest
  @CsvSource({"1000, 0", "1000.01, 0.01", "999.99, 0"})
  void minimumChargeLiftsOnlyWhatIsUnderIt(String minimum, String lift) {
    Terms terms = new Terms();
    terms.minimum = minimum;

    assertThat(thousand(terms).toMinimum()).isEqualByComparingTo(lift);
  }

  @ParameterizedTest
  @CsvSource({"5, 1000", "30, 990", "16, 1008", "0, 1000"})
  void priceIsRoundedToTheNearestStepHalfUp(String step, String expected) {
    Terms terms = new Terms();
    terms.step = step;

    assertThat(thousand(terms).beforeTax()).isEqualByComparingTo(expected);
  }

  @ParameterizedTest
  @CsvSource({"1000, false", "999.99, true", "1000.01, false"})
  void priceAskedUnderTheDirectCostIsToldApart(String asked, boolean below) {
    Terms terms = new Terms();
    terms.asked = asked;
    Price price = thousand(terms);

    assertThat(price.isBelowDirect()).isEqualTo(below);
    assertThat(price.adjustment()).isEqualByComparingTo(amount(asked).subtract(amount("1000")));
  }

  @Test
  void taxIsOnTopOrInsideTheTotal() {
    Terms terms = new Terms();
    terms.tax = "0.20";
    assertThat(thousand(terms).total()).isEqualByComparingTo("1200");
    terms.taxAs = TaxAs.INSIDE;
    assertThat(thousand(terms).total()).isEqualByComparingTo("1250");
  }

  @Test
  void withoutASmallestAmountNothingIsRounded() {
    Terms terms = new Terms();
    terms.coin = "0";
    terms.profit = "0.0333333";

    assertThat(thousand(terms).profit()).isEqualByComparingTo("33.3333");
  }

  @Test
  void settingsGiveTheTerms() {
    PriceTerms terms =
        PriceTerms.of(
            Bids.settings(
                "Overhead", 3.5, "Profit", 10, "Profit as", "Margin", "Price asked", 4200));

    assertThat(terms.overhead()).isEqualTo(new BigDecimal("0.035"));
    assertThat(terms.profit()).isEqualTo(new BigDecimal("0.1"));
    assertThat(terms.profitAs()).isEqualTo(MARGIN);
    assertThat(terms.asked()).isEqualByComparingTo("4200");
    assertThat(terms.coin()).isEqualTo(new BigDecimal("0.01"));
  }

  @Test
  void marginsOfTheSettingsThatLeaveNoPriceAreToldBeforehand() {
    assertThat(
            PriceTerms.isPossible(
                Bids.settings("Overhead", 60, "Profit", 40, "Profit as", "margin")))
        .isFalse();
    assertThat(
            PriceTerms.isPossible(
                Bids.settings("Overhead", 60, "Profit", 39, "Profit as", "margin")))
        .isTrue();
  }

  private static Price analysis(Published.Row row) {
    return Price.of(items(row), terms(row).build());
  }

  private static Terms terms(Published.Row row) {
    Terms terms = new Terms();
    terms.profitAs = MARK_UP_ON_DIRECT;
    terms.overhead = row.text("overhead");
    terms.profit = row.text("profit");
    terms.tax = row.text("tax");
    terms.taxAs = TaxAs.INSIDE;
    return terms;
  }

  private static List<CostItem> items(Published.Row row) {
    List<CostItem> items = new ArrayList<>();
    items.addAll(items(Kind.LABOUR, row.text("labour")));
    items.addAll(items(Kind.MATERIAL, row.text("material")));
    items.addAll(items(Kind.EQUIPMENT, row.text("equipment")));
    return items;
  }

  private static List<CostItem> items(Kind kind, String list) {
    return Stream.of(list.split(";"))
        .map(each -> each.split("x"))
        .map(pair -> item(kind, pair[0], pair[1]))
        .toList();
  }

  private static Price thousand(PriceTerms.ProfitAs way, String overhead, String profit) {
    Terms terms = new Terms();
    terms.profitAs = way;
    terms.overhead = overhead;
    terms.profit = profit;
    return thousand(terms);
  }

  private static Price thousand(Terms terms) {
    return Price.of(List.of(item(Kind.LABOUR, "25", "40")), terms.build());
  }

  private static CostItem item(Kind kind, String quantity, String price) {
    return new CostItem(kind, kind.name(), amount(quantity), amount(price));
  }

  private static BigDecimal amount(String text) {
    return new BigDecimal(text);
  }

  private static org.assertj.core.data.Offset<Double> within(double offset) {
    return org.assertj.core.data.Offset.offset(offset);
  }

  /** Terms with nothing in them, to be filled in by a test. */
  private static final class Terms {
    String sundries = "0";
    String materialTax = "0";
    String overhead = "0";
    String profit = "0";
    PriceTerms.ProfitAs profitAs = MARK_UP;
    String minimum = "0";
    String step = "0";
    String asked;
    String tax = "0";
    TaxAs taxAs = TaxAs.ON_TOP;
    String coin = "0.01";

    PriceTerms build() {
      return new PriceTerms(
          amount(sundries),
          amount(materialTax),
          amount(overhead),
          amount(profit),
          profitAs,
          amount(minimum),
          amount(step),
          asked == null ? null : amount(asked),
          amount(tax),
          taxAs,
          amount(coin));
    }
  }
}
