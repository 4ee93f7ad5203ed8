package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.SmallBid;

/** What gets in the way of a result: another run, a full disk, a locked folder, odd names. */
class InterruptedRunTest {
  private static final int BIDS = 8;

  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void ofTwoRunsWithoutForceEachResultIsWrittenByOne() throws IOException, InterruptedException {
    for (int i = 0; i < BIDS; i++) {
      SmallBid.write(folder.resolve("job" + i + ".xlsx"));
    }
    Program first = Program.start(logs, "fill", "--quiet", folder);
    Program second = Program.start(logs, "fill", "--quiet", folder);
    List<Program.Ended> both = List.of(first.end(), second.end());

    List<String> written = new ArrayList<>();
    both.forEach(
        run -> run.out().stream().filter(line -> line.contains("rows read")).forEach(written::add));
    assertThat(written).hasSize(BIDS).doesNotHaveDuplicates();
    for (Program.Ended run : both) {
      assertThat(run.code()).isIn(0, 3);
      assertThat(run.err()).allMatch(line -> line.contains("--force"));
    }
    assertThat(Machine.names(folder)).hasSize(2 * BIDS);
  }

  /** The disks are full at every step: the copy without rows, the shaped one, the result. */
  @ParameterizedTest
  @ValueSource(ints = {4, 16, 32, 48})
  void aFullDiskIsSaidAndNothingIsLeftOnIt(int kilobytes) throws IOException, InterruptedException {
    Path small = Files.createDirectory(folder.resolve("small"));
    Machine.needsDisk(small, "size=" + kilobytes + "k");
    try {
      Path bid = SmallBid.write(folder.resolve("job.xlsx"));
      byte[] before = Files.readAllBytes(bid);

      Ran ran = Ran.fill(bid, "--quiet", "--out", small.resolve("out.xlsx"));

      assertThat(ran.code()).isEqualTo(3);
      assertThat(ran.err()).singleElement().asString().contains("out.xlsx", "is the disk full?");
      assertThat(small).isEmptyDirectory();
      assertThat(bid).hasBinaryContent(before);
    } finally {
      Machine.takeDiskAway(small);
    }
  }

  /** Sheets of these commands are made from nothing and saved by the library. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "compare clinic-refit.xlsx clinic-refit-second.xlsx",
        "audit past-bids --actuals past-bids-actuals.csv",
        "reconcile clinic-refit-filled.xlsx --purchases spring-month-purchases.csv"
      })
  void aFullDiskIsSaidByTheOtherCommandsToo(String command)
      throws IOException, InterruptedException {
    Path small = Files.createDirectory(folder.resolve("small"));
    Machine.needsDisk(small, "size=4k");
    try {
      List<Object> words = new ArrayList<>();
      for (String word : command.split(" ", -1)) {
        Path sample = Path.of("sample-workbooks", word);
        words.add(Files.exists(sample) ? sample : word);
      }
      words.addAll(List.of("--out", small.resolve("out.xlsx")));

      Ran ran = Ran.of(words.toArray());

      assertThat(ran.err()).singleElement().asString().contains("out.xlsx", "is the disk full?");
      assertThat(ran.code()).isEqualTo(3);
      assertThat(small).isEmptyDirectory();
    } finally {
      Machine.takeDiskAway(small);
    }
  }

  @Test
  void aFolderThatRefusesFilesIsSaidThoughRootMayWriteAnywhere()
      throws IOException, InterruptedException {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    Machine.needsDisk(closed, "ro");
    try {
      Ran ran =
          Ran.fill(SmallBid.write(folder.resolve("job.xlsx")), "--out", closed.resolve("out.xlsx"));

      assertThat(ran.code()).isEqualTo(3);
      assertThat(ran.err()).singleElement().asString().contains("cannot be written", "--out");
    } finally {
      Machine.takeDiskAway(closed);
    }
  }

  @Test
  void theLongestNameThatADiskTakesIsFilled() {
    String name = "n".repeat(255 - "-filled.xlsx".length());

    Ran ran = Ran.fill(SmallBid.write(folder.resolve(name + ".xlsx")), "--quiet");

    assertThat(ran.code()).isZero();
    assertThat(folder.resolve(name + "-filled.xlsx")).isRegularFile();
  }

  @Test
  void aNameThatGrowsTooLongIsSaid() throws IOException {
    String name = "é".repeat(125) + ".xlsx";
    Path bid = SmallBid.write(Machine.named(folder, name));

    Ran ran = Ran.fill(bid, "--quiet");

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).singleElement().asString().contains("262 bytes", "--out");
    assertThat(Machine.names(folder)).containsExactly(name);
  }
}
