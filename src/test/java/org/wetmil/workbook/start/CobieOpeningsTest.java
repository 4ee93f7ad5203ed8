package org.wetmil.workbook.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.catalogue.ListedOpening;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Unit;

class CobieOpeningsTest {
  @TempDir Path folder;

  @Test
  void doorBetweenTwoRoomsIsListedInBothAndPaintedOnce() {
    Started bid =
        Started.of(
            twoRooms()
                .type("Door A", "23-30 10: Doors", "Flush:0762 x 2032mm", 0, 0)
                .component("Door 7", "Door A", "A101, A102")
                .write(folder));

    List<ListedOpening> listed = bid.filled().bid().catalogue().openings();
    assertThat(listed).extracting(ListedOpening::room).containsExactly("A101 Foyer", "A102 Store");
    assertThat(listed).extracting(ListedOpening::id).containsOnly("Door 7");
    assertThat(bid.surfaces("A101 Foyer")).contains("doors");
    assertThat(bid.surfaces("A102 Store")).doesNotContain("doors");
  }

  @Test
  void sizeInADescriptionIsTakenWhereTheNominalOneIsZero() {
    Started bid =
        Started.of(
            twoRooms()
                .type("Door A", "23-30 10: Doors", "Flush:0762 x 2032mm", 0, 0)
                .component("Door 7", "Door A", "A101")
                .component("Door 8", "Door A", "A101")
                .write(folder));

    ListedOpening door = bid.filled().bid().catalogue().openings().get(0);
    assertThat(Unit.FOOT.to(Unit.METRE, door.widthFt())).isCloseTo(0.762, within(1e-9));
    assertThat(Unit.FOOT.to(Unit.METRE, door.heightFt())).isCloseTo(2.032, within(1e-9));
    assertThat(door.count()).isEqualTo(2);
    assertThat(bid.line("A101 Foyer", "walls").figures().get(FilledColumn.NET_AREA).number())
        .as("18 m around, 2.7 m high, two doors off")
        .isCloseTo(18 * 2.7 - 2 * 0.762 * 2.032, within(1e-9));
  }

  @Test
  void nominalSizesAreReadInTheUnitOfTheFacility() {
    Started bid =
        Started.of(
            new Cobie("millimeters", "square meters")
                .space("A101", "Foyer", "Ground", 2700, 20)
                .type("Window A", "Windows", "n/a", 1200, "900")
                .component("W 1", "Window A", "A101")
                .write(folder));

    ListedOpening window = bid.filled().bid().catalogue().openings().get(0);
    assertThat(window.kind()).isEqualTo("window");
    assertThat(Unit.FOOT.to(Unit.METRE, window.widthFt())).isCloseTo(1.2, within(1e-9));
    assertThat(Unit.FOOT.to(Unit.METRE, window.heightFt())).isCloseTo(0.9, within(1e-9));
    assertThat(bid.cell("A101 Foyer", "windows", InputColumn.INCLUDE)).isEqualTo("no");
  }

  @Test
  void cabinetWithDoorsIsNoDoor() {
    Started bid =
        Started.of(
            twoRooms()
                .type("Cabinet A", "Kitchen Casework", "Base cabinet, double door:1000mm", 0, 0)
                .type("Closer", "Door hardware", "n/a", 0, 0)
                .component("Cabinet 1", "Cabinet A", "A101")
                .component("Closer 1", "Closer", "A101")
                .write(folder));

    assertThat(bid.made().openings()).isZero();
  }

  @Test
  void skylightOpensTheCeiling() {
    Started bid =
        Started.of(
            twoRooms()
                .type("Skylight", "Roof Windows", "Skylight:1180 x 1170mm", 0, 0)
                .component("Sky 1", "Skylight", "A101")
                .write(folder));

    assertThat(bid.filled().bid().catalogue().openings().get(0).surface()).isEqualTo("ceiling");
  }

  @Test
  void doorWithoutASizeOrARoomIsCounted() {
    Started bid =
        Started.of(
            twoRooms()
                .type("Door A", "Doors", "Flush", 0, 0)
                .component("Door 7", "Door A", "A101")
                .component("Door 8", "Door A", "Z999")
                .write(folder));

    assertThat(bid.made().remarks())
        .anyMatch(remark -> remark.startsWith("1 door or window names no room"))
        .anyMatch(remark -> remark.startsWith("2 doors and windows state no size"));
    assertThat(bid.cell("A101 Foyer", "doors", InputColumn.NOTES)).contains("Size not stated");
  }

  private static Cobie twoRooms() {
    return new Cobie("meters", "square meters")
        .space("A101", "Foyer", "Ground", 2.7, 20)
        .space("A102", "Store", "Ground", 2.7, 10)
        .attribute("Perimeter", "A101", 18, "meter")
        .attribute("Wall finish", "A101", "latex", "n/a");
  }

  @Test
  void colourOfADoorIsTakenOverAndTheHeadingInItsPlaceIsNone() {
    Started bid =
        Started.of(
            new Cobie("millimeters", "square meters")
                .space("A101", "Foyer", "Ground", 2700, 20)
                .space("A102", "Den", "Ground", 2700, 20)
                .type("Door A", "Doors", "Flush", 900, 2100, "RAL 9010")
                .type("Door B", "Doors", "Flush", 900, 2100, "Color")
                .component("Door 1", "Door A", "A101")
                .component("Door 2", "Door B", "A102")
                .write(folder));

    assertThat(bid.cell("A101 Foyer", "doors", InputColumn.COLOUR)).isEqualTo("RAL 9010");
    assertThat(bid.cell("A102 Den", "doors", InputColumn.COLOUR)).isEmpty();
  }
}
