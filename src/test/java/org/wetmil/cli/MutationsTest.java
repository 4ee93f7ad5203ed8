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
import org.wetmil.hostile.BrokenRun;
import org.wetmil.hostile.Sources;

/**
 * Files broken in every way: each ends in a filled workbook or in a sentence and code 3, and leaves
 * nothing behind, in a process of the memory stated. With every build 500 are made from small bids.
 * {@code -Dmutations} makes so many from all samples too, from the seed {@code -Dmutations.from},
 * and takes the corpus as well. What was found is tried by name in {@link BrokenFilesTest}.
 */
class MutationsTest {
  /** What the README says is enough for small files. */
  private static final String MEMORY = "-Xmx256m";

  private static final long PATIENCE_S = 100_000;

  private static final int OF_A_BUILD = 500;
  private static final int MUTATIONS = Integer.getInteger("mutations", 0);
  private static final int FROM = Integer.getInteger("mutations.from", 1);

  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void everyBrokenFileIsFilledOrRefusedInASentence(TestReporter reporter) throws Exception {
    boolean ofABuild = MUTATIONS == 0;
    Sources sources = ofABuild ? Sources.SMALL : Sources.ALL;
    int count = ofABuild ? OF_A_BUILD : MUTATIONS;
    keptPromises(reporter, apart(sources.name(), String.valueOf(FROM), String.valueOf(count)));
  }

  @Test
  void everyFileOfTheCorpusIsFilledOrRefusedInASentence(TestReporter reporter)
      throws IOException, InterruptedException {
    assumeTrue(MUTATIONS > 0, "for long runs alone");
    String corpus = System.getenv("WETMIL_CORPUS");
    assumeTrue(corpus != null, "WETMIL_CORPUS names no folder of workbooks");
    keptPromises(reporter, apart(corpus));
  }

  private List<String> apart(String... args) throws IOException, InterruptedException {
    Program.Ended run =
        Program.main(BrokenRun.class.getName(), logs, List.of(MEMORY), folder, args)
            .end(PATIENCE_S);
    assertThat(run.code()).as(() -> String.join("\n", run.err())).isZero();
    return run.out();
  }

  private void keptPromises(TestReporter reporter, List<String> said) {
    List<String> problems = said.stream().filter(line -> line.startsWith("PROBLEM")).toList();
    List<String> counts = said.stream().filter(line -> line.contains("\t")).toList();
    reporter.publishEntry("counts", counts.stream().collect(Collectors.joining("\n", "\n", "")));
    assertThat(problems).isEmpty();
    assertThat(counts).anyMatch(line -> line.contains("written"));
    assertThat(folder.resolve("now")).isEmptyDirectory();
  }
}
