package org.wetmil.checks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * What every check finds in the bid or ledger in which it fires, frozen: outputs of our own, read
 * over when they change.
 */
public final class FrozenFindings {
  static final Path FILE = Path.of("src/test/resources/golden/findings.txt");

  private FrozenFindings() {}

  /** One line for a finding: check, severity, place, what was found, its limit, and the message. */
  static List<String> all() {
    return Stream.concat(
            ChecksTest.cases().flatMap(each -> ChecksTest.of(each.id(), each.fires()).stream()),
            LedgerChecksTest.cases()
                .flatMap(each -> LedgerChecksTest.of(each.id(), each.fires()).stream()))
        .map(FrozenFindings::line)
        .toList();
  }

  private static String line(Finding finding) {
    Spot spot = finding.spot();
    String column = spot.column() == null ? "-" : spot.column().heading();
    return String.join(
        " | ",
        finding.check(),
        finding.severity().name(),
        String.join(" ", spot.sheet(), Integer.toString(spot.row()), column, spot.address()),
        finding.room() + ", " + finding.surface(),
        finding.measured(),
        finding.limit(),
        finding.message());
  }

  /** Writes them anew. */
  public static void write() throws IOException {
    Files.write(FILE, all());
  }
}
