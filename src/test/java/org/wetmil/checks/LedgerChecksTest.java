package org.wetmil.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.wetmil.ledger.Ledger;
import org.wetmil.ledger.Ledgers;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.ReconcileSettings;
import org.wetmil.reconcile.Reconciler;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUse;

/** Every check of ledgers fires on its fault and is silent just inside its limit. */
class LedgerChecksTest {
  private static final String HEADINGS = "Date,Job,Item,Qty,Unit,Unit price,Amount,Type";
  private static final String TEN = "2026-04-20,Loft,latex,10,gal,30.00,300.00,Bill";
  private static final String SIX = "2026-04-21,Loft,primer,6,gal,20.00,120.00,Bill";

  /**
   * A ledger in which a check fires, and one just inside its limit in which it stays silent.
   *
   * @param fires lines under the usual headings, or a whole ledger where the first begins with Date
   */
  record Case(String id, List<String> fires, List<String> silent) {
    @Override
    public String toString() {
      return id;
    }
  }

  private static Case of(String id, String fires, String silent) {
    return new Case(id, List.of(fires.split("\n")), List.of(silent.split("\n")));
  }

  private static final List<Case> CASES =
      List.of(
          of("ledger-number", TEN.replace(",10,", ",ten,"), TEN),
          of("ledger-date", TEN.replace("04-20", "04-31"), TEN),
          of("ledger-kind", TEN.replace("Bill", "Zebra"), TEN),
          of("ledger-line-short", TEN.replace(",Bill", ""), TEN + "\n" + SIX),
          of("ledger-line-long", TEN + ",more", TEN),
          of(
              "ledger-quote-open",
              TEN.replace("latex", "\"latex")
                  + "\n"
                  + SIX
                  + "\n"
                  + SIX.replace("primer", "primer\""),
              TEN.replace("latex", "\"latex\"")),
          of("ledger-amount", TEN.replace("300.00", "310.00"), TEN),
          of("ledger-return", TEN.replace(",10,", ",-10,"), TEN),
          of(
              "ledger-day-month",
              TEN.replace("2026-04-20", "3/4/26"),
              TEN.replace("2026-04-20", "3/14/26")),
          of(
              "ledger-dates-mixed",
              TEN.replace("2026-04-20", "3/14/26") + "\n" + SIX.replace("2026-04-21", "15/3/26"),
              TEN.replace("2026-04-20", "3/14/26") + "\n" + SIX.replace("2026-04-21", "3/15/26")),
          of("ledger-decimals", TEN.replace("30.00,300.00", "1.234,1.234"), TEN),
          of("ledger-quotes", TEN.replace("latex", "\"latex"), TEN),
          of(
              "ledger-currencies",
              TEN.replace("300.00", "$300.00") + "\n" + SIX.replace("120.00", "€120.00"),
              TEN.replace("300.00", "$300.00") + "\n" + SIX.replace("120.00", "$120.00")),
          of(
              "ledger-total",
              TEN + "\n" + SIX + "\nTotal,,,,,,420.01,",
              TEN + "\n" + SIX + "\nTotal,,,,,,420.00,"),
          of("ledger-column-unused", "Date,Job,Item,Qty,Unit,Zebra\n" + TEN, TEN),
          of("ledger-job", TEN.replace("Loft", "Barn"), TEN),
          of("ledger-coating", TEN.replace("latex", "epoxy"), TEN),
          of("ledger-item", TEN.replace("latex", "latex primer"), TEN),
          of("ledger-unit", TEN.replace(",gal,", ",box,"), TEN),
          of("ledger-not-counted", TEN.replace(",10,", ",ten,"), TEN),
          of("paint-over-bid", TEN.replace(",10,", ",15.01,"), TEN.replace(",10,", ",11,")),
          of("paint-under-bid", TEN.replace(",10,", ",8.5,"), TEN.replace(",10,", ",9,")),
          of("yield-impossible", TEN.replace(",10,", ",6.99,"), TEN.replace(",10,", ",7.01,")),
          of("job-not-named", TEN.replace("Loft", "Barn"), SIX),
          of("paint-not-bought", SIX, TEN + "\n" + SIX),
          of("paint-not-used", TEN + "\n" + TEN.replace("Bill", "Credit"), TEN),
          of(
              "price-off-bid",
              TEN.replace("30.00,300.00", "33.01,330.10"),
              TEN.replace("30.00,300.00", "33.00,330.00")),
          of("transfer-one-sided", TEN + "\n2026-04-22,Loft,latex,1,gal,,,Transfer in", TEN),
          of(
              "unit-mistake",
              TEN + "\n" + TEN.replace(",10,gal,30.00,300.00", ",2,gal,150.00,300.00"),
              TEN),
          of("ledger-line-twice", TEN + "\n" + TEN, TEN + "\n" + TEN.replace("20,L", "21,L")));

  static Stream<Case> cases() {
    return CASES.stream();
  }

  static Stream<Check> checks() {
    // what no ledger can show is tried where it is read: by the tests of the command
    List<String> elsewhere = List.of("filled-value", "job-in-bids", "bid-units", "ledger-empty");
    return Stream.of(LedgerChecks.ALL, UseChecks.ALL)
        .flatMap(List::stream)
        .filter(check -> !elsewhere.contains(check.id()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyCheckFiresOnItsFaultAndIsSilentJustInside(Case tried) {
    assertThat(of(tried.id(), tried.fires())).isNotEmpty();
    assertThat(of(tried.id(), tried.silent())).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("checks")
  void everyCheckHasACase(Check check) {
    assertThat(CASES).extracting(Case::id).contains(check.id());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyMessageIsOneSentenceThatSaysWhatWasMeasured(Case tried) {
    assertThat(of(tried.id(), tried.fires()))
        .allSatisfy(
            finding -> {
              assertThat(finding.message()).matches("[^\\n]*[^.]\\.").doesNotContain("NaN");
              assertThat(finding.message()).contains(finding.measured());
            });
  }

  static List<Finding> of(String id, List<String> lines) {
    boolean whole = lines.get(0).startsWith("Date");
    String[] text =
        Stream.concat(whole ? Stream.empty() : Stream.of(HEADINGS), lines.stream())
            .toArray(String[]::new);
    List<Ledger.Book> books = List.of(Ledgers.book(text));
    // 10 gal of latex at 30 a gallon, in cans of a gallon; the film takes 6.65 gal / 0.95 at least
    BidJob job =
        new BidJob("Loft", List.of(use("latex", 30), use("primer", 20)), "", names(), List.of());
    ReconciledBooks reconciled =
        new ReconciledBooks(
            Reconciler.reconcile(List.of(job), books, List.of(), ReconcileSettings.DEFAULT),
            books,
            List.of(),
            UnitSystem.US,
            ReconciledBooks.OwnWords.NONE);
    return Checks.run(reconciled).stream()
        .filter(finding -> finding.check().equals(id))
        .filter(finding -> !finding.surface().equals("primer"))
        .toList();
  }

  private static BidUse use(String coating, int price) {
    return new BidUse(
        coating, coating, 1000, 2000, 1.5, 6.65, 10, 0.7, 0.05, 1, BigDecimal.valueOf(price), 1);
  }

  private static Map<String, List<String>> names() {
    return Arrays.stream(new String[] {"latex", "primer", "epoxy"})
        .collect(Collectors.toMap(name -> name, name -> List.<String>of()));
  }
}
