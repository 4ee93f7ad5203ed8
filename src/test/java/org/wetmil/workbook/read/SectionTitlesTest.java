package org.wetmil.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Remark;

/** Titles above the lines that say what no column says. */
class SectionTitlesTest {
  @TempDir Path folder;

  private static Book bid() {
    return new Book().sheet("Bid");
  }

  private static List<String> texts(ReadWorkbook read, InputColumn column) {
    return read.bid().sheets().stream()
        .map(BidSheet::lines)
        .flatMap(List::stream)
        .map((BidLine line) -> line.text(column))
        .toList();
  }

  private static List<String> said(ReadWorkbook read) {
    return read.bid().remarks().stream()
        .filter(remark -> remark.check().equals("section-titles"))
        .map(Remark::message)
        .toList();
  }

  @Test
  void titlesNameTheRoomsOfATableWithoutARoomColumn() {
    ReadWorkbook read =
        bid()
            .row("Surface", "Length", "Width", "Height", "Coating")
            .row("Lobby")
            .row("walls", 20, 10, 9, "latex")
            .row("ceiling", 20, 10, 9, "latex")
            .row("Office 2:")
            .row("walls", 12, 10, 9, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("Lobby", "Lobby", "Office 2");
    assertThat(said(read))
        .containsExactly(
            "No line names its room, so it is read from the title above: \"Lobby\" and 1 more. If"
                + " that is something else, fill in a column Room.");
    assertThat(read.bid().remarks().get(0).address()).isEqualTo("A2");
  }

  @Test
  void titlesNameTheRoomsWhereTheRoomColumnIsEmptyBesideThem() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Length", "Width", "Height", "Coating")
            .row("Lobby")
            .row(null, "walls", 20, 10, 9, "latex")
            .row("Den")
            .row(null, "walls", 12, 10, 9, "latex")
            .merge("A2:F2")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("Lobby", "Den");
  }

  @Test
  void titleMayStandLeftOfTheTable() {
    ReadWorkbook read =
        bid()
            .row(null, "Surface", "Area", "Coating")
            .row("Lobby")
            .row(null, "walls", 90, "latex")
            .row("Den")
            .row(null, "walls", 80, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("Lobby", "Den");
  }

  @Test
  void oneLineWithARoomOfItsOwnTakesNothingFromTitles() {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating")
            .row("East wing")
            .row("A", "walls", 90, "latex")
            .row(null, "ceiling", 90, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("A", "");
    assertThat(said(read)).isEmpty();
  }

  @Test
  void lineAboveTheFirstTitleTakesNothingFromTitlesEither() {
    ReadWorkbook read =
        bid()
            .row("Surface", "Area", "Coating")
            .row("walls", 90, "latex")
            .row("Lobby")
            .row("ceiling", 90, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("", "");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Note: all prices net",
        "All work in two coats.",
        "Option B",
        "Interior painting",
        "Doors",
        "latex",
        "see the drawing at www.example.org"
      })
  void notesPartsOfTheBidAndSurfacesAreNoRooms(String title) {
    ReadWorkbook read =
        bid()
            .row("Surface", "Area", "Coating")
            .row(title)
            .row("walls", 90, "latex")
            .row("ceiling", 80, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("", "");
    assertThat(said(read)).isEmpty();
  }

  @Test
  void noteBetweenLinesDoesNotEndTheRoom() {
    ReadWorkbook read =
        bid()
            .row("Surface", "Area", "Coating")
            .row("Lobby")
            .row("walls", 90, "latex")
            .row("Note: mind the mural")
            .row("ceiling", 80, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("Lobby", "Lobby");
  }

  @Test
  void titlesOfFloorsAreFloorsAndThoseBelowThemRooms() {
    ReadWorkbook read =
        bid()
            .row("Surface", "Area", "Coating")
            .row("GROUND FLOOR")
            .row("Lobby")
            .row("walls", 90, "latex")
            .row("2nd floor")
            .row("Den")
            .row("walls", 80, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("Lobby", "Den");
    assertThat(texts(read, InputColumn.FLOOR)).containsExactly("GROUND FLOOR", "2nd floor");
    assertThat(said(read)).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"1. OG", "Erdgeschoss", "Planta baja", "Level 3", "Nivel -1"})
  void floorsMayBeInOtherLanguages(String title) {
    ReadWorkbook read =
        bid()
            .row("Room", "Surface", "Area", "Coating")
            .row(title)
            .row("A", "walls", 90, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.FLOOR)).containsExactly(title);
    assertThat(texts(read, InputColumn.ROOM)).containsExactly("A");
  }

  @Test
  void roomOfOneFloorIsNotThatOfTheNext() {
    ReadWorkbook read =
        bid()
            .row("Surface", "Area", "Coating")
            .row("Ground floor")
            .row("Lobby")
            .row("walls", 90, "latex")
            .row("First floor")
            .row("walls", 80, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("", "");
    assertThat(texts(read, InputColumn.FLOOR)).containsExactly("Ground floor", "First floor");
  }

  @Test
  void titleAboveHeadingsThatComeAgainIsThatOfItsSection() {
    ReadWorkbook read =
        bid()
            .row("Painting schedule of the clinic")
            .skip(1)
            .row("Lobby")
            .row("Surface", "Area", "Height", "Coating")
            .row("walls", 90, 9, "latex")
            .skip(1)
            .row("Den")
            .row("Surface", "Area", "Height", "Coating")
            .row("walls", 80, 9, "latex")
            .read(folder);

    assertThat(texts(read, InputColumn.ROOM)).containsExactly("Lobby", "Den");
  }
}
