package org.wetmil.workbook.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.BidReader;

/** Runs against COBie workbooks by others, in a folder that the environment names. */
class CobieCorpusTest {
  @TempDir Path folder;

  @Test
  void everyCobieWorkbookBecomesABidThatLacksOnlyWhatItSays(TestReporter reporter)
      throws IOException {
    String corpus = System.getenv("WETMIL_COBIE");
    assumeTrue(corpus != null, "WETMIL_COBIE names no folder of COBie workbooks");
    List<Path> files;
    try (Stream<Path> all = Files.walk(Path.of(corpus))) {
      files = all.filter(file -> file.toString().endsWith(".xlsx")).sorted().toList();
    }
    assertThat(files).isNotEmpty();
    for (Path file : files) {
      Path bid = folder.resolve(file.getFileName().toString().replace(".xlsx", "-bid.xlsx"));
      Start.Made made = Start.make(file, Passwords.NONE, bid, true);
      FilledBid filled = Estimator.fill(BidReader.read(bid).bid());
      long missing =
          Checks.run(filled).stream()
              .filter(finding -> finding.severity() == Severity.STOP)
              .filter(finding -> finding.spot().row() > 0)
              .map(Finding::check)
              .peek(check -> assertThat(check).as(file.toString()).isEqualTo("missing-input"))
              .count();
      assertThat(filled.lines().count()).as(file.toString()).isEqualTo(made.lines());
      assertThat(missing)
          .as("stops of %s, beside what is said to be missing: %s", file, made.missing())
          .isLessThanOrEqualTo(made.missing().values().stream().mapToInt(n -> n).sum());
      reporter.publishEntry(file.getFileName().toString(), made.toString());
    }
  }
}
