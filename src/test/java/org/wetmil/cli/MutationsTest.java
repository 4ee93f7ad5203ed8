package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * Files broken in every way: each ends in a filled workbook or in a sentence and code 3, within the
 * memory stated, and leaves nothing behind. How many are made is told by {@code -Dmutations}, from
 * which seed by {@code -Dmutations.from}. What was found is tried by name in {@link
 * BrokenFilesTest}.
 */
class MutationsTest {
  /** What the README says is enough for small files. */
  private static final String MEMORY = "-Xmx256m";

  private static final long PATIENCE_S = 100_000;

  private static final int MUTATIONS = Integer.getInteger("mutations", 500);
  private static final int FROM = Integer.getInteger("mutations.from", 1);

  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void everyBrokenFileIsFilledOrRefusedInASentence(TestReporter reporter)
      throws IOException, InterruptedException {
    keptPromises(reporter, String.valueOf(FROM), String.valueOf(MUTATIONS));
  }

  @Test
  void everyFileOfTheCorpusIsFilledOrRefusedInASentence(TestReporter reporter)
      throws IOException, InterruptedException {
    String corpus = System.getenv("WETMIL_CORPUS");
    assumeTrue(corpus != null, "WETMIL_CORPUS names no folder of workbooks");
    keptPromises(reporter, corpus);
  }

  private void keptPromises(TestReporter reporter, String... args)
      throws IOException, InterruptedException {
    Program.Ended run =
        Program.main("org.wetmil.hostile.BrokenRun", logs, List.of(MEMORY), folder, args)
            .end(PATIENCE_S);

    List<String> problems = run.out().stream().filter(line -> line.startsWith("PROBLEM")).toList();
    List<String> counts = run.out().stream().filter(line -> line.contains("\t")).toList();
    reporter.publishEntry("counts", counts.stream().collect(Collectors.joining("\n", "\n", "")));
    assertThat(problems).isEmpty();
    assertThat(run.code()).as(() -> String.join("\n", run.err())).isZero();
    assertThat(counts).anyMatch(line -> line.contains("written"));
    assertThat(folder.resolve("now")).isEmptyDirectory();
  }
}
