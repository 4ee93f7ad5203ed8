package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.workbook.read.BidReader;

/**
 * Runs that are killed at any moment. How many is told by {@code -Dkills}: a few with every build,
 * 200 before a release.
 */
class KilledRunTest {
  private static final int KILLS = Integer.getInteger("kills", 10);

  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void aKilledRunLeavesAWholeResultOrNoneAndTheNextRunCleansUp()
      throws IOException, InterruptedException {
    Random random = new Random(9);
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    byte[] before = Files.readAllBytes(bid);
    Path filled = folder.resolve("job-filled.xlsx");
    long whole = timeOfARun(bid);
    int interrupted = 0;
    for (int i = 0; i < KILLS; i++) {
      if (random.nextBoolean()) {
        Files.deleteIfExists(filled);
      }
      Program run = Program.start(logs, "fill", "--quiet", "--force", bid);
      boolean ended = run.process().waitFor(moment(random, whole), TimeUnit.MILLISECONDS);
      run.process().destroyForcibly().waitFor();
      interrupted += ended ? 0 : 1;

      if (Files.exists(filled)) {
        assertThat(BidReader.read(filled).filledBefore()).isTrue();
      }
      assertThat(bid).hasBinaryContent(before);
    }
    assertThat(interrupted).isGreaterThan(KILLS / 4);

    Program.Ended last = Program.start(logs, "fill", "--quiet", "--force", bid).end();

    assertThat(last.code()).isZero();
    assertThat(Machine.names(folder)).containsExactly("job-filled.xlsx", "job.xlsx");
  }

  /** Milliseconds that a run takes when nobody kills it. */
  private long timeOfARun(Path bid) throws IOException, InterruptedException {
    long start = System.nanoTime();
    assertThat(Program.start(logs, "fill", "--quiet", "--force", bid).end().code()).isZero();
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }

  /** Somewhere in a run. Late ones are worth more: that is when files are written. */
  private static long moment(Random random, long whole) {
    return (long) (whole * Math.sqrt(random.nextDouble()));
  }
}
