package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
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

  /** Runs at a time, each in a folder of its own. */
  private static final int LANES = 2;

  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void aKilledRunLeavesAWholeResultOrNoneAndTheNextRunCleansUp() throws Exception {
    Path first = SmallBid.write(lane(0));
    long whole = timeOfARun(first);
    ExecutorService lanes = Executors.newFixedThreadPool(LANES);
    try {
      List<Future<Integer>> each = new ArrayList<>();
      for (int i = 0; i < LANES; i++) {
        Path bid = i == 0 ? first : SmallBid.write(lane(i));
        Random random = new Random(9 + i);
        each.add(lanes.submit(() -> killed(bid, random, whole)));
      }
      int interrupted = 0;
      for (Future<Integer> lane : each) {
        interrupted += lane.get();
      }
      assertThat(interrupted).isGreaterThan(KILLS / 4);
    } finally {
      lanes.shutdownNow();
    }
  }

  /** How many of the runs on a bid were killed before their end. */
  private int killed(Path bid, Random random, long whole) throws IOException, InterruptedException {
    byte[] before = Files.readAllBytes(bid);
    Path filled = bid.resolveSibling("job-filled.xlsx");
    int interrupted = 0;
    for (int i = 0; i < KILLS / LANES; i++) {
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

    Program.Ended last = Program.start(logs, "fill", "--quiet", "--force", bid).end();

    assertThat(last.code()).isZero();
    assertThat(Machine.names(bid.getParent())).containsExactly("job-filled.xlsx", "job.xlsx");
    return interrupted;
  }

  private Path lane(int at) throws IOException {
    return Files.createDirectory(folder.resolve("lane" + at)).resolve("job.xlsx");
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
