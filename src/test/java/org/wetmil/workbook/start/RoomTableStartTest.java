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

  @Test
  void roomOfWhichOnlyTheNameIsKnownGetsLinesThatAskForItsSizes() {
    Started bid =
        Started.of(
            new Book()
                .sheet("Rooms")
                .row("Room", "Length (ft)", "Width (ft)", "Height (ft)")
                .row("Ground floor")
                .row("Foyer", 12, 10, 9)
                .row("Shaft")
                .row("Total")
                .row(null, 12)
                .row()
                .row("Measured on site")
                .write(folder, "rooms.xlsx"));

    assertThat(bid.made().rooms()).isEqualTo(2);
    assertThat(bid.surfaces("Shaft")).containsExactly("walls", "ceiling", "floor");
    assertThat(bid.cell("Shaft", "walls", InputColumn.NOTES))
        .isEqualTo("To fill in: Length, Height, Coating.");
    assertThat(bid.cell("Shaft", "ceiling", InputColumn.NOTES))
        .isEqualTo("To fill in: Area, Coating.");
    assertThat(bid.made().remarks())
        .containsExactly(
            "sheet Rooms: taken for titles, which give no line: \"Ground floor\" (row 2),"
                + " \"Measured on site\" (row 8). Type a size, or a dash, beside one that is a"
                + " room.",
            "sheet Rooms: taken for totals, which give no line: row 5.",
            "sheet Rooms: not read, as no room is named there: row 6. Type a name in each that is"
                + " a room.",
            "1 room has no size on the list; their lines ask for it: Shaft.");
  }

  @Test
  void roomsThatAllReadAsTitlesAreNamedInTheRefusal() {
    Path list =
        new Book()
            .sheet("Rooms")
            .row("Room", "Length (ft)", "Width (ft)", "Height (ft)")
            .row()
            .row("Foyer")
            .row()
            .row("Office")
            .write(folder, "rooms.xlsx");

    assertThatThrownBy(() -> Started.of(list))
        .isInstanceOf(WorkbookException.NoRooms.class)
        .hasMessageContaining("\"Foyer\" (row 3), \"Office\" (row 5). Type a size, or a dash");
  }

  @Test
  void wordsUnderWallsCeilingAndFloorAreFinishes() {
    Started bid =
        Started.of(
            new Book()
                .sheet("Rooms")
                .row("Room", "Area (ft²)", "Walls", "Ceiling", "Floor")
                .row("Bath", 60, "tile", "latex", "tile")
                .row("Hall", 90, "latex", 2, "sealed concrete")
                .write(folder, "rooms.xlsx"));

    assertThat(bid.cell("Bath", "walls", InputColumn.INCLUDE)).isEqualTo("no");
    assertThat(bid.cell("Bath", "walls", InputColumn.NOTES)).contains("Finish on the list: tile");
    assertThat(bid.cell("Bath", "ceiling", InputColumn.COATING)).isEqualTo("latex");
    assertThat(bid.cell("Hall", "walls", InputColumn.COATING)).isEqualTo("latex");
    assertThat(bid.cell("Hall", "ceiling", InputColumn.NOTES)).contains("Finish on the list: 2");
    assertThat(bid.cell("Hall", "floor", InputColumn.NOTES)).contains("sealed concrete");
    assertThat(bid.cell("Hall", "floor", InputColumn.FLOOR)).isEmpty();
    assertThat(bid.made().remarks()).isEmpty();
  }

  @Test
  void whatIsNotReadIsNamed() {
    Started bid =
        Started.of(
            new Book()
                .sheet("Rooms")
                .row("Room", "Height (ft)", "Walls", "Floor", "Crew", null, "Height (ft)", "Blank")
                .row("Foyer", "9 or so", 400, "Ground", "two", "x", 10)
                .row("Hall", 9, 300, "Upper", null, null, 10)
                .sheet("Prices")
                .row("Item", "Price")
                .write(folder, "rooms.xlsx"));

    assertThat(bid.made().remarks())
        .contains(
            "sheet Rooms: not read: Walls, Crew, column F, Height (ft).",
            "no table of rooms, so not read: sheet Prices.");
    assertThat(bid.cell("Foyer", "walls", InputColumn.FLOOR)).isEqualTo("Ground");
    assertThat(bid.cell("Foyer", "walls", InputColumn.NOTES))
        .contains("Height (ft) on the list is no size: 9 or so");
  }

  @Test
  void lengthWithoutAWidthIsKeptAndTheWidthIsAskedFor() {
    Started bid =
        Started.of(
            new Book()
                .sheet("Rooms")
                .row("Room", "Length (ft)", "Width (ft)", "Height (ft)", "Walls", "Remarks")
                .row("Foyer", 15, null, 9, "latex", "arched")
                .write(folder, "rooms.xlsx"));

    for (String surface : bid.surfaces("Foyer")) {
      assertThat(bid.cell("Foyer", surface, InputColumn.LENGTH)).isEqualTo("15");
    }
    assertThat(bid.cell("Foyer", "walls", InputColumn.NOTES))
        .isEqualTo("To fill in: Width. Finish on the list: latex. On the list: arched.");
    assertThat(bid.cell("Foyer", "ceiling", InputColumn.NOTES))
        .isEqualTo("To fill in: Width, Coating.");
    // 15 ft would otherwise be taken for the length of all walls
    assertThat(bid.line("Foyer", "walls").isFilled()).isFalse();
    assertThat(bid.stops("Foyer", "walls"))
        .singleElement()
        .satisfies(stop -> assertThat(stop).contains("fill in"));
  }

  @Test
  void allColumnsThatNameARoomMakeItsName() {
    Started bid =
        Started.of(
            new Book()
                .sheet("Rooms")
                .row("Room", "Name", "No.", "Area (ft²)")
                .row("East", "Foyer", 101, 60)
                .row("East", "East", 102, 60)
                .write(folder, "rooms.xlsx"));

    assertThat(bid.surfaces("101 East Foyer")).hasSize(3);
    assertThat(bid.surfaces("102 East")).hasSize(3);
  }

  @Test
  void metresTakenForFeetAreSeenByTheFill() {
    for (String heading : new String[] {"Height", "Height (ft)"}) {
      Started bid =
          Started.of(
              new Book()
                  .sheet("Rooms")
                  .row("Room", "Length", "Width", heading, "Walls")
                  .row("Foyer", 4, 3, 2.4, "latex")
                  .row("Hall", 6, 3, 2.9, "latex")
                  .write(folder, "rooms.xlsx"));

      assertThat(bid.findings())
          .filteredOn(finding -> finding.check().equals("height-in-metres"))
          .singleElement()
          .satisfies(finding -> assertThat(finding.message()).startsWith("Of 2 lines of walls"));
    }
  }
}
