package org.wetmil.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.wetmil.estimate.Estimator;
import org.wetmil.ledger.Ledger;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.ledger.LineKind;
import org.wetmil.ledger.TotalsLine;
import org.wetmil.ledger.UnusableLedgerException;
import org.wetmil.reconcile.Place;
import org.wetmil.reconcile.ReconcileSettings;
import org.wetmil.reconcile.Reconciler;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.bid.BidUses;
import org.wetmil.reconcile.flag.Flag;
import org.wetmil.reconcile.match.Reason;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.workbook.read.BidReader;

/** The invented month: three bids against one ledger with the usual mess. */
class SpringMonthTest {
  private static final String CLINIC = "Clinic refit (invented)";
  private static final String GYM = "2207 School gym";
  private static final String LOFT = "2211 Mill loft";

  private static Ledger.Book ledger(Path file) throws IOException, UnusableLedgerException {
    return Ledger.open(file.getFileName().toString(), () -> Files.newInputStream(file), null)
        .readAll();
  }

  private static Reconciliation april() throws IOException, UnusableLedgerException {
    List<BidJob> jobs =
        Stream.of("clinic-refit", "school-gym", "mill-loft")
            .map(stem -> Samples.FOLDER.resolve(stem + ".xlsx"))
            .map(file -> BidUses.of(Estimator.fill(BidReader.read(file).bid()), List.of()))
            .toList();
    Ledger.Book book = ledger(Samples.FOLDER.resolve("spring-month-purchases.csv"));
    ReconcileSettings settings =
        new ReconcileSettings(0.10, 1, false, LocalDate.of(2026, 4, 1), LocalDate.of(2026, 4, 30));
    return Reconciler.reconcile(jobs, List.of(book), List.of(), settings);
  }

  @Test
  void theMonthAddsUpToTheCent() throws Exception {
    Reconciliation april = april();

    assertThat(april.read().lines()).isEqualTo(61);
    assertThat(april.read().amount("$")).isEqualByComparingTo("19057.70");
    assertThat(
            Stream.of(Place.values())
                .map(place -> april.at(place).amount("$"))
                .reduce(BigDecimal.ZERO, BigDecimal::add))
        .isEqualByComparingTo("19057.70");
    assertThat(april.at(Place.OUTSIDE).lines()).isEqualTo(3);
  }

  @Test
  void theTotalsLineAgreesAndTitlesAndBlanksAreNoLines() throws Exception {
    Ledger.Book book = ledger(Samples.FOLDER.resolve("spring-month-purchases.csv"));

    assertThat(book.counts().titles()).isEqualTo(2);
    assertThat(book.counts().blanks()).isEqualTo(3);
    assertThat(book.counts().totals()).hasSize(1).noneMatch(TotalsLine::isInDoubt);
  }

  @Test
  void everyReasonOccursInTheMonth() throws Exception {
    Reconciliation april = april();

    assertThat(
            april.lines().stream()
                .filter(line -> line.reason() != null)
                .filter(line -> line.reason() != Reason.NOT_A_COATING)
                .map(line -> tuple(line.line().line(), line.reason()))
                .toList())
        .containsExactly(
            tuple(31L, Reason.NO_SUCH_JOB),
            tuple(43L, Reason.AMBIGUOUS),
            tuple(46L, Reason.UNREADABLE),
            tuple(47L, Reason.UNKNOWN_UNIT),
            tuple(48L, Reason.UNREADABLE),
            tuple(57L, Reason.NO_SUCH_COATING),
            tuple(59L, Reason.UNREADABLE),
            tuple(64L, Reason.NO_SUCH_JOB));
    assertThat(april.reasons().get(Reason.NOT_A_COATING).lines()).isEqualTo(14);
  }

  @Test
  void theFlagsOfTheMonthAreThoseThatWerePutIn() throws Exception {
    assertThat(april().flags())
        .extracting(flag -> tuple(flag.type(), flag.job() + ", " + flag.coating()))
        .containsExactly(
            tuple(Flag.Type.UNIT_MISTAKE, CLINIC + ", Meadow Matt"),
            tuple(Flag.Type.DUPLICATE_LINE, GYM + ", Hall Semi"),
            tuple(Flag.Type.IMPOSSIBLE_YIELD, CLINIC + ", Meadow Matt"),
            tuple(Flag.Type.OVER_BID, GYM + ", dry fall"),
            tuple(Flag.Type.ONE_SIDED_TRANSFER, GYM + ", block filler"),
            tuple(Flag.Type.OVER_BID, GYM + ", Hall Semi"),
            tuple(Flag.Type.OVER_BID, LOFT + ", primer"),
            tuple(Flag.Type.IMPOSSIBLE_YIELD, LOFT + ", latex"),
            tuple(Flag.Type.OVER_BID, LOFT + ", Barn Stain"));
  }

  /** By hand: 9 + 9 + 5 pails of 5 gal bought, 2 gal left over, 1 gal wasted. */
  @Test
  void theUseOfOneCoatingIsThatCountedByHand() throws Exception {
    assertThat(april().uses())
        .filteredOn(use -> use.coating().equals("Hall Semi"))
        .extracting(CoatingUse::usedGal)
        .containsExactly(23 * 5.0 - 2 - 1);
  }

  @Test
  void theTemplateIsALedgerThatReadsWithoutAProblem() throws Exception {
    Ledger.Book book = ledger(Path.of("templates", "purchases.csv"));

    assertThat(book.layout().unused()).isEmpty();
    assertThat(book.lines()).allMatch(line -> line.problems().isEmpty());
    assertThat(book.lines())
        .extracting(LedgerLine::kind)
        .containsExactly(
            LineKind.PURCHASE, LineKind.RETURN, LineKind.TRANSFER_OUT, LineKind.LEFT_OVER);
    assertThat(book.lines()).allMatch(LedgerLine::hasVolume);
  }
}
