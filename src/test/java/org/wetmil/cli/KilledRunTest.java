package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.jobs.Inputs;
import org.wetmil.workbook.read.BidReader;

/**
 * Runs that are killed at any moment. How many is told by {@code -Dkills}: a few with every build,
 * 200 before a release.
 */
class KilledRunTest {
  private static final int KILLS = Integer.getInteger("kills", 10);

  /** Workbooks of each lane's folder: one, and several that are filled side by side. */
  private static final List<Integer> LANES = List.of(1, 4);

  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void aKilledRunLeavesWholeResultsOrNoneAndTheNextRunCleansUp() throws Exception {
    ExecutorService lanes = Executors.newFixedThreadPool(LANES.size());
    try {
      List<Future<Integer>> each = new ArrayList<>();
      for (int bids : LANES) {
        Path lane = Files.createDirectory(folder.resolve("lane" + bids));
        for (int i = 1; i <= bids; i++) {
          SmallBid.write(lane.resolve("job-" + i + ".xlsx"));
        }
        each.add(lanes.submit(() -> killed(lane, new Random(9 + bids))));
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

  /** How many of the runs over a folder were killed before their end. */
  private int killed(Path lane, Random random) throws IOException, InterruptedException {
    List<Path> bids = Inputs.of(List.of(lane)).files();
    Map<Path, byte[]> before = new LinkedHashMap<>();
    for (Path bid : bids) {
      before.put(bid, Files.readAllBytes(bid));
    }
    List<String> all = new ArrayList<>();
    bids.forEach(
        bid -> all.addAll(List.of(filled(bid).getFileName() + "", bid.getFileName() + "")));
    long whole = timeOfARun(lane);
    int interrupted = 0;
    for (int i = 0; i < KILLS / LANES.size(); i++) {
      if (random.nextBoolean()) {
        for (Path bid : bids) {
          Files.deleteIfExists(filled(bid));
        }
      }
      Program run = start(lane);
      boolean ended = run.process().waitFor(moment(random, whole), TimeUnit.MILLISECONDS);
      run.process().destroyForcibly().waitFor();
      interrupted += ended ? 0 : 1;
      for (Path bid : bids) {
        if (Files.exists(filled(bid))) {
          assertThat(BidReader.read(filled(bid)).filledBefore()).isTrue();
        }
        assertThat(bid).hasBinaryContent(before.get(bid));
      }
    }
    assertThat(start(lane).end().code()).isZero();
    assertThat(Machine.names(lane)).containsExactlyInAnyOrderElementsOf(all);
    return interrupted;
  }

  private Program start(Path lane) throws IOException {
    // as many threads on any machine
    List<String> options = List.of("-XX:ActiveProcessorCount=4");
    return Program.start(logs, options, "", "fill", "--quiet", "--force", lane);
  }

  private static Path filled(Path bid) {
    return bid.resolveSibling(bid.getFileName().toString().replace(".xlsx", "-filled.xlsx"));
  }

  /** Milliseconds that a run takes when nobody kills it. */
  private long timeOfARun(Path lane) throws IOException, InterruptedException {
    long start = System.nanoTime();
    assertThat(start(lane).end().code()).isZero();
    return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
  }

  /** Somewhere in a run. Late ones are worth more: that is when files are written. */
  private static long moment(Random random, long whole) {
    return (long) (whole * Math.sqrt(random.nextDouble()));
  }
}
