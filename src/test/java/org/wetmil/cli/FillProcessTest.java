package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.SmallBid;
import org.wetmil.workbook.read.BidReader;

/** {@code fill} as a process of its own: character sets, languages, runs side by side. */
class FillProcessTest {
  private static final long PATIENCE_S = 120;

  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({"ar, EG, Asia/Tokyo", "tr, TR, Europe/Istanbul", "de, DE, America/New_York"})
  void theMachineDoesNotShowInTheResult(String language, String country, String zone)
      throws IOException, InterruptedException {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    Path there = folder.resolve("there.xlsx");
    Path here = folder.resolve("here.xlsx");
    Ran expected = Ran.fill(bid, "--out", here);

    Started run =
        start(
            List.of(
                "-Duser.language=" + language,
                "-Duser.country=" + country,
                "-Duser.timezone=" + zone),
            "UTF-8",
            "fill",
            "--date",
            "2026-01-05",
            bid.toString(),
            "--out",
            there.toString());

    assertThat(run.code()).isZero();
    assertThat(there).hasSameBinaryContentAs(here);
    assertThat(run.out())
        .isEqualTo(
            expected.out().stream()
                .map(line -> line.replace(here.toString(), there.toString()))
                .toList());
  }

  @Test
  void namesWithSpacesQuotesAndSignsAreFilled() {
    for (String name : List.of("a b.xlsx", "don't #1 & 100 %.xlsx", "größe ² 😀.xlsx")) {
      Ran ran = Ran.fill(SmallBid.write(named(name)), "--quiet");

      assertThat(ran.code()).isZero();
      Path filled = named(name.replace(".xlsx", "-filled.xlsx"));
      assertThat(BidReader.read(filled).filledBefore()).isTrue();
    }
  }

  @Test
  void inASessionOfPlainAsciiOtherNamesAreExplainedAndTheRestIsDone()
      throws IOException, InterruptedException {
    SmallBid.write(folder.resolve("a b.xlsx"));
    SmallBid.write(named("größe 😀.xlsx"));

    Started run = start(List.of(), "C", "fill", folder.toString());

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).singleElement().asString().contains("LC_ALL=C.UTF-8");
    assertThat(folder.resolve("a b-filled.xlsx")).isRegularFile();
    assertThat(run.out()).isNotEmpty().noneMatch(line -> line.contains("\uFFFD"));
  }

  @Test
  void aNameThatTheSessionCannotSayIsExplained() throws IOException, InterruptedException {
    assumeTrue(File.separatorChar == '/', "a matter of POSIX systems");
    SmallBid.write(named("größe.xlsx"));

    Started run = start(List.of(), "C", "sh", "fill", folder + "/gr*.xlsx");

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err().get(0)).contains("LC_ALL=C.UTF-8").doesNotContain("Exception");
  }

  @Test
  void twoRunsOnOneFolderLeaveWholeResults() throws IOException, InterruptedException {
    for (int i = 0; i < 6; i++) {
      SmallBid.write(folder.resolve("job" + i + ".xlsx"));
    }
    String[] command = {"fill", "--quiet", "--force", "--date", "2026-01-05", folder.toString()};
    Process first = process(List.of(), "UTF-8", command);
    Process second = process(List.of(), "UTF-8", command);

    for (Process each : List.of(first, second)) {
      assertThat(each.waitFor(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
      assertThat(each.exitValue()).isZero();
    }
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(12).noneMatch(file -> file.toString().endsWith(".tmp"));
    }
    Path out = folder.resolve("alone.xlsx");
    Ran.fill(folder.resolve("job3.xlsx"), "--out", out);
    assertThat(folder.resolve("job3-filled.xlsx")).hasSameBinaryContentAs(out);
  }

  @Test
  void aRunThatIsKilledLeavesNoHalfResult() throws IOException, InterruptedException {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    byte[] before = Files.readAllBytes(bid);
    Path filled = folder.resolve("job-filled.xlsx");
    for (int i = 0; i < 5; i++) {
      Process run = process(List.of(), "UTF-8", "fill", "--quiet", "--force", bid.toString());
      run.waitFor(300 + 400L * i, TimeUnit.MILLISECONDS);
      run.destroyForcibly().waitFor();
      if (Files.exists(filled)) {
        assertThat(BidReader.read(filled).filledBefore()).isTrue();
      }
    }
    assertThat(bid).hasBinaryContent(before);
  }

  private record Started(int code, List<String> out, List<String> err) {}

  private Started start(List<String> options, String charset, String... args)
      throws IOException, InterruptedException {
    Process process = process(options, charset, args);
    assertThat(process.waitFor(PATIENCE_S, TimeUnit.SECONDS)).isTrue();
    return new Started(process.exitValue(), lines("out.log"), lines("err.log"));
  }

  private List<String> lines(String name) throws IOException {
    return Files.readAllLines(logs().resolve(name), StandardCharsets.UTF_8);
  }

  /** Outside of the folder that is filled. */
  private Path logs() throws IOException {
    return Files.createDirectories(folder.resolveSibling(folder.getFileName() + "-logs"));
  }

  private Process process(List<String> options, String charset, String... args) throws IOException {
    List<String> command = new ArrayList<>();
    List<String> words = new ArrayList<>(List.of(args));
    boolean shell = words.remove("sh");
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), "org.wetmil.Main"));
    command.addAll(words);
    ProcessBuilder builder =
        shell
            ? new ProcessBuilder("sh", "-c", String.join(" ", command))
            : new ProcessBuilder(command);
    if (charset.equals("C")) {
      builder.environment().put("LC_ALL", "C");
    }
    return builder
        .redirectOutput(logs().resolve("out.log").toFile())
        .redirectError(logs().resolve("err.log").toFile())
        .start();
  }

  private Path named(String name) {
    try {
      return folder.resolve(name);
    } catch (InvalidPathException e) {
      assumeTrue(false, "this session cannot say " + name);
      throw e;
    }
  }
}
