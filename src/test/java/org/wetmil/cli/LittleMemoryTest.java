package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.bench.BigBid;
import org.wetmil.jobs.FillRun;

class LittleMemoryTest {
  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void aBidThatNeedsMoreIsSaidAndTheNextIsFilled() throws IOException, InterruptedException {
    Path large = BigBid.write(folder.resolve("a-large.xlsx"), 10_000);
    Path small = SmallBid.write(folder.resolve("b-small.xlsx"));

    Program.Ended run =
        Program.start(logs, List.of("-Xmx24m"), "", "fill", "--quiet", large, small).end();

    assertThat(run.err())
        .singleElement()
        .asString()
        .contains("a-large.xlsx", "more memory than Java was given", "-Xmx");
    assertThat(run.code()).isEqualTo(3);
    assertThat(Machine.names(folder))
        .containsExactlyInAnyOrder("a-large.xlsx", "b-small.xlsx", "b-small-filled.xlsx");
  }

  @Test
  void aBidOfAFolderThatCannotEvenBeLookedAtIsSaidAndTheNextIsFilled()
      throws IOException, InterruptedException {
    SmallBid.write(folder.resolve("a-large.xlsx"), LittleMemoryTest::longComment);
    SmallBid.write(folder.resolve("b-small.xlsx"));

    Program.Ended run =
        Program.start(logs, List.of("-Xmx24m"), "", "fill", "--quiet", folder).end();

    assertThat(run.err())
        .singleElement()
        .asString()
        .contains("a-large.xlsx", "more memory than Java was given", "-Xmx");
    assertThat(run.code()).isEqualTo(3);
    assertThat(folder.resolve("b-small-filled.xlsx")).isRegularFile();
  }

  @Test
  void aWatchGoesOnAfterABidThatCannotEvenBeLookedAt() throws IOException, InterruptedException {
    Program watch = Program.start(logs, List.of("-Xmx24m"), "", "watch", "--quiet", folder);
    try {
      watch.await("out", "watched");
      SmallBid.write(folder.resolve("a-large.xlsx"), LittleMemoryTest::longComment);
      watch.await("err", "a-large.xlsx: " + FillRun.OUT_OF_MEMORY);
      SmallBid.write(folder.resolve("b-small.xlsx"));
      watch.await("out", "b-small-filled.xlsx");
    } finally {
      watch.process().destroy();
    }

    assertThat(watch.end().err()).hasSize(1);
  }

  /** In the part that is read first, more than the memory takes. */
  private static void longComment(XSSFWorkbook workbook) {
    XSSFName name = workbook.createName();
    name.setNameName("Sizes");
    name.setRefersToFormula("Bid!$A$1");
    name.setComment("x".repeat(12 << 20));
  }
}
