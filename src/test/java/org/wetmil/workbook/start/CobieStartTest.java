package org.wetmil.workbook.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Function;
import org.apache.poi.ss.formula.ConditionalFormattingEvaluator;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.stream.CellAddress;

class CobieStartTest {
  @TempDir Path folder;

  @Test
  void roomsWithEverythingStatedAreFilledWithoutAStop() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 2.7, 20)
                .attribute("Perimeter", "A101", 18, "meter")
                .attribute("Wall finish", "A101", "acrylic latex", "n/a")
                .attribute("CeilingCovering", "A101", "Latex paint", "n/a")
                .attribute("Floor finish", "A101", "Epoxy paint", "n/a")
                .write(folder));

    assertThat(bid.surfaces("A101 Foyer")).containsExactly("walls", "ceiling", "floor");
    for (String surface : bid.surfaces("A101 Foyer")) {
      assertThat(bid.stops("A101 Foyer", surface)).isEmpty();
      assertThat(bid.line("A101 Foyer", surface).isFilled()).isTrue();
    }
    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.COATING)).isEqualTo("latex");
    assertThat(bid.cell("A101 Foyer", "floor", InputColumn.COATING)).isEqualTo("two-part");
    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.FLOOR)).isEqualTo("Ground");
    assertThat(bid.line("A101 Foyer", "walls").figures().get(FilledColumn.NET_AREA).number())
        .as("18 m around, 2.7 m high")
        .isCloseTo(48.6, within(1e-9));
    assertThat(bid.made().missing()).isEmpty();
  }

  @Test
  void rowsWithoutANameOrWithOneThatWasThereAreNamed() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 2.7, 20)
                .space("a101 ", "Office", "Ground", 2.7, 30)
                .space("n/a", "Store", "Ground", 2.7, 10)
                .space("n/a", "n/a", "n/a", "n/a", "n/a")
                .write(folder));

    assertThat(bid.made().rooms()).isEqualTo(1);
    assertThat(bid.made().remarks())
        .contains(
            "sheet Space: not read, as no room is named there: row 4. Type a name in each that is"
                + " a room.",
            "sheet Space: not read, as a row above has the name: \"a101\" (row 3). Give each room"
                + " a name of its own.");
  }

  @Test
  void perimeterBecomesLengthWithWidthBlankAndNotesSaySo() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 2.7, 20)
                .attribute("Perimeter", "A101", 18, "meter")
                .write(folder));

    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.LENGTH)).isEqualTo("18");
    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.WIDTH)).isEmpty();
    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.NOTES))
        .contains("Length is the perimeter");
    assertThat(bid.cell("A101 Foyer", "ceiling", InputColumn.AREA)).isEqualTo("20");
  }

  @Test
  void millimetresBesideSquareMetresAndNumbersAsTextAreRead() {
    Started bid =
        Started.of(
            new Cobie("millimeters", "squaremeters")
                .space("12", "Store", "Ground", "2700", "20.5")
                .attribute("Perimeter", "12", "18400", "n/a")
                .write(folder));

    assertThat(bid.cell("12 Store", "walls", InputColumn.LENGTH)).isEqualTo("18.4");
    assertThat(bid.cell("12 Store", "walls", InputColumn.HEIGHT)).isEqualTo("2.7");
    assertThat(bid.cell("12 Store", "ceiling", InputColumn.AREA)).isEqualTo("20.5");
  }

  @Test
  void unitOfAnAttributeWinsOverThatOfTheFacility() {
    Started bid =
        Started.of(
            new Cobie("millimeters", "square meters")
                .space("12", "Store", "Ground", 2700, 20.5)
                .attribute("Perimeter", "12", 18.4, "meters")
                .write(folder));

    assertThat(bid.cell("12 Store", "walls", InputColumn.LENGTH)).isEqualTo("18.4");
  }

  @Test
  void feetMakeABidInFeet() {
    Started bid =
        Started.of(
            new Cobie("feet", "square feet")
                .space("12", "Store", "Ground", 9, 220)
                .attribute("Perimeter", "12", 60, "foot")
                .write(folder));

    assertThat(bid.line("12 Store", "walls").line().number(InputColumn.LENGTH)).isEqualTo(60);
    assertThat(bid.line("12 Store", "ceiling").line().number(InputColumn.AREA)).isEqualTo(220);
    assertThat(bid.cell("12 Store", "ceiling", InputColumn.AREA)).isEqualTo("220");
  }

  @Test
  void zeroAndNotAvailableAreNotKnownAndAreMarked() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "n/a", "Ground", 0, "n/a")
                .write(folder));

    assertThat(bid.cell("A101", "walls", InputColumn.HEIGHT)).isEmpty();
    assertThat(bid.cell("A101", "ceiling", InputColumn.AREA)).isEmpty();
    assertThat(bid.cell("A101", "walls", InputColumn.NOTES))
        .isEqualTo("To fill in: Length, Height, Coating.");
    assertThat(bid.made().missing())
        .containsEntry("Height", 1)
        .containsEntry("Area", 1)
        .containsEntry("Coating", 2);
  }

  @Test
  void heightStandsOnAttributeWhereTheSpaceHasNone() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 0, 20)
                .attribute("FinishCeilingHeight", "A101", 2.6, "n/a")
                .write(folder));

    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.HEIGHT)).isEqualTo("2.6");
  }

  @Test
  void volumeHintsAtTheHeightAndIsNeverTakenForIt() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 0, 20)
                .attribute("Volume", "A101", 52, "meter")
                .write(folder));

    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.HEIGHT)).isEmpty();
    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.NOTES)).contains("2.6 m");
  }

  @Test
  void finishMayStandInTheValueWithItsLabel() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 2.7, 20)
                .attribute("Finish 1", "A101", "Wall finish: lacquer", "n/a")
                .attribute("Finish 2", "A101", "Ceiling finish = ceramic tile", "n/a")
                .write(folder));

    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.COATING)).isEqualTo("lacquer");
    assertThat(bid.cell("A101 Foyer", "ceiling", InputColumn.COATING)).isEmpty();
    assertThat(bid.cell("A101 Foyer", "ceiling", InputColumn.NOTES)).contains("ceramic tile");
  }

  @Test
  void finishThatIsNoPaintLeavesItsLineOut() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 2.7, 20)
                .attribute("Wall Finish", "A101", "Ceramic tile", "n/a")
                .attribute("Ceiling Finish", "A101", "Acrylic latex paint, eggshell", "n/a")
                .attribute("Perimeter", "A101", 18, "n/a")
                .write(folder));

    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.INCLUDE)).isEqualTo("no");
    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.NOTES))
        .contains("Finish on the list: Ceramic tile. Left out; to have it painted")
        .doesNotContain("To fill in");
    assertThat(bid.cell("A101 Foyer", "ceiling", InputColumn.COATING)).isEqualTo("latex");
    assertThat(bid.cell("A101 Foyer", "ceiling", InputColumn.SHEEN)).isEqualTo("eggshell");
    assertThat(bid.made().missing()).doesNotContainKey("Coating");
    assertThat(bid.stops("A101 Foyer", "walls")).as("what is left out waits").isEmpty();
  }

  @Test
  void cellsToFillInAreHatchedAsLongAsTheyAreBlank() throws IOException {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 0, 20)
                .write(folder));

    try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(bid.file()))) {
      XSSFSheet sheet = book.getSheet("Bid");
      ConditionalFormattingEvaluator marks =
          new ConditionalFormattingEvaluator(
              book, book.getCreationHelper().createFormulaEvaluator());
      Function<String, Boolean> hatched =
          address -> !marks.getConditionalFormattingForCell(at(sheet, address)).isEmpty();
      String coating = CellAddress.letters(InputColumn.COATING.ordinal());
      String height = CellAddress.letters(InputColumn.HEIGHT.ordinal());

      assertThat(hatched.apply(coating + 2)).as("coating of the walls").isTrue();
      assertThat(hatched.apply(height + 2)).as("height of the walls").isTrue();
      assertThat(hatched.apply(height + 3)).as("height of the ceiling").isFalse();
      assertThat(hatched.apply(coating + 4)).as("coating of the floor, left out").isFalse();
      at(sheet, coating + 2).setCellValue("latex");
      marks.clearAllCachedValues();
      assertThat(hatched.apply(coating + 2)).as("once it is filled in").isFalse();
    }
  }

  private static Cell at(XSSFSheet sheet, String address) {
    CellReference at = new CellReference(address);
    return sheet.getRow(at.getRow()).getCell(at.getCol());
  }

  @Test
  void floorWithoutACoatingIsLeftOutUntilItIsDecided() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 2.7, 20)
                .write(folder));

    assertThat(bid.cell("A101 Foyer", "floor", InputColumn.INCLUDE)).isEqualTo("no");
    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.INCLUDE)).isEmpty();
  }

  @Test
  void perimeterTooShortForItsAreaIsSaid() {
    Started bid =
        Started.of(
            new Cobie("meters", "square meters")
                .space("A101", "Foyer", "Ground", 2.7, 200)
                .attribute("Perimeter", "A101", 18, "n/a")
                .write(folder));

    assertThat(bid.cell("A101 Foyer", "walls", InputColumn.NOTES)).contains("look at both units");
    assertThat(bid.made().remarks()).anyMatch(remark -> remark.contains("perimeter too short"));
  }

  @Test
  void unitsThatNobodyStatedAreSaid() {
    Started bid =
        Started.of(
            new Cobie("n/a", "square feet").space("A101", "Foyer", "Ground", 9, 220).write(folder));

    assertThat(bid.line("A101 Foyer", "walls").line().number(InputColumn.HEIGHT)).isEqualTo(9);
    assertThat(bid.made().remarks()).anyMatch(remark -> remark.contains("no LinearUnits"));
  }
}
