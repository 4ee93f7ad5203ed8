package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.SmallBid;
import org.wetmil.workbook.read.BidReader;

/** {@code fill} as a process of its own: character sets, languages, runs side by side. */
class FillProcessTest {
  @TempDir Path folder;
  @TempDir Path logs;

  @ParameterizedTest
  @CsvSource({"ar, EG, Asia/Tokyo", "tr, TR, America/New_York"})
  void theMachineDoesNotShowInTheResult(String language, String country, String zone)
      throws IOException, InterruptedException {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    Path there = folder.resolve("there.xlsx");
    Path here = folder.resolve("here.xlsx");
    Ran expected = Ran.fill(bid, "--out", here);

    Program.Ended run =
        Program.start(
                logs,
                List.of(
                    "-Duser.language=" + language,
                    "-Duser.country=" + country,
                    "-Duser.timezone=" + zone),
                "",
                "fill",
                "--date",
                "2026-01-05",
                bid,
                "--out",
                there)
            .end();

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
      Ran ran = Ran.fill(SmallBid.write(Machine.named(folder, name)), "--quiet");

      assertThat(ran.code()).isZero();
      Path filled = Machine.named(folder, name.replace(".xlsx", "-filled.xlsx"));
      assertThat(BidReader.read(filled).filledBefore()).isTrue();
    }
  }

  @Test
  void inASessionOfPlainAsciiOtherNamesAreExplainedAndTheRestIsDone(@TempDir Path other)
      throws IOException, InterruptedException {
    SmallBid.write(folder.resolve("a b.xlsx"));
    SmallBid.write(Machine.named(folder, "größe 😀.xlsx"));
    Path named = SmallBid.write(Machine.named(other, "o'clock #1 & \"2\" 100 %.xlsx"));

    Program.Ended run = Program.start(logs, List.of(), "C", "fill", folder, named).end();

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).singleElement().asString().contains("LC_ALL=C.UTF-8");
    assertThat(folder.resolve("a b-filled.xlsx")).isRegularFile();
    Path filled = other.resolve("o'clock #1 & \"2\" 100 %-filled.xlsx");
    assertThat(BidReader.read(filled).filledBefore()).isTrue();
    assertThat(run.out()).isNotEmpty().noneMatch(line -> line.contains("\uFFFD"));
  }

  @Test
  void aNameThatTheSessionCannotSayIsExplained() throws IOException, InterruptedException {
    Machine.needsPosix();
    SmallBid.write(Machine.named(folder, "größe.xlsx"));

    Program.Ended run = Program.shell(logs, "C", "fill " + folder + "/gr*.xlsx").end();

    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err().get(0)).contains("LC_ALL=C.UTF-8").doesNotContain("Exception");
  }

  @Test
  void twoRunsOnOneFolderLeaveWholeResults() throws IOException, InterruptedException {
    for (int i = 0; i < 4; i++) {
      SmallBid.write(folder.resolve("job" + i + ".xlsx"));
    }
    Object[] command = {"fill", "--quiet", "--force", "--date", "2026-01-05", folder};
    Program first = Program.start(logs, command);
    Program second = Program.start(logs, command);

    assertThat(first.end().code()).isZero();
    assertThat(second.end().code()).isZero();
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(8).allMatch(file -> file.toString().endsWith(".xlsx"));
    }
    Path out = folder.resolve("alone.xlsx");
    Ran.fill(folder.resolve("job3.xlsx"), "--out", out);
    assertThat(folder.resolve("job3-filled.xlsx")).hasSameBinaryContentAs(out);
  }
}
