package org.wetmil.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.jobs.FillJob;

/** The audited sample: as frozen, and naming the two causes that were hidden in it. */
class PastBidsTest {
  @TempDir static Path folder;

  private static Path audited;

  @BeforeAll
  static void audit() {
    audited = folder.resolve("audited.xlsx");
    PastBids.audit(audited);
  }

  @Test
  void sampleAuditedAnewEqualsItsTwin() throws IOException {
    assertThat(CellDump.differences(CellDump.of(PastBids.TWIN), CellDump.of(audited)))
        .as("rewrite the twins by the command in DEVELOPERS.md and look at what changed")
        .isEmpty();
  }

  @Test
  void onePageNamesBothHiddenCauses() throws IOException {
    Map<String, String> page = new TreeMap<>(CellDump.of(audited));
    page.keySet().removeIf(cell -> !cell.startsWith("Audit!"));

    assertThat(page.values())
        .anyMatch(text -> text.contains(PastBids.COATING + ": paint ran"))
        .anyMatch(text -> text.contains("Crew " + PastBids.CREW + " at heights over 14"));
  }

  @Test
  void nextBidFilledWithTheSuggestedTablesTakesThePaintThatTheOthersTook() {
    Path tables = folder.resolve("tables.xlsx");
    PastBids.audit(folder.resolve("again.xlsx"), tables);
    Path bid = PastBids.FOLDER.resolve("2301-brook-school.xlsx");
    FillJob job = new FillJob(LocalDate.of(2026, 1, 5), "test", true);

    double before = job.fill(bid, folder.resolve("before.xlsx")).paint();
    double after = job.over(tables).fill(bid, folder.resolve("after.xlsx")).paint();

    assertThat(after / before)
        .as("nearly all of the bid is Hall Semi, whose loss the tables had underestimated")
        .isBetween(1.1, PastBids.HALL_SEMI);
  }
}
