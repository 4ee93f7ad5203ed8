package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.SmallBid;
import org.wetmil.samples.CellDump;
import org.wetmil.workbook.Locked;
import org.wetmil.workbook.opc.WorkbookKind;
import org.wetmil.workbook.read.Book;

/** Workbooks that a password protects. */
class PasswordFileTest {
  private static final String PASSWORD = "Pförtner 7, links";

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(
      value = EncryptionMode.class,
      names = {"agile", "standard"})
  void protectedBidIsFilledAndItsCopyIsProtectedAlike(EncryptionMode mode) throws IOException {
    Path bid = Locked.with(PASSWORD, mode, SmallBid.write(folder.resolve("bid.xlsx")));

    Ran ran = Ran.fill(bid, "--password-file", passwords(PASSWORD));

    assertThat(ran.code()).isEqualTo(ExitCode.DONE);
    Path filled = folder.resolve("bid-filled.xlsx");
    assertThat(WorkbookKind.of(filled)).isEqualTo(WorkbookKind.ENCRYPTED);
    // ranges are drawn by the job's name, which is that of the file
    Path plain = Files.createDirectory(folder.resolve("plain"));
    Ran.fill(SmallBid.write(plain.resolve("bid.xlsx")));
    assertThat(
            CellDump.differences(
                CellDump.of(plain.resolve("bid-filled.xlsx")),
                CellDump.of(Locked.opened(filled, PASSWORD, folder.resolve("opened.xlsx")))))
        .as("the file's fingerprint on the list of fills")
        .allMatch(difference -> difference.matches("Basis!D\\d+: \\w{64} .*"))
        .hasSize(1);
  }

  @Test
  void filledOneIsFilledAgainAndKeepsItsMark() {
    Path bid = Locked.with(PASSWORD, SmallBid.write(folder.resolve("bid.xlsx")));
    Path words = passwords(PASSWORD);
    Ran.fill(bid, "--password-file", words);

    Ran ran = Ran.fill(folder.resolve("bid-filled.xlsx"), "--password-file", words);

    assertThat(ran.code()).isEqualTo(ExitCode.DONE);
    assertThat(WorkbookKind.of(folder.resolve("bid-filled-2.xlsx")))
        .isEqualTo(WorkbookKind.ENCRYPTED);
  }

  @Test
  void macrosStayUnderAnEndingThatPromisesThem() {
    Path bid = Locked.with(PASSWORD, SmallBid.write(folder.resolve("bid.xlsm")));

    Ran ran = Ran.fill(bid, "--password-file", passwords(PASSWORD));

    assertThat(ran.code()).isEqualTo(ExitCode.DONE);
    Path filled = folder.resolve("bid-filled.xlsm");
    Path opened = Locked.opened(filled, PASSWORD, folder.resolve("opened.xlsm"));
    assertThat(WorkbookKind.of(opened)).isEqualTo(WorkbookKind.XLSM);
  }

  @Test
  void withoutAPasswordASentenceSaysWhatToDo() throws IOException {
    Path bid = Locked.with(PASSWORD, SmallBid.write(folder.resolve("bid.xlsx")));

    Ran ran = Ran.fill(bid);

    assertThat(ran.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(said(ran))
        .contains(
            bid
                + ": the workbook is protected with a password; write it into a file, and name"
                + " that with --password-file.");
    assertThat(files()).containsExactly("bid.xlsx");
  }

  @Test
  void wrongPasswordIsSaidWithoutShowingIt() throws IOException {
    Path bid = Locked.with(PASSWORD, SmallBid.write(folder.resolve("bid.xlsx")));

    Ran ran = Ran.fill(bid, "--password-file", passwords("pförtner 7, links"));

    assertThat(ran.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(said(ran))
        .contains(bid + ": no line of the password file opens this workbook")
        .doesNotContain("links");
    assertThat(files()).containsExactly("bid.xlsx", "words.txt");
  }

  @Test
  void eachLineIsAPasswordSoThatAFolderMayHaveSeveral() {
    Locked.with(PASSWORD, SmallBid.write(folder.resolve("a.xlsx")));
    Locked.with("other", SmallBid.write(folder.resolve("b.xlsx")));
    SmallBid.write(folder.resolve("c.xlsx"));

    Ran ran = Ran.fill(folder, "--password-file", passwords("\uFEFFother\r", "", PASSWORD + "\r"));

    assertThat(ran.code()).isEqualTo(ExitCode.DONE);
    for (String name : List.of("a-filled.xlsx", "b-filled.xlsx")) {
      assertThat(WorkbookKind.of(folder.resolve(name))).isEqualTo(WorkbookKind.ENCRYPTED);
    }
    assertThat(WorkbookKind.of(folder.resolve("c-filled.xlsx"))).isEqualTo(WorkbookKind.XLSX);
    assertThat(said(Ran.fill(folder, "--password-file", folder.resolve("words.txt"))))
        .as("a filled one is known by its mark under its protection")
        .contains("a-filled.xlsx", "it was filled from a workbook beside it");
  }

  @Test
  void workbookThatAnybodyMayReadNeedsNoFile() {
    Path bid = Locked.with(Decryptor.DEFAULT_PASSWORD, SmallBid.write(folder.resolve("bid.xlsx")));

    assertThat(Ran.fill(bid).code()).isEqualTo(ExitCode.DONE);
    assertThat(WorkbookKind.of(folder.resolve("bid-filled.xlsx")))
        .isEqualTo(WorkbookKind.ENCRYPTED);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\n  \n"})
  void emptyFileOfPasswordsIsSaid(String content) throws IOException {
    Path bid = SmallBid.write(folder.resolve("bid.xlsx"));
    Path words = Files.writeString(folder.resolve("words.txt"), content);

    Ran ran = Ran.fill(bid, "--password-file", words);

    assertThat(ran.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(said(ran)).contains(words + ": no password is in this file");
  }

  @Test
  void missingFileOfPasswordsIsSaid() {
    Path bid = SmallBid.write(folder.resolve("bid.xlsx"));

    Ran ran = Ran.fill(bid, "--password-file", folder.resolve("none.txt"));

    assertThat(ran.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(said(ran)).contains("none.txt: there is no such file");
  }

  @Test
  void protectedListOfRoomsBecomesABid() {
    Path list =
        Locked.with(
            PASSWORD,
            new Book()
                .sheet("Rooms")
                .row("Room", "Area (m²)", "Height (m)")
                .row("Foyer", 20, 2.7)
                .write(folder, "rooms.xlsx"));
    StringWriter printed = new StringWriter();
    PrintWriter writer = new PrintWriter(printed, true);

    int code =
        WetmilCommand.commandLine()
            .setOut(writer)
            .setErr(writer)
            .execute("start", list.toString(), "--password-file", passwords(PASSWORD).toString());

    assertThat(code).as(printed.toString()).isEqualTo(ExitCode.DONE);
    assertThat(printed.toString()).contains("1 room, ");
  }

  private Path passwords(String... lines) {
    try {
      return Files.writeString(folder.resolve("words.txt"), String.join("\n", lines) + "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String said(Ran ran) {
    return String.join("\n", Stream.concat(ran.out().stream(), ran.err().stream()).toList());
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
