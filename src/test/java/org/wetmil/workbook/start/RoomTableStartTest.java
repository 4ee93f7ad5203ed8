package org.wetmil.workbook.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.estimate.InputColumn;
import org.wetmil.jobs.StartJob;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.Book;

class RoomTableStartTest {
  @TempDir Path folder;

  @Test
  void tableOfRoomsIsFoundByItsHeadings() {
    Started bid =
        Started.of(
            new Book()
                .sheet("Rooms")
                .row("Harbour House, room schedule")
                .row()
                .row("No.", "Room name", "Level", "Floor area (m²)", "Perimeter (m)", "Height (mm)")
                .row("101", "Foyer", "Ground", 20, 18.4, 2700)
                .row("102", "Store", "Ground", "9,5", "n/a", 0)
                .row("Total", null, null, 29.5)
                .write(folder, "rooms.xlsx"));

    assertThat(bid.made().rooms()).isEqualTo(2);
    assertThat(bid.cell("101 Foyer", "walls", InputColumn.LENGTH)).isEqualTo("18.4");
    assertThat(bid.cell("101 Foyer", "walls", InputColumn.HEIGHT)).isEqualTo("2.7");
    assertThat(bid.cell("101 Foyer", "walls", InputColumn.FLOOR)).isEqualTo("Ground");
    assertThat(bid.cell("101 Foyer", "ceiling", InputColumn.AREA)).isEqualTo("20");
    assertThat(bid.cell("102 Store", "ceiling", InputColumn.AREA)).isEqualTo("9.5");
    assertThat(bid.cell("102 Store", "walls", InputColumn.NOTES))
        .isEqualTo("To fill in: Length, Height, Coating.");
  }

  @Test
  void lengthAndWidthAreKeptAsTheyAre() {
    Started bid =
        Started.of(
            new Book()
                .sheet("Rooms")
                .row("Room", "Length", "Width", "Ceiling height", "Wall finish")
                .row(null, "ft", "ft", "ft")
                .row("Foyer", "12' 6\"", 10, 9, "latex")
                .write(folder, "rooms.xlsx"));

    assertThat(bid.line("Foyer", "walls").line().number(InputColumn.LENGTH)).isEqualTo(12.5);
    assertThat(bid.cell("Foyer", "walls", InputColumn.WIDTH)).isEqualTo("10");
    assertThat(bid.stops("Foyer", "walls")).isEmpty();
    assertThat(bid.made().missing()).doesNotContainKeys("Length", "Height", "Area");
  }

  @Test
  void tableWithoutUnitsIsTakenInFeetAndSaysSo() {
    Started bid =
        Started.of(
            new Book()
                .sheet("Rooms")
                .row("Room", "Length", "Width", "Height")
                .row("Foyer", 12, 10, 9)
                .write(folder, "rooms.xlsx"));

    assertThat(bid.made().remarks()).anyMatch(remark -> remark.contains("feet and ft² are taken"));
    assertThat(bid.line("Foyer", "walls").line().number(InputColumn.LENGTH)).isEqualTo(12);
  }

  @Test
  void wallAreaOfTheListIsTheAreaOfTheWalls() {
    Started bid =
        Started.of(
            new Book()
                .sheet("Rooms")
                .row("Room", "Wall area (m²)", "Floor area (m²)")
                .row("Foyer", 48, 20)
                .write(folder, "rooms.xlsx"));

    assertThat(bid.cell("Foyer", "walls", InputColumn.AREA)).isEqualTo("48");
    assertThat(bid.cell("Foyer", "ceiling", InputColumn.AREA)).isEqualTo("20");
    assertThat(bid.cell("Foyer", "walls", InputColumn.NOTES)).isEqualTo("To fill in: Coating.");
  }

  @Test
  void workbookWithoutRoomsIsRefusedInOneSentence() {
    Path list = new Book().sheet("Prices").row("Item", "Price").row("Brush", 4).write(folder);

    assertThatThrownBy(() -> Started.of(list))
        .isInstanceOf(WorkbookException.NoRooms.class)
        .hasMessageContaining("COBie sheet Space")
        .hasMessageContaining("\"Prices\"")
        .hasMessageEndingWith(".");
  }

  @Test
  void bidIsNoRoomList() {
    Path bid =
        new Book()
            .sheet("Offer")
            .row("Room", "Surface", "Length", "Height", "Coating")
            .row("Foyer", "walls", 12, 9, "latex")
            .write(folder);

    assertThatThrownBy(() -> Started.of(bid))
        .isInstanceOf(WorkbookException.NoRooms.class)
        .hasMessageContaining("\"Offer\" is a bid already; the command fill takes it");
  }

  @Test
  void bidIsNeverWrittenOverAFileUnasked() {
    Path list =
        new Book()
            .sheet("Rooms")
            .row("Room", "Area (m²)", "Height (m)")
            .row("Foyer", 20, 2.7)
            .write(folder, "rooms.xlsx");
    Path bid = folder.resolve("rooms-bid.xlsx");
    StartJob.make(list, Passwords.NONE, bid, false);

    assertThatThrownBy(() -> StartJob.make(list, Passwords.NONE, bid, false))
        .hasMessageContaining("already");
    assertThatThrownBy(() -> StartJob.make(list, Passwords.NONE, list, true))
        .hasMessageContaining("the input itself");
  }
}
