package org.wetmil.reconcile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.reconcile.TestJobs.job;
import static org.wetmil.reconcile.TestJobs.use;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.wetmil.ledger.Ledger;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.ledger.Ledgers;
import org.wetmil.ledger.LineKind;
import org.wetmil.reconcile.bid.BidJob;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.reconcile.use.Tally;

/** Random ledgers with every kind of mess: no line and no cent is lost or counted twice. */
class AccountingTest {
  private static final List<BidJob> JOBS =
      List.of(
          TestJobs.clinic(),
          job("1043 Depot", use("latex", "latex", 30, null), use("stain", "stain", 8, "41.37")),
          job("Harbour shed", use("block filler", "block filler", 60, "22.10")));
  private static final String[] JOB_NAMES = {
    "1042", "clinic refit", "1043 Depot", "Harbour shed", "Harbor shed", "", "7777"
  };
  private static final String[] ITEMS = {
    "latex",
    "Latex primer",
    "Wood stain, honey",
    "Block filler 5 gal",
    "Masking tape",
    "Primer, latex"
  };
  private static final String[] UNITS = {
    "gal", "qt", "pail of 5 gal", "L", "pail", "roll", "ea", ""
  };
  private static final String[] TYPES = {
    "Bill", "Credit", "Transfer", "Left over", "Waste", "Opening stock", "", "Oddity"
  };

  /** A ledger as text, with the amounts it was made from; 0 for one that cannot be read. */
  private record Made(List<String> text, List<BigDecimal> amounts) {
    int lines() {
      return amounts.size();
    }

    /** What leaves a job is money back, whatever the sign it is written with. */
    BigDecimal amount(List<LedgerLine> read) {
      BigDecimal sum = BigDecimal.ZERO;
      for (int i = 0; i < lines(); i++) {
        LineKind kind = read.get(i).kind();
        boolean back = kind == LineKind.RETURN || kind == LineKind.TRANSFER_OUT;
        sum = sum.add(back ? amounts.get(i).abs().negate() : amounts.get(i));
      }
      return sum;
    }
  }

  private static Made make(SplittableRandom random) {
    List<String> text =
        new ArrayList<>(List.of("Purchases,,,,,,", "Date,Job,Document,Item,Qty,UOM,Amount,Type"));
    int lines = random.nextInt(1, 120);
    List<BigDecimal> amounts = new ArrayList<>();
    for (int i = 0; i < lines; i++) {
      BigDecimal amount = BigDecimal.valueOf(random.nextInt(-50_000, 400_000), 2);
      boolean readable = random.nextInt(12) > 0;
      amounts.add(readable ? amount : BigDecimal.ZERO);
      String quantity =
          random.nextInt(10) == 0
              ? "?"
              : String.format(Locale.ROOT, "%.2f", random.nextInt(-400, 4000) / 100.0);
      text.add(
          String.join(
              ",",
              random.nextInt(15) == 0
                  ? "soon"
                  : "2026-0" + random.nextInt(1, 5) + "-1" + random.nextInt(10),
              JOB_NAMES[random.nextInt(JOB_NAMES.length)],
              "INV-" + random.nextInt(40),
              "\"" + ITEMS[random.nextInt(ITEMS.length)] + "\"",
              quantity,
              UNITS[random.nextInt(UNITS.length)],
              readable ? written(amount, random) : "see note",
              TYPES[random.nextInt(TYPES.length)]));
      if (random.nextInt(20) == 0) {
        text.add(random.nextBoolean() ? "" : "Subtotal,,,,,,0.00,");
      }
    }
    return new Made(text, amounts);
  }

  private static String written(BigDecimal amount, SplittableRandom random) {
    String size = String.format(Locale.ROOT, "%,.2f", amount.abs());
    boolean negative = amount.signum() < 0;
    return switch (random.nextInt(3)) {
      case 0 -> "\"" + (negative ? "(" + size + ")" : size) + "\"";
      case 1 -> "\"" + (negative ? "-$" : "$") + size + "\"";
      default -> amount.toPlainString();
    };
  }

  @Test
  void everyLineHasOnePlaceAndTheMoneyAddsUpToTheCent() {
    for (int seed = 0; seed < 300; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Made made = make(random);
      ReconcileSettings settings =
          new ReconcileSettings(
              0.1,
              1,
              random.nextBoolean(),
              random.nextBoolean() ? LocalDate.of(2026, 2, 1) : null,
              random.nextBoolean() ? LocalDate.of(2026, 3, 15) : null);
      Ledger.Book book = Ledgers.book(made.text().toArray(String[]::new));
      Reconciliation result = Reconciler.reconcile(JOBS, List.of(book), List.of(), settings);

      assertThat(result.lines())
          .as("seed %d", seed)
          .extracting(PlacedLine::line)
          .containsExactlyElementsOf(book.lines());
      assertThat(result.read().lines()).as("seed %d", seed).isEqualTo(made.lines());
      assertThat(sum(result.read()))
          .as("seed %d", seed)
          .isEqualByComparingTo(made.amount(book.lines()));
      assertThat(result.places().values().stream().mapToLong(Tally::lines).sum())
          .isEqualTo(made.lines());
      assertThat(
              result.places().values().stream()
                  .map(AccountingTest::sum)
                  .reduce(BigDecimal.ZERO, BigDecimal::add))
          .isEqualByComparingTo(made.amount(book.lines()));
      assertThat(
              result.reasons().values().stream()
                  .map(AccountingTest::sum)
                  .reduce(BigDecimal.ZERO, BigDecimal::add))
          .isEqualByComparingTo(sum(result.at(Place.UNMATCHED)));
      assertThat(book.counts().titles() + book.counts().blanks() + book.counts().totals().size())
          .isEqualTo(made.text().size() - 1L - made.lines());
    }
  }

  @Test
  void theGroupsHoldWhatTheMatchedLinesHold() {
    for (int seed = 0; seed < 100; seed++) {
      Ledger.Book book =
          Ledgers.book(make(new SplittableRandom(seed)).text().toArray(String[]::new));
      Reconciliation result =
          Reconciler.reconcile(JOBS, List.of(book), List.of(), ReconcileSettings.DEFAULT);
      double used = 0;
      BigDecimal bought = BigDecimal.ZERO;
      for (PlacedLine placed : result.lines()) {
        if (placed.isMatched()) {
          LedgerLine line = placed.line();
          used += line.kind().sign() * line.volumeGal();
          boolean counts =
              line.kind() == LineKind.PURCHASE
                  && line.money() != null
                  && line.currency().equals(result.currency());
          bought = counts ? bought.add(line.money()) : bought;
        }
      }
      assertThat(result.uses().stream().mapToDouble(CoatingUse::usedGal).sum())
          .as("seed %d", seed)
          .isCloseTo(used, within(1e-7));
      for (List<GroupUse> groups : List.of(result.byCoating(), result.byJob(), result.byMonth())) {
        assertThat(groups.stream().mapToDouble(GroupUse::usedGal).sum())
            .as("seed %d", seed)
            .isCloseTo(used, within(1e-7));
        assertThat(
                groups.stream()
                    .map(group -> group.ledger().money(LineKind.PURCHASE))
                    .reduce(BigDecimal.ZERO, BigDecimal::add))
            .as("seed %d", seed)
            .isEqualByComparingTo(bought);
        assertThat(together(groups, GroupUse::matched))
            .as("seed %d", seed)
            .isEqualTo(result.at(Place.MATCHED).amounts());
      }
      assertThat(together(result.byMonth(), GroupUse::unmatched))
          .as("seed %d", seed)
          .isEqualTo(result.at(Place.UNMATCHED).amounts());
    }
  }

  /** The amounts of all groups, each currency by itself. */
  private static Map<String, BigDecimal> together(
      List<GroupUse> groups, Function<GroupUse, Tally> tally) {
    Map<String, BigDecimal> sums = new TreeMap<>();
    groups.forEach(
        group ->
            tally
                .apply(group)
                .amounts()
                .forEach((name, amount) -> sums.merge(name, amount, BigDecimal::add)));
    return sums;
  }

  private static BigDecimal sum(Tally tally) {
    return tally.amounts().values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }
}
