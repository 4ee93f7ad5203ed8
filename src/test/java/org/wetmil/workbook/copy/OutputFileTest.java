package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.abort;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.WorkbookException;

class OutputFileTest {
  @TempDir Path folder;
  private Path input;
  private Path output;

  @BeforeEach
  void writeInput() {
    input = new HandMade(HandMade.sheet("<row r=\"1\"/>")).write(folder.resolve("bid.xlsx"));
    output = folder.resolve("out.xlsx");
  }

  @Test
  void aFileThatIsThereIsReplacedOnlyOnRequest() throws IOException {
    Files.writeString(output, "mine");

    assertRefused(output, false, "there already");
    assertThat(output).hasContent("mine");

    copy(output, true);
    assertThat(Files.size(output)).isGreaterThan(100);
  }

  @Test
  void theInputIsNeverTheOutputHoweverItIsSpelled() throws IOException {
    byte[] before = Files.readAllBytes(input);
    Files.createDirectory(folder.resolve("sub"));

    assertRefused(input, true, "input itself");
    assertRefused(folder.resolve("sub/../bid.xlsx"), true, "input itself");
    assertThat(input).hasBinaryContent(before);
  }

  @Test
  void aLinkToTheInputIsTheInput() {
    Path link = link(input);

    assertRefused(link, true, "input itself");
  }

  @Test
  void aLinkStaysALinkAndItsFileIsReplaced() throws IOException {
    Files.writeString(output, "old");
    Path link = link(output);

    assertRefused(link, false, "there already");
    copy(link, true);

    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.isSymbolicLink(output)).isFalse();
    assertThat(Files.size(output)).isGreaterThan(100);
  }

  @Test
  void aLinkToNowhereIsRefused() {
    Path link = link(folder.resolve("none.xlsx"));

    assertRefused(link, true, "cannot be written");
    assertRefused(link, false, "there already");
  }

  @Test
  void aMissingFolderIsMade() {
    copy(folder.resolve("none/yet/out.xlsx"), false);

    assertThat(folder.resolve("none/yet/out.xlsx")).isRegularFile();
  }

  @Test
  void aFolderThatCannotBeMadeIsSaid() {
    assertRefused(input.resolve("out.xlsx"), false, "a file, not a folder");
    assertRefused(input.resolve("deeper/out.xlsx"), false, "cannot be made");
  }

  @Test
  void aFolderThatCannotBeWrittenIsSaid() throws IOException {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    assumeTrue(closed.toFile().setWritable(false), "this system locks no folders");
    assumeFalse(Files.isWritable(closed), "root may write to any folder");

    assertRefused(closed.resolve("out.xlsx"), false, "cannot be written");
  }

  @Test
  void aNameThatIsTooLongIsSaidBeforeAnythingIsDone() {
    assertRefused(folder.resolve("é".repeat(126) + ".xlsx"), false, "257 bytes");
  }

  @Test
  void theResultHasThePermissionsOfAnyNewFile() throws IOException {
    Path plain = folder.resolve("plain");
    assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"), "no permissions");
    Files.writeString(plain, "x");

    copy(output, false);

    assertThat(Files.getPosixFilePermissions(output))
        .isEqualTo(Files.getPosixFilePermissions(plain));
  }

  @Test
  void whatAKilledRunLeftIsRemovedWhenItIsOld() throws IOException {
    Path old = Files.writeString(folder.resolve(".wetmil-1.tmp"), "x");
    Path young = Files.writeString(folder.resolve(".wetmil-2.tmp"), "x");
    Path other = Files.writeString(folder.resolve(".other-1.tmp"), "x");
    FileTime yesterday = FileTime.from(Instant.now().minus(Duration.ofDays(1)));
    Files.setLastModifiedTime(old, yesterday);
    Files.setLastModifiedTime(other, yesterday);

    copy(output, false);

    assertThat(old).doesNotExist();
    assertThat(young).exists();
    assertThat(other).exists();
  }

  @Test
  void whatAKilledRunLeftIsRemovedAtOnceWhereItHeldALock() throws IOException {
    Path lock = Files.createFile(folder.resolve(".wetmil-a.lock"));
    Path left = Files.writeString(folder.resolve(".wetmil-a-1.tmp"), "x");
    Path other = Files.writeString(folder.resolve(".wetmil-b-1.tmp"), "x");

    copy(output, false);

    assertThat(lock).doesNotExist();
    assertThat(left).doesNotExist();
    assertThat(other).exists();
  }

  @Test
  void whatAnotherOutputOfThisRunIsMadeOfStays() {
    try (OutputFile first = OutputFile.claim(List.of(), folder.resolve("run.json"), false)) {
      Path temporary = first.temporary();
      try (OutputStream out = first.open(temporary)) {
        out.write(1);
      }
      copy(output, false);
      copy(folder.resolve("second.xlsx"), false);

      first.publish(temporary);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    assertThat(folder.resolve("run.json")).hasBinaryContent(new byte[] {1});
  }

  @Test
  void aFileThatCameMeanwhileIsNotWrittenOverWithoutForce() throws IOException {
    try (OutputFile files = OutputFile.claim(List.of(), output, false)) {
      Path temporary = files.temporary();
      files.open(temporary).close();
      Files.writeString(output, "another run's");

      assertThatThrownBy(() -> files.publish(temporary))
          .isInstanceOf(WorkbookException.Unwritable.class)
          .hasMessageContaining("there already");
    }
    assertThat(output).hasContent("another run's");
    assertThat(folder).isDirectoryNotContaining("glob:**.{tmp,lock}");
  }

  @Test
  void onlyTheResultStaysInTheFolder() {
    copy(output, false);

    assertThat(folder).isDirectoryNotContaining("glob:**.{tmp,lock}");
    assertThat(output).exists();
  }

  private Path link(Path to) {
    try {
      return Files.createSymbolicLink(folder.resolve("link.xlsx"), to);
    } catch (IOException | UnsupportedOperationException e) {
      return abort("this system lets nobody make links: " + e);
    }
  }

  private void copy(Path to, boolean overwrite) {
    Copies.write(input, to, overwrite, workbook -> List.of());
  }

  private void assertRefused(Path to, boolean overwrite, String why) {
    assertThatThrownBy(() -> copy(to, overwrite))
        .isInstanceOf(WorkbookException.Unwritable.class)
        .hasMessageContaining(why);
    assertThat(folder).isDirectoryNotContaining("glob:**.{tmp,lock}");
  }
}
