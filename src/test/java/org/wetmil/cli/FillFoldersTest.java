package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;

/** What {@code fill} takes of a folder, and how it treats what it filled before. */
class FillFoldersTest {
  @TempDir Path folder;

  @Test
  void theSpreadsheetsDirectlyInAFolderAreFilledByName() throws IOException {
    bid("b.xlsx");
    bid("a.XLSX");
    bid("c.xltm");
    bid("~$b.xlsx");
    bid(".hidden.xlsx");
    Files.createDirectory(folder.resolve("deeper"));
    bid("deeper/d.xlsx");
    Files.createDirectory(folder.resolve("folder.xlsx"));
    Files.writeString(folder.resolve("read me.txt"), "x");

    Ran ran = Ran.fill(folder, "--quiet");

    assertThat(ran.code()).isZero();
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out())
        .extracting(line -> line.substring(folder.toString().length() + 1, line.indexOf(": ")))
        .containsExactly("a-filled.xlsx", "b-filled.xlsx", "c-filled.xlsm");
  }

  @Test
  void whatWasFilledIsPassedOverBesideItsSource() throws IOException {
    Path bid = bid("job.xlsx");
    Ran.fill(bid);

    Ran again = Ran.fill(folder, "--force");
    assertThat(again.code()).isZero();
    assertThat(again.err()).singleElement().asString().contains("job-filled.xlsx: passed over");
    assertThat(names()).containsExactly("job-filled.xlsx", "job.xlsx");

    Files.delete(bid);
    assertThat(Ran.fill(folder).code()).isZero();
    assertThat(names()).containsExactly("job-filled-2.xlsx", "job-filled.xlsx");
  }

  @Test
  void whatWasFilledAndTookTheNameOfItsSourceIsNotPassedOver() throws IOException {
    Path bid = bid("job.xlsx");
    Ran.fill(bid);
    Files.move(folder.resolve("job-filled.xlsx"), bid, StandardCopyOption.REPLACE_EXISTING);

    Ran again = Ran.fill(folder);

    assertThat(again.err()).isEmpty();
    assertThat(names()).containsExactly("job-2.xlsx", "job.xlsx");
  }

  @Test
  void whatWasFilledIsFilledAgainWhenNamed() {
    Ran.fill(bid("job.xlsx"));
    Path filled = folder.resolve("job-filled.xlsx");

    assertThat(Ran.fill(filled).code()).isZero();
    assertThat(names()).containsExactly("job-filled-2.xlsx", "job-filled.xlsx", "job.xlsx");

    Path out = folder.resolve("third.xlsx");
    assertThat(Ran.fill(folder.resolve("job-filled-2.xlsx"), "--out", out).code()).isZero();
    assertThat(out).isRegularFile();
  }

  @Test
  void otherSpreadsheetsOfAFolderAreNamed() throws IOException {
    bid("job.xlsx");
    Files.writeString(folder.resolve("old.xls"), "x");

    Ran ran = Ran.fill(folder);
    assertThat(ran.code()).isZero();
    assertThat(ran.err()).singleElement().asString().contains("old.xls", "save it as .xlsx");
    assertThat(Ran.fill(folder, "--force", "--quiet").err()).isEmpty();
  }

  @Test
  void aFileNamedTwiceIsFilledOnce() {
    Path bid = bid("job.xlsx");

    Ran ran = Ran.fill(bid, folder.resolve(".").resolve("job.xlsx"), folder, "--quiet");

    assertThat(ran.code()).isZero();
    assertThat(ran.out()).hasSize(1);
    assertThat(names()).containsExactly("job-filled.xlsx", "job.xlsx");
  }

  @Test
  void anEmptyFolderIsAnInputThatCannotBeUsed() throws IOException {
    Path empty = Files.createDirectory(folder.resolve("empty"));

    Ran ran = Ran.fill(empty, bid("job.xlsx"), "--quiet");

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).singleElement().asString().contains("no workbook").startsWith("" + empty);
    assertThat(ran.out()).as("the rest is done").hasSize(1);
  }

  private Path bid(String name) {
    return SmallBid.write(folder.resolve(name));
  }

  private List<String> names() {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }
}
