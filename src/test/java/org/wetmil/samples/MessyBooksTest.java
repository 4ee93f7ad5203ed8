package org.wetmil.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.checks.Finding;
import org.wetmil.jobs.ReconcileReport;
import org.wetmil.reconcile.Place;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.reconcile.use.CoatingUse;

/** Three ledgers in three encodings, languages and currencies; sums by hand. */
class MessyBooksTest {
  private static final double LITRES_A_GALLON = 3.785411784;

  @TempDir Path folder;
  private ReconcileReport report;
  private Reconciliation result;

  @BeforeEach
  void reconcile() {
    report = MessyBooks.write(folder, folder.resolve("messy.xlsx"));
    result = report.result();
  }

  @Test
  void everyLineAndEveryCentIsThere() {
    assertThat(result.read().lines()).isEqualTo(14 + 5 + 3);
    assertThat(result.read().amounts())
        .isEqualTo(
            Map.of(
                // 1280 + 160 + 160 - 160 + 36 - 370 + 555 + 185 + 50
                "$", new BigDecimal("1896.00"),
                // 190 + 1295.50 - 41 + 21 + 9 and 180 - 45, a return without a sign
                "EUR", new BigDecimal("1609.50")));
    assertThat(Arrays.stream(Place.values()).mapToLong(place -> result.at(place).lines()).sum())
        .isEqualTo(22);
    assertThat(report.findings()).extracting(Finding::check).doesNotContain("ledger-total");
  }

  /** Bought 20 + 5 + 5 gal and 25 L, returned 5 gal and 5 L, 2 qt left, 1 pt wasted, 1 L bought. */
  @Test
  void volumesOfAllUnitsAndLanguagesComeTogether() {
    assertThat(used("2211 Mill loft", "latex"))
        .isCloseTo(
            30 + (25 + 1) / LITRES_A_GALLON - 5 - 5 / LITRES_A_GALLON - 0.5 - 0.125, within(1e-9));
    assertThat(used("2211 Mill loft", "Barn Stain"))
        .isCloseTo(4 - 1 - 0.5 / LITRES_A_GALLON, within(1e-9));
    assertThat(used("2211 Mill loft", "primer")).isEqualTo(2 - 1);
    assertThat(used("2207 School gym", "Hall Semi")).isEqualTo(-10);
  }

  @Test
  void whatIsNotMatchedHasItsReason() {
    assertThat(result.lines())
        .filteredOn(line -> line.place() == Place.UNMATCHED)
        .extracting(line -> line.line().file(), line -> line.line().line(), line -> line.state())
        .containsExactly(
            tuple("us.csv", 11L, "not a coating"),
            tuple("us.csv", 13L, "no such coating in this bid"),
            tuple("us.csv", 16L, "unreadable"),
            tuple("us.csv", 17L, "no such job"),
            tuple("us.csv", 18L, "not a coating"),
            tuple("de.csv", 4L, "unknown unit"),
            tuple("de.csv", 6L, "not a coating"));
  }

  @Test
  void theDayThatIsNoneAndTheLineThatStandsTwiceAreSaid() {
    assertThat(report.findings())
        .extracting(Finding::check, finding -> finding.spot().sheet(), f -> f.spot().row())
        .contains(tuple("ledger-date", "de.csv", 7), tuple("ledger-line-twice", "us.csv", 9));
  }

  private double used(String job, String coating) {
    return result.uses().stream()
        .filter(use -> use.job().equals(job) && use.coating().equals(coating))
        .mapToDouble(CoatingUse::usedGal)
        .findFirst()
        .orElseThrow();
  }
}
