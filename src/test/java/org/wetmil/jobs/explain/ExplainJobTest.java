package org.wetmil.jobs.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.SmallBid;
import org.wetmil.jobs.FillJob;
import org.wetmil.workbook.Locked;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.Book;

class ExplainJobTest {
  private static final Path SAMPLES = Path.of("sample-workbooks");

  @TempDir private Path folder;

  private static List<String> explain(Path file, String cell) {
    return new ExplainJob(Passwords.NONE).explain(file, Asked.of(cell));
  }

  /** Every third line, from the bid and from the filled workbook; each number and each sum. */
  @ParameterizedTest
  @CsvSource({"clinic-refit, Bid, 5, 44", "gym-hall, Bid, 5, 20"})
  void everyNumberIsThatOfItsCellAndCanBeReckonedAnewFromTheLinesAlone(
      String job, String sheetName, int first, int last) throws IOException {
    Map<String, Integer> seen = new TreeMap<>();
    Path twin = SAMPLES.resolve(job + "-filled.xlsx");
    try (Workbook workbook = WorkbookFactory.create(twin.toFile(), null, true)) {
      Sheet sheet = workbook.getSheet(sheetName);
      for (int row = first; row <= last; row += 3) {
        List<String> told = explainOrNothing(SAMPLES.resolve(job + ".xlsx"), row);
        assertThat(explainOrNothing(twin, row).stream().skip(1).filter(ExplainJobTest::isStep))
            .containsExactlyElementsOf(
                told.stream().skip(1).filter(ExplainJobTest::isStep).toList());
        for (ToldSteps.Told step : ToldSteps.of(told).steps()) {
          check(step, sheet, seen);
        }
      }
    }

    assertThat(seen).containsKeys("Net area", "Flow", "Gun speed", "Spread", "Paint", "Labour");
  }

  private static boolean isStep(String line) {
    return line.matches("\\d+ +.*|    = .*");
  }

  private static List<String> explainOrNothing(Path file, int row) {
    try {
      return explain(file, String.valueOf(row));
    } catch (WorkbookException.NoLine e) {
      return List.of();
    }
  }

  private static void check(ToldSteps.Told step, Sheet sheet, Map<String, Integer> seen) {
    seen.merge(step.name(), 1, Integer::sum);
    if (!step.put().isEmpty()) {
      PocketCalculator.Reckoned anew = PocketCalculator.reckon(step.put());
      assertThat(anew.value())
          .as("%s: %s", step.name(), step.put())
          .isCloseTo(step.result(), within(anew.slack()));
    }
    if (step.cell().isEmpty() || step.shown().equals("none")) {
      return;
    }
    CellReference at = new CellReference(step.cell());
    Cell cell = sheet.getRow(at.getRow()).getCell(at.getCol());
    double stored = cell.getNumericCellValue();
    String format = cell.getCellStyle().getDataFormatString();
    String shown =
        new DataFormatter(Locale.ROOT)
            .formatRawCellContents(stored, cell.getCellStyle().getDataFormat(), format)
            .replace(",", "");
    assertThat(step.shown()).as("%s in %s", step.name(), step.cell()).isEqualTo(shown);
    if (!Double.isNaN(step.taken())) {
      assertThat(step.taken()).as(step.name()).isCloseTo(stored, withinPercentage(0.001));
    }
  }

  @Test
  void linesAreExplainedAsBefore() throws IOException {
    for (Map.Entry<String, List<String>> golden : GoldenLines.all().entrySet()) {
      assertThat(golden.getValue())
          .as("if this is meant, write the samples anew: DEVELOPERS.md")
          .isEqualTo(Files.readAllLines(GoldenLines.FOLDER.resolve(golden.getKey())));
      assertThat(golden.getValue()).allMatch(line -> line.length() <= Page.WIDTH);
    }
  }

  /** The lines of HandWorkedLinesTest, whose figures a calculator outside this program gave. */
  @Test
  void handWorkedLinesComeOutWithTheNumbersOfTheCalculator() {
    Path file =
        new Book()
            .sheet("US")
            .row(
                "Room",
                "Surface",
                "Coating",
                "Condition",
                "Length (ft)",
                "Width (ft)",
                "Height (ft)",
                "Openings (ft²)",
                "Count",
                "Thinner",
                "Specified dry film (mil)",
                "Sprayer")
            .row("A", "walls", "latex", "new drywall", 20, 15, 9, 40)
            .row("B", "flush doors", "alkyd", "repaint", null, null, null, null, 6, 0.1)
            .row("C", "metal deck", "dry fog", null, 60, 40, 22, null, null, null, 5, "big one")
            .sheet("Metric")
            .row(
                "Surface",
                "Coating",
                "Condition",
                "Length (m)",
                "Girth (mm)",
                "Count",
                "Specified dry film (µm)")
            .row("baseboard", "latex", "peeling", 30, 100)
            .row("cabinets", "lacquer", null, null, null, 10, 80)
            .sheet("Sprayers")
            .row("Sprayer", "Greatest flow", "Hose bore", "Hose length", "Rise")
            .row("Big One", 0.45, 0.375, 50, 20)
            .write(folder);

    assertThat(String.join("\n", explain(file, "US!2")))
        .contains(": 517, orifice 17 thou, fan 10 in", "= 590 ft²", "= 0.270459 gpm")
        .contains("= 32.395 in/s", "= 3.24 mil", "= 237.06 ft²/gal", "= 4.97764 gal")
        .contains("= 1.45702 h", "= 1.31111 h", "= 0.75 h", "= 0.295 h", "= 3.81313 h")
        .contains("Not stated: Usual coats of latex, 2 (house: starting point; built in)");
    assertThat(String.join("\n", explain(file, "US!3")))
        .contains(": 410, orifice 10 thou, fan 8 in", "= 252 ft²", "= 0.0957282 gpm")
        .contains("= 18.4277 in/s", "= 3.30909 mil", "= 284.98 ft²/gal", "= 1.76854 gal")
        .contains("= 2.68139 h", "= 0.75 h", "= 0.945 h", "= 4.37639 h");
    assertThat(String.join("\n", explain(file, "US!4")))
        .contains(": 519, orifice 19 thou", "= 3000 ft²", "= 11.7052 psi", "= 45.1144 psi")
        .contains("= 1943.18 psi", "= 0.326781 gpm", "= 24.1557 in/s", "= 6.25 mil")
        .contains("= 126.973 ft²/gal", "= 47.2541 gal", "= 18.7022 h", "= 6 h", "= 24.7022 h")
        .contains("= 1.66667", "rounded up to whole coats", "The pump gives 0.45 gpm");
    assertThat(String.join("\n", explain(file, "Metric!2")))
        .contains(": 212,", "= 3 m²", "= 0.510128 L/min", "= 51.249 cm/s", "= 82.296 µm")
        .contains("= 5.15376 m²/L", "= 1.1642 L", "= 0.722687 h", "= 1.42826 h", "= 2.15095 h");
    assertThat(String.join("\n", explain(file, "Metric!3")))
        .contains(": 310,", "= 9.2903 m²", "= 0.346717 L/min", "= 49.7666 cm/s", "= 106.667 µm")
        .contains("= 4.05234 m²/L", "= 6.87773 L", "= 3.92602 h");
  }

  @Test
  void aFilledCellIsToldWithWhatItRestsOnAlone() {
    List<String> told = explain(SAMPLES.resolve("clinic-refit.xlsx"), "w5");

    assertThat(told).anyMatch(line -> line.startsWith("W5 is Net area."));
    assertThat(ToldSteps.of(told).steps())
        .extracting(ToldSteps.Told::name)
        .containsExactly("Net area");
    assertThat(
            ToldSteps.of(
                    explain(
                        SAMPLES.resolve("clinic-refit.xlsx"),
                        GoldenLines.cellOf("Paint", "clinic-refit.xlsx", "5")))
                .steps())
        .extracting(ToldSteps.Told::name)
        .containsExactly(
            "Net area",
            "Coats to apply",
            "Target film",
            "Pressure to set",
            "Tip code",
            "Flow",
            "Gun speed",
            "Wet film per coat",
            "Spread",
            "Paint");
  }

  @Test
  void aRowOfTheListOfHoursLeadsToItsLine() {
    Path filled = SAMPLES.resolve("clinic-refit-filled.xlsx");

    assertThat(explain(filled, "Hours!I3").subList(0, 2))
        .containsExactly(
            "clinic-refit-filled.xlsx, sheet Bid, row 6: ceiling of Waiting room in latex",
            "W6 is Net area. This is all that it rests on.");
  }

  @Test
  void findingsStandBelowWithWhatToDo() {
    Path bid = SmallBid.write(folder.resolve("small.xlsx"));

    assertThat(explain(bid, "3"))
        .anyMatch(line -> line.startsWith("  warning film-too-thick: "))
        .anyMatch(line -> line.startsWith("    What to do: "));
    assertThat(explain(bid, "4"))
        .contains("Findings on this line")
        .contains("The line is not filled, since it lacks a coating that is known.")
        .anyMatch(line -> line.startsWith("  stop unknown-coating: "));
    assertThat(explain(SAMPLES.resolve("clinic-refit.xlsx"), "40"))
        .contains("The line is not filled, since it lacks Width.");
  }

  @Test
  void whatIsProtectedIsOpenedByItsPassword() throws IOException {
    Path bid =
        Locked.with("s3cret", EncryptionMode.agile, SmallBid.write(folder.resolve("small.xlsx")));
    Path words = Files.writeString(folder.resolve("words.txt"), "s3cret\n");

    assertThatThrownBy(() -> explain(bid, "2")).isInstanceOf(WorkbookException.Encrypted.class);
    assertThat(new ExplainJob(Passwords.in(words)).explain(bid, Asked.of("Bid!2")))
        .first()
        .isEqualTo("small.xlsx, sheet Bid, row 2: walls of Office in latex");
  }

  @Test
  void tablesOfAnotherWorkbookCount() {
    Path bid = SmallBid.write(folder.resolve("small.xlsx"));
    Path tables =
        new Book()
            .sheet("Settings")
            .row("Setting", "Value")
            .row("Waste", 0.2)
            .write(folder, "ours.xlsx");

    assertThat(new ExplainJob(Passwords.NONE).over(tables).explain(bid, Asked.of("2")))
        .contains("      Waste 0.2 (Settings) - yours, [ours.xlsx]Settings!B2");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A1 | row 1 of sheet Bid is no bid line: it stands above the headings; lines stand in rows 5 to 44.",
        "4 | row 4 of sheet Bid is no bid line: the headings stand there; lines stand in rows 5 to 44.",
        "900 | row 900 of sheet Bid is no bid line: it stands outside the table; lines stand in rows 5 to 44.",
        "Bidd!A5 | no lines of a bid were read from a sheet \"Bidd\"; they stand on \"Bid\".",
        "Summary!B5 | Summary!B5 stands on a sheet that Wetmil adds, and no single line is behind it; explain takes any cell of a bid line, or of a line's row on the sheet Hours.",
      })
  void aCellOfNoLineIsAnsweredWithASentence(String cell, String sentence) {
    Path filled = SAMPLES.resolve("clinic-refit-filled.xlsx");

    assertThatThrownBy(() -> explain(filled, cell))
        .isInstanceOf(WorkbookException.NoLine.class)
        .hasMessage(filled + ": " + sentence);
  }

  @Test
  void aRowThatIsNoLineIsSaidWhatItIs() {
    Path file =
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Coating", "Length (ft)", "Height (ft)")
            .row("Ground floor")
            .row("Hall", "walls", "latex", 20, 9)
            .row("Room", "Surface", "Coating", "Length (ft)", "Height (ft)")
            .skip(1)
            .row("Office", "walls", "latex", 30, 9)
            .row("Total", null, null, 50)
            .skip(1)
            .row("Signed", "somebody", "the boss")
            .write(folder);

    assertThat(List.of("2", "4", "5", "7", "9"))
        .extracting(row -> what(file, row))
        .containsExactly(
            "it is a title or a note, with nothing to measure or to paint",
            "the headings are repeated there",
            "it is blank",
            "it is a row of totals",
            "it stands below the table and is left out");
  }

  private static String what(Path file, String row) {
    try {
      explain(file, row);
      return "explained";
    } catch (WorkbookException.NoLine e) {
      return e.getMessage().replaceAll(".*is no bid line: |; lines stand.*", "");
    }
  }

  @Test
  void whereSeveralSheetsHoldLinesOneIsToBeNamed() {
    Path file =
        new Book()
            .sheet("First floor")
            .row("Surface", "Coating", "Length (ft)", "Height (ft)")
            .row("walls", "latex", 20, 9)
            .sheet("Two")
            .row("Surface", "Coating", "Length (ft)", "Height (ft)")
            .row("walls", "latex", 30, 9)
            .write(folder);

    assertThatThrownBy(() -> explain(file, "C2"))
        .hasMessage(
            file
                + ": lines stand on the sheets \"First floor\", \"Two\"; name one of them, as in"
                + " 'First floor'!C2.");
    assertThat(explain(file, "'first floor'!C2").get(1)).isEqualTo("C2 is Length.");
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void ofTablesSideBySideTheOneOfTheCellIsTold(boolean filled) throws IOException {
    Path bid =
        new Book()
            .sheet("Bid")
            .row(
                "Room",
                "Surface",
                "Coating",
                "Area (ft²)",
                null,
                "Room",
                "Surface",
                "Coating",
                "Area (ft²)")
            .row("West 1", "walls", "latex", 110, null, "East 1", "ceiling", "primer", 210)
            .row("West 2", "walls", "latex", 120, null, "East 2", "ceiling", "primer", 220)
            .row("West 3", "walls", "latex", 130)
            .write(folder);
    Path file = folder.resolve("filled.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(bid, file);
    List<String> areas = cells(file, "Net area (ft²)");
    Path asked = filled ? file : bid;

    assertThat(areas).hasSize(5);
    assertThatThrownBy(() -> explain(asked, "2"))
        .hasMessageContaining("row 2 of sheet Bid holds 2 lines side by side; name a cell of one")
        .hasMessageEndingWith("as in A2 or F2.");
    assertThat(explain(asked, "D2").get(0)).endsWith("row 2: walls of West 1 in latex");
    assertThat(explain(asked, "I2").get(0)).endsWith("row 2: ceiling of East 1 in primer");
    assertThat(explain(asked, "4").get(0)).endsWith("row 4: walls of West 3 in latex");
    assertThat(areas)
        .extracting(cell -> told(asked, cell))
        .containsExactly(
            "110.0 in " + areas.get(0),
            "210.0 in " + areas.get(1),
            "120.0 in " + areas.get(2),
            "220.0 in " + areas.get(3),
            "130.0 in " + areas.get(4));
  }

  private static String told(Path file, String cell) {
    ToldSteps.Told area = ToldSteps.of(explain(file, cell)).steps().get(0);
    return area.shown() + " in " + area.cell();
  }

  /** The filled cells under a heading, row by row. */
  private static List<String> cells(Path file, String heading) throws IOException {
    List<String> cells = new ArrayList<>();
    try (Workbook workbook = WorkbookFactory.create(file.toFile(), null, true)) {
      Sheet sheet = workbook.getSheet("Bid");
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA
              && sheet.getRow(0).getCell(cell.getColumnIndex()).toString().startsWith(heading)) {
            cells.add(cell.getAddress().toString());
          }
        }
      }
    }
    return cells;
  }

  @Test
  void whatIsNoReferenceIsRefused() {
    assertThat(List.of("", "hello", "12.5", "H", "ZZZZ1", "Bid!", "0", "H0", "1048577"))
        .allSatisfy(
            text ->
                assertThatThrownBy(() -> Asked.of(text))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("is no cell"));
    assertThat(Asked.of("'It''s ours!'!$H$12")).hasToString("It's ours!!H12");
  }
}
