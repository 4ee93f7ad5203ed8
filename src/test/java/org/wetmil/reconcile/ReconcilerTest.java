package org.wetmil.reconcile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.reconcile.TestJobs.OTHER_NAMES;
import static org.wetmil.reconcile.TestJobs.clinic;
import static org.wetmil.reconcile.TestJobs.job;
import static org.wetmil.reconcile.TestJobs.use;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.ledger.ItemName;
import org.wetmil.ledger.Ledgers;
import org.wetmil.ledger.LineKind;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.flag.Cause;
import org.wetmil.reconcile.flag.Flag;
import org.wetmil.reconcile.match.Reason;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.reconcile.use.GroupUse;

class ReconcilerTest {
  private static final String HEAD = "Date,Job,Document,Item,Qty,UOM,Amount,Type";

  private static Reconciliation run(List<BidJob> jobs, String... lines) {
    return run(ReconcileSettings.DEFAULT, jobs, lines);
  }

  private static Reconciliation run(
      ReconcileSettings settings, List<BidJob> jobs, String... lines) {
    String[] all = new String[lines.length + 1];
    all[0] = HEAD;
    System.arraycopy(lines, 0, all, 1, lines.length);
    return Reconciler.reconcile(jobs, List.of(Ledgers.book(all)), List.of(), settings);
  }

  private static CoatingUse useOf(Reconciliation result, String coating) {
    return result.uses().stream()
        .filter(u -> u.coating().equals(coating))
        .findFirst()
        .orElseThrow();
  }

  private static List<Flag.Type> flags(Reconciliation result, String coating) {
    return result.flags().stream()
        .filter(flag -> flag.coating().equals(coating))
        .map(Flag::type)
        .toList();
  }

  private static ItemName item(String item, String coating) {
    return new ItemName(item, coating, "items.csv:2");
  }

  @Test
  void usedIsWhatWentInLessWhatCameOut() {
    Reconciliation result =
        run(
            List.of(clinic(), job("1043 Depot", use("latex", "latex", 10, null))),
            "2026-03-01,1042,S,latex,2,gal,,Opening stock",
            "2026-03-02,1042,A,latex,50,gal,1500.00,Bill",
            "2026-03-03,1042,B,latex,4,gal,,Transfer in",
            "2026-03-04,1042,C,latex,5,gal,150.00,Credit",
            "2026-03-05,1042,D,latex,3,gal,,Transfer out",
            "2026-03-06,1042,E,latex,6,gal,,Left over",
            "2026-03-07,1042,F,latex,1,gal,,Waste");

    CoatingUse latex = useOf(result, "latex");
    assertThat(latex.usedGal()).isEqualTo(2 + 50 + 4 - 5 - 3 - 6 - 1);
    assertThat(latex.ledger().gallons(LineKind.RETURN)).isEqualTo(5);
    assertThat(latex.varianceGal()).isEqualTo(1);
    assertThat(latex.varianceShare()).isEqualTo(0.025);
    assertThat(latex.ledger().spent()).isEqualByComparingTo("1350");
  }

  /** By hand from the formulas: yield 0.665 x 40 / 50, TE that times 1 / 0.95. */
  @Test
  void theLossAndTheFilmThatWouldExplainTheUseFollowFromTheBid() {
    CoatingUse latex =
        useOf(run(List.of(clinic()), "2026-03-02,1042,A,latex,50,gal,1500.00,Bill"), "latex");

    assertThat(latex.bid().theoreticalGal() / latex.bid().paintGal())
        .isCloseTo(0.665, within(1e-12));
    assertThat(latex.foundYield()).isCloseTo(0.532, within(1e-12));
    assertThat(latex.impliedTransferEfficiency()).isCloseTo(0.56, within(1e-12));
    assertThat(latex.impliedLoss()).isCloseTo(0.44, within(1e-12));
    assertThat(latex.impliedDryMil()).isCloseTo(2.5, within(1e-12));
    assertThat(latex.impliedSpreadFt2PerGal() * 50)
        .isCloseTo(latex.bid().coatedFt2(), within(1e-9));
  }

  @Test
  void priceAndQuantityVarianceAddUpToTheTotal() {
    CoatingUse latex =
        useOf(run(List.of(clinic()), "2026-03-02,1042,A,latex,50,gal,1650.00,Bill"), "latex");

    assertThat(latex.pricePaid()).isEqualByComparingTo("33");
    assertThat(latex.money().actual()).isEqualTo("1650.00");
    assertThat(latex.money().bid()).isEqualTo("1200.00");
    assertThat(latex.money().price()).isEqualTo("150.00");
    assertThat(latex.money().quantity()).isEqualTo("300.00");
    assertThat(latex.money().total()).isEqualTo("450.00");
  }

  @Test
  void withoutAPriceThereIsNoMoney() {
    Reconciliation result = run(List.of(clinic()), "2026-03-02,1042,A,latex,40,gal,,Bill");

    assertThat(useOf(result, "latex").money()).isNull();
    assertThat(result.byJob().get(0).money()).isNull();
  }

  @Test
  void aPriceThatIsNotBidLeavesOnlyTheQuantity() {
    Reconciliation result =
        run(
            List.of(job("Depot", use("latex", "latex", 40, null))),
            "2026-03-02,Depot,A,latex,50,gal,1500.00,Bill");

    assertThat(useOf(result, "latex").money().price()).isEqualByComparingTo("0");
    assertThat(useOf(result, "latex").money().quantity()).isEqualTo("300.00");
  }

  @Test
  void everyReasonIsGivenWhereItHolds() {
    Reconciliation result =
        run(
            List.of(clinic()),
            "2026-03-01,1099,A,latex,5,gal,150.00,Bill",
            "2026-03-01,,A,latex primer,5,gal,125.00,Bill",
            "2026-03-01,1042,A,Block filler white,5,gal,125.00,Bill",
            "2026-03-01,1042,A,Mystery thing,1,gal,9.00,Bill",
            "2026-03-01,1042,A,\"Primer, latex\",5,gal,125.00,Bill",
            "2026-03-01,1042,A,latex,2,pail,300.00,Bill",
            "2026-03-01,1042,A,latex,two,gal,60.00,Bill",
            "2026-03-01,1042,A,Masking tape 36 mm,24,roll,96.00,Bill",
            "2026-03-01,1099,A,Sanding discs,50,ea,40.00,Bill",
            "2026-03-01,1042,A,Latex wall paint white,5,gal,150.00,Bill");

    assertThat(result.lines())
        .extracting(PlacedLine::state)
        .containsExactly(
            "no such job",
            "no such job",
            "no such coating in this bid",
            "no such coating in this bid",
            "ambiguous",
            "unknown unit",
            "unreadable",
            "not a coating",
            "not a coating",
            "by words");
    assertThat(result.lines().get(0).suggestion()).containsExactly("1042 Clinic refit");
    assertThat(result.lines().get(4).suggestion()).containsExactly("primer", "latex");
    assertThat(result.reasons().get(Reason.NOT_A_COATING).amount("")).isEqualTo("136.00");
    assertThat(result.at(Place.UNMATCHED).lines()).isEqualTo(9);
    assertThat(result.read().lines()).isEqualTo(10);
  }

  @Test
  void linesOutsideThePeriodAreCountedApartAndBothEndsAreInside() {
    ReconcileSettings march =
        new ReconcileSettings(0.1, 1, false, LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 31));
    Reconciliation result =
        run(
            march,
            List.of(clinic()),
            "2026-02-28,1042,A,latex,1,gal,30.00,Bill",
            "2026-03-01,1042,B,latex,2,gal,60.00,Bill",
            "2026-03-31,1042,C,latex,4,gal,120.00,Bill",
            "2026-04-01,1042,D,latex,8,gal,240.00,Bill",
            "soon,1042,E,latex,16,gal,480.00,Bill");

    assertThat(result.lines())
        .extracting(PlacedLine::place)
        .containsExactly(
            Place.OUTSIDE, Place.MATCHED, Place.MATCHED, Place.OUTSIDE, Place.UNMATCHED);
    assertThat(result.lines().get(4).reason()).isEqualTo(Reason.UNREADABLE);
    assertThat(useOf(result, "latex").usedGal()).isEqualTo(6);
    assertThat(result.at(Place.OUTSIDE).amount("")).isEqualTo("270.00");
  }

  @Test
  void aRepeatedLineIsFlaggedAndCountedUnlessItIsToBeLeftOut() {
    String[] lines = {
      "2026-03-01,1042,INV-1,latex,5,gal,150.00,Bill",
      "3/1/26,1042,inv 1,Latex,5.0,gal,150.00,Bill",
      "2026-03-01,1042,INV-2,latex,5,gal,150.00,Bill"
    };
    Reconciliation counted = run(List.of(clinic()), lines);
    Reconciliation leftOut =
        run(new ReconcileSettings(0.1, 1, true, null, null), List.of(clinic()), lines);

    assertThat(useOf(counted, "latex").usedGal()).isEqualTo(15);
    assertThat(useOf(leftOut, "latex").usedGal()).isEqualTo(10);
    assertThat(leftOut.at(Place.LEFT_OUT).amount("")).isEqualTo("150.00");
    for (Reconciliation result : List.of(counted, leftOut)) {
      assertThat(result.lines())
          .extracting(l -> l.duplicateOf() != null)
          .containsExactly(false, true, false);
      assertThat(result.read().amount("")).isEqualTo("450.00");
      assertThat(result.flags())
          .filteredOn(flag -> flag.type() == Flag.Type.DUPLICATE_LINE)
          .extracting(flag -> flag.line().line(), flag -> flag.first().line())
          .containsExactly(tuple(3L, 2L));
    }
  }

  @Test
  void theSameTransferToTwoJobsIsNoDuplicate() {
    Reconciliation result =
        run(
            List.of(clinic(), job("1043 Depot", use("latex", "latex", 10, null))),
            "2026-03-01,1042,,latex,5,gal,,Transfer in",
            "2026-03-01,1043,,latex,5,gal,,Transfer in",
            "2026-03-01,1043,,latex,5,gal,,Transfer out");

    assertThat(result.lines()).allMatch(line -> line.duplicateOf() == null);
  }

  @Test
  void gallonsTypedAsPailsShowInThePriceOfAGallon() {
    Reconciliation result =
        run(
            List.of(clinic()),
            "2026-03-01,1042,A,latex,5,gal,150.00,Bill",
            "2026-03-02,1042,B,latex,10,gal,310.00,Bill",
            "2026-03-03,1042,C,latex,2,gal,300.00,Bill",
            "2026-03-04,1042,D,latex,4,gal,240.00,Bill");

    assertThat(result.lines())
        .extracting(PlacedLine::isUnitSuspect)
        .containsExactly(false, false, true, false);
    assertThat(result.lines().get(2).pricePerGal()).isEqualTo(150);
    assertThat(result.lines().get(2).usualPricePerGal()).isEqualTo(31);
    assertThat(flags(result, "latex")).contains(Flag.Type.UNIT_MISTAKE);
  }

  @Test
  void theRightLineIsNotBlamedForTheWrongOne() {
    Reconciliation priced =
        run(
            List.of(clinic()),
            "2026-03-01,1042,A,latex,5,gal,150.00,Bill",
            "2026-03-02,1042,B,latex,10,gal,300.00,Bill",
            "2026-03-03,1042,C,latex,2,gal,300.00,Bill");
    Reconciliation unpriced =
        run(
            List.of(job("1042", use("latex", "latex", 40, null))),
            "2026-03-01,1042,A,latex,5,gal,150.00,Bill",
            "2026-03-03,1042,C,latex,2,gal,300.00,Bill");

    assertThat(priced.lines())
        .extracting(PlacedLine::isUnitSuspect)
        .containsExactly(false, false, true);
    assertThat(unpriced.lines()).noneMatch(PlacedLine::isUnitSuspect);
  }

  @Test
  void anotherWordForACoatingsOwnNameSaysMoreThanAClass() {
    List<BidJob> jobs =
        List.of(job("1042", use("latex", "latex", 20, null), use("Fine Matt", "latex", 20, null)));

    Reconciliation result =
        run(
            jobs,
            "2026-03-01,1042,A,\"Wall paint, white\",5,gal,150.00,Bill",
            "2026-03-01,1042,A,\"Fine matt, white\",5,gal,150.00,Bill",
            "2026-03-01,1042,A,\"Latex, white\",5,gal,150.00,Bill");

    assertThat(result.lines())
        .extracting(PlacedLine::coating)
        .containsExactly("latex", "Fine Matt", "latex");
  }

  @Test
  void aClassThatTwoCoatingsShareIsAmbiguous() {
    List<BidJob> jobs =
        List.of(
            job("1042", use("Hard Semi", "latex", 20, null), use("Fine Matt", "latex", 20, null)));

    PlacedLine line =
        run(jobs, "2026-03-01,1042,A,\"Latex, white\",5,gal,150.00,Bill").lines().get(0);

    assertThat(line.reason()).isEqualTo(Reason.AMBIGUOUS);
    assertThat(line.suggestion()).containsExactly("Hard Semi", "Fine Matt");
  }

  @Test
  void aSinglePurchaseIsHeldAgainstThePriceBid() {
    assertThat(flags(run(List.of(clinic()), "2026-03-01,1042,A,latex,8,gal,1200.00,Bill"), "latex"))
        .contains(Flag.Type.UNIT_MISTAKE);
    assertThat(flags(run(List.of(clinic()), "2026-03-01,1042,A,latex,8,gal,700.00,Bill"), "latex"))
        .doesNotContain(Flag.Type.UNIT_MISTAKE);
  }

  @Test
  void aDifferenceIsFlaggedOnlyPastBothToleranceAndOneContainer() {
    String line = "2026-03-01,1042,A,latex,%s,pail of 5 gal,%s,Bill";

    assertThat(flags(run(List.of(clinic()), line.formatted("9", "1350.00")), "latex")).isEmpty();
    assertThat(flags(run(List.of(clinic()), line.formatted("9.002", "1350.00")), "latex"))
        .containsExactly(Flag.Type.OVER_BID);
    assertThat(flags(run(List.of(clinic()), line.formatted("7", "1050.00")), "latex")).isEmpty();
    assertThat(flags(run(List.of(clinic()), line.formatted("6.9", "1035.00")), "latex"))
        .containsExactly(Flag.Type.UNDER_BID);
  }

  @Test
  void aCoatMoreIsNamedWhereTheExtraPaintIsAboutOneCoat() {
    Flag flag =
        run(
                List.of(clinic()),
                "2026-03-01,1042,A,latex,60,gal,1800.00,Bill",
                "2026-03-02,1042,A,latex,1,gal,30.00,Credit")
            .flags()
            .get(0);

    assertThat(flag.type()).isEqualTo(Flag.Type.OVER_BID);
    assertThat(flag.causes().get(0)).isEqualTo(Cause.EXTRA_COAT);
    assertThat(flag.couldMean()).startsWith("Could be a coat more than was bid; ").endsWith(".");
    assertThat(flag.lookFirst()).startsWith("Look first at the daily log");
  }

  @Test
  void moreFilmThanThePaintCanHoldIsImpossible() {
    assertThat(flags(run(List.of(clinic()), "2026-03-01,1042,A,latex,28,gal,840.00,Bill"), "latex"))
        .containsExactly(Flag.Type.UNDER_BID);
    assertThat(flags(run(List.of(clinic()), "2026-03-01,1042,A,latex,27,gal,810.00,Bill"), "latex"))
        .containsExactly(Flag.Type.IMPOSSIBLE_YIELD);
  }

  @Test
  void moreReturnedThanBoughtGivesNoYield() {
    Reconciliation result = run(List.of(clinic()), "2026-03-01,1042,A,latex,-5,gal,-150.00,");

    assertThat(useOf(result, "latex").foundYield()).isNaN();
    assertThat(useOf(result, "latex").impliedLoss()).isNaN();
    assertThat(flags(result, "latex")).containsExactly(Flag.Type.NOTHING_USED);
    assertThat(flags(result, "primer")).containsExactly(Flag.Type.NOTHING_BOUGHT);
  }

  @Test
  void aJobThatNoLineNamesIsFlaggedOnceAndNotByCoating() {
    List<BidJob> jobs = List.of(clinic(), job("1043 Depot", use("latex", "latex", 5, null)));
    Reconciliation result = run(jobs, "2026-03-01,1043,A,tape,1,roll,5.00,Bill");

    assertThat(result.flags())
        .extracting(Flag::type, Flag::job, Flag::coating)
        .containsExactly(
            tuple(Flag.Type.JOB_NOT_NAMED, "1042 Clinic refit", ""),
            tuple(Flag.Type.NOTHING_BOUGHT, "1043 Depot", "latex"));
  }

  @Test
  void paintMovedOutThatArrivesNowhereIsFlagged() {
    List<BidJob> jobs = List.of(clinic(), job("1043 Depot", use("latex", "latex", 5, null)));
    String out = "2026-03-01,1042,T,latex,5,gal,,Transfer out";
    String in = "2026-03-01,1043,T,latex,5,gal,,Transfer in";

    assertThat(flags(run(jobs, out, in), "latex")).doesNotContain(Flag.Type.ONE_SIDED_TRANSFER);
    assertThat(flags(run(jobs, out), "latex")).contains(Flag.Type.ONE_SIDED_TRANSFER);
  }

  @Test
  void theBookkeepersTableWins() {
    Reconciliation result =
        Reconciler.reconcile(
            List.of(clinic()),
            List.of(
                Ledgers.book(
                    HEAD,
                    "2026-03-01,1042,A,WH-100,5,gal,150.00,Bill",
                    "2026-03-01,1042,B,latex,5,gal,150.00,Bill",
                    "2026-03-01,1042,C,Primer brush,5,ea,50.00,Bill")),
            List.of(item("wh 100", "Latex"), item("latex", "primer"), item("primer brush", "")),
            ReconcileSettings.DEFAULT);

    assertThat(result.lines())
        .extracting(PlacedLine::coating, PlacedLine::state)
        .containsExactly(
            tuple("latex", "by table"), tuple("primer", "by table"), tuple("", "not a coating"));
  }

  @Test
  void theTableOfABidIsForItsJobAndComesBeforeTheOneForAll() {
    BidJob own =
        new BidJob(
            "1043 Depot",
            List.of(use("Fine Matt", "latex", 9, null), use("Hard Semi", "latex", 9, null)),
            "",
            OTHER_NAMES,
            List.of(item("WH-100", "Hard Semi")));
    String line = "2026-03-01,%s,A,WH-100,5,gal,150.00,Bill";

    Reconciliation result =
        Reconciler.reconcile(
            List.of(clinic(), own),
            List.of(Ledgers.book(HEAD, line.formatted("1042"), line.formatted("1043"))),
            List.of(item("WH-100", "latex")),
            ReconcileSettings.DEFAULT);

    assertThat(result.lines())
        .extracting(PlacedLine::coating, PlacedLine::state)
        .containsExactly(tuple("latex", "by table"), tuple("Hard Semi", "by table"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Mineral spirits",
        "Paint thinner 1 gal",
        "Lacquer thinner",
        "\"Thinner, lacquer\"",
        "Thinner for clear lacquer",
        "Stain remover",
        "Oil-based brush cleaner",
        "Acrylic latex caulk",
        "Kunstharzverdünnung",
        "Pinselreiniger",
        "Aguarrás",
        "Disolvente para laca",
        "Deck cleaner",
        "Latex gloves box of 100",
        "\"4\"\" brush for stain\"",
        "Lacquer pads"
      })
  void solventsCleanersAndFillersAreNoCoatingThoughBoughtByVolume(String item) {
    PlacedLine line = clinicLine(item + ",2,gal,30.00");

    assertThat(line.reason()).isEqualTo(Reason.NOT_A_COATING);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Solvent-free latex",
        "\"Latex eggshell, cleaner finish\"",
        "Latex enamel with thinner",
        "Adhesive latex primer",
        "Latex eggshell (no solvent)"
      })
  void aCoatingIsOneThoughItNamesASolvent(String item) {
    assertThat(clinicLine(item + ",2,gal,30.00").isMatched()).isTrue();
  }

  @Test
  void anItemThatContradictsItsDescriptionIsAmbiguous() {
    Reconciliation result =
        Reconciler.reconcile(
            List.of(clinic()),
            List.of(
                Ledgers.book("Job,Item,Description,Qty,Unit", "1042,Latex paint,Thinner,1,gal")),
            List.of(),
            ReconcileSettings.DEFAULT);

    assertThat(result.lines().get(0).reason()).isEqualTo(Reason.AMBIGUOUS);
    assertThat(result.lines().get(0).suggestion()).containsExactly("latex", "not a coating");
  }

  @Test
  void aCoatingThatAnotherJobWasBidWithIsSuggestedOfThatJob() {
    List<BidJob> jobs = List.of(clinic(), job("1043 Depot", use("Barn Stain", "stain", 9, null)));

    assertThat(run(jobs, "2026-03-01,1042,A,Wood stain honey,5,gal,1,Bill").lines())
        .extracting(PlacedLine::reason, PlacedLine::suggestion)
        .containsExactly(tuple(Reason.NO_SUCH_COATING, List.of("Barn Stain of 1043 Depot")));
    assertThat(run(jobs, "2026-03-01,1042,A,Wonder liquid,5,gal,1,Bill").lines())
        .extracting(PlacedLine::reason, PlacedLine::suggestion)
        .containsExactly(tuple(Reason.NO_SUCH_COATING, List.of()));
  }

  private static PlacedLine clinicLine(String cells) {
    return run(List.of(clinic()), "2026-03-01,1042,A," + cells + ",Bill").lines().get(0);
  }

  @Test
  void bidsOfOneNameAreOneJob() {
    Reconciliation result =
        run(
            List.of(clinic(), job("1042 clinic refit", use("latex", "latex", 10, "30.00"))),
            "2026-03-01,1042,A,latex,50,gal,1500.00,Bill");

    assertThat(useOf(result, "latex").bid().paintGal()).isEqualTo(50);
    assertThat(useOf(result, "latex").bid().pricePerGal()).isEqualByComparingTo("30");
    assertThat(useOf(result, "latex").bid().transferEfficiency()).isCloseTo(0.7, within(1e-12));
    assertThat(result.byJob()).hasSize(1);
  }

  @Test
  void moneyOfAnotherCurrencyIsKeptApart() {
    Reconciliation result =
        run(
            List.of(clinic()),
            "2026-03-01,1042,A,latex,20,gal,$600.00,Bill",
            "2026-03-01,1042,B,latex,10,gal,$300.00,Bill",
            "2026-03-01,1042,C,latex,10,gal,€280.00,Bill");

    assertThat(result.currency()).isEqualTo("$");
    assertThat(useOf(result, "latex").usedGal()).isEqualTo(40);
    assertThat(useOf(result, "latex").pricePaid()).isEqualByComparingTo("30");
    assertThat(result.read().amounts().toString()).isEqualTo("{$=900.00, EUR=280.00}");
  }

  @Test
  void sumsOfGroupsHoldEachCurrencyByItself() {
    Reconciliation result =
        run(
            List.of(clinic()),
            "2026-03-01,1042,A,latex,20,gal,$600.00,Bill",
            "2026-03-01,1042,B,latex,10,gal,$300.00,Bill",
            "2026-03-01,1042,C,latex,10,gal,€280.00,Bill",
            "2026-03-01,1042,D,tape,1,roll,€5.00,Bill");

    for (GroupUse group :
        List.of(result.byCoating().get(0), result.byJob().get(0), result.byMonth().get(0))) {
      assertThat(group.matched().amounts().toString()).isEqualTo("{$=900.00, EUR=280.00}");
    }
    assertThat(result.byJob().get(0).unmatched().amounts().toString()).isEqualTo("{EUR=5.00}");
  }

  @Test
  void aPriceBidInAnotherCurrencyIsComparedWithNothing() {
    BidJob euros = new BidJob("1042 Clinic refit", clinic().uses(), "EUR", OTHER_NAMES, List.of());
    BidJob dollars =
        new BidJob("1042 Clinic refit", clinic().uses(), "USD", OTHER_NAMES, List.of());
    String line = "2026-03-01,1042,A,latex,40,gal,$3600.00,Bill";

    CoatingUse apart = useOf(run(List.of(euros), line), "latex");
    CoatingUse alike = useOf(run(List.of(dollars), line), "latex");

    assertThat(apart.bid().pricePerGal()).isNull();
    assertThat(apart.money().price()).isEqualByComparingTo("0");
    assertThat(flags(run(List.of(euros), line), "latex")).isEmpty();
    assertThat(alike.money().price()).isEqualByComparingTo("2400");
    assertThat(flags(run(List.of(dollars), line), "latex")).contains(Flag.Type.UNIT_MISTAKE);
  }

  @Test
  void aLineInAnotherCurrencyIsNoUnitMistake() {
    String dollars = "2026-03-01,1042,%s,latex,10,gal,$300.00,Bill";
    String other = "2026-03-01,1042,C,latex,10,gal,¥45000,Bill".replace("¥", "JPY ");

    assertThat(
            flags(
                run(List.of(clinic()), dollars.formatted("A"), dollars.formatted("B"), other),
                "latex"))
        .doesNotContain(Flag.Type.UNIT_MISTAKE);
  }

  @Test
  void sumsByMonthKeepLinesWithoutADateLast() {
    Reconciliation result =
        run(
            List.of(clinic()),
            "2026-04-01,1042,A,latex,5,gal,150.00,Bill",
            ",1042,B,latex,5,gal,150.00,Bill",
            "2026-03-01,1042,C,latex,5,gal,150.00,Bill",
            "2026-03-02,1042,C,tape,5,roll,20.00,Bill");

    assertThat(result.byMonth())
        .extracting(GroupUse::name, GroupUse::usedGal, group -> group.unmatched().amount(""))
        .containsExactly(
            tuple("2026-03", 5.0, new BigDecimal("20.00")),
            tuple("2026-04", 5.0, BigDecimal.ZERO),
            tuple("no date", 5.0, BigDecimal.ZERO));
  }
}
