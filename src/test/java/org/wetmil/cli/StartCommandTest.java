package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.hostile.Parts;
import org.wetmil.samples.CellDump;
import org.wetmil.workbook.read.Book;

class StartCommandTest {
  @TempDir Path folder;

  private final StringWriter printed = new StringWriter();

  @Test
  void bidAppearsBesideTheListAndWhatIsMissingIsCounted() {
    Path list =
        new Book()
            .sheet("Rooms")
            .row("Room", "Area (m²)", "Height (m)")
            .row("Foyer", 20, 2.7)
            .write(folder, "rooms.xlsx");

    int code = execute("start", list.toString());

    assertThat(code).isEqualTo(ExitCode.DONE);
    assertThat(folder.resolve("rooms-bid.xlsx")).exists();
    assertThat(printed.toString())
        .contains("a table of rooms, sheet Rooms: 1 room, 3 lines")
        .contains("Length on 1")
        .contains("Coating on 2")
        .contains("1 line left out by Include until you decide");
  }

  @Test
  void whatStartAnnouncesIsWhatAFillOfItsBidCounts() throws IOException {
    Path list =
        new Book()
            .sheet("Rooms")
            .row("Room", "Area (m²)", "Height (m)", "Wall finish", "Ceiling finish")
            .row("Foyer", 20, 2.7, "Tiles", "Latex")
            .row("Store", 9, 2.7, "", "")
            .write(folder, "rooms.xlsx");

    execute("start", list.toString());
    assertThat(printed.toString())
        .contains("2 rooms, 6 lines")
        .contains("to fill in (see Notes): Length on 1, Coating on 2;")
        .contains("3 lines left out by Include until you decide");

    execute("fill", folder.resolve("rooms-bid.xlsx").toString());
    assertThat(printed.toString())
        .contains("6 rows read, 1 filled, 2 not filled, 3 left out by Include; 3 stops,");
    assertThat(CellDump.of(folder.resolve("rooms-bid-filled.xlsx")).toString())
        .contains("Left out; to have it painted, fill in Length, Coating and empty Include");
  }

  @Test
  void aRoomWithANameLongerThanACellTakesIsCut() throws IOException {
    Path list = new Book().sheet("Rooms").row("Room", "Area").row("Foyer", 20).write(folder);
    Parts parts = Parts.of(list);
    for (Parts.Part part : parts.all()) {
      parts.replace(part, part.text().replace("Foyer", "f".repeat(40_000)));
    }
    Path output = folder.resolve("out.xlsx");

    Path broken = Files.write(folder.resolve("long.xlsx"), parts.zip());
    assertThat(execute("start", broken.toString(), "--out", output.toString())).isZero();
    assertThat(CellDump.of(output).toString()).contains("fff...");
  }

  @Test
  void rootOfADiskIsNoListOfRooms() {
    Ran ran = Ran.of("start", folder.getRoot());

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).singleElement().asString().contains("this is a folder");
  }

  @Test
  void workbookWithoutRoomsEndsWithItsOwnCode() throws IOException {
    Path list = new Book().sheet("Prices").row("Item", "Price").write(folder);

    assertThat(execute("start", list.toString())).isEqualTo(ExitCode.UNUSABLE);
    assertThat(printed.toString()).contains("no list of rooms");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).containsExactly(list);
    }
  }

  private int execute(String... args) {
    PrintWriter writer = new PrintWriter(printed, true);
    return WetmilCommand.commandLine().setOut(writer).setErr(writer).execute(args);
  }
}
