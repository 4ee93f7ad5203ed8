package org.wetmil.workbook.fill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.checks.Checks;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillReport;
import org.wetmil.workbook.fill.page.HoursColumn;
import org.wetmil.workbook.fill.page.OrderColumn;
import org.wetmil.workbook.look.Pages;

/** What the sheets after the estimator's hold, on the clinic. */
class OwnSheetsTest {
  private static final Pattern BID_CELL =
      Pattern.compile("'Bid'!\\$[A-Z]+\\$(\\d+)|Bid!\\$[A-Z]+\\$(\\d+)");

  @TempDir static Path folder;

  private static FillReport report;
  private static XSSFWorkbook workbook;

  @BeforeAll
  static void fill() throws IOException {
    Path filled = folder.resolve("filled.xlsx");
    report =
        new FillJob(LocalDate.of(2026, 1, 5), "test", false)
            .fill(Path.of("sample-workbooks", "clinic-refit.xlsx"), filled);
    try (InputStream in = Files.newInputStream(filled)) {
      workbook = new XSSFWorkbook(in);
    }
  }

  @AfterAll
  static void close() throws IOException {
    workbook.close();
  }

  @Test
  void summarySaysWhyItsDaysAreNotThoseOfThePlan() {
    assertThat(right("Summary", "Days of work by the hours alone", 2)).isEqualTo(13);
    assertThat(right("Summary", "Days on Plan, with drying", 2))
        .isEqualTo(right("Plan", "Days until the last coat is laid", 5))
        .isGreaterThan(13);
  }

  @Test
  void figuresOnBasisShowSixDigitsAndKeepAll() {
    Cell girth = beside("Basis", "Running girth", 2);

    // 10 cm, of which an inch is exactly 2.54
    assertThat(girth.getNumericCellValue()).isCloseTo(10 / 2.54, within(1e-15));
    assertThat(new DataFormatter(Locale.ROOT).formatCellValue(girth)).isEqualTo("3.93701");
    Cell coats = beside("Basis", "Usual coats", 1);
    assertThat(new DataFormatter(Locale.ROOT).formatCellValue(coats)).isEqualTo("2");
  }

  @Test
  void wordsOnBasisStandAtTheLeftOnAsManyLinesAsTheyTake() {
    Cell exclusions = beside("Basis", "Exclusions", 2);

    assertThat(exclusions.getStringCellValue()).hasSizeGreaterThan(60);
    assertThat(exclusions.getCellStyle().getWrapText()).isTrue();
    assertThat(exclusions.getCellStyle().getAlignment()).isEqualTo(HorizontalAlignment.GENERAL);
    assertThat(exclusions.getRow().getHeightInPoints()).isGreaterThan(45);
  }

  @Test
  void filterOfTheCrewStandsApartFromTheOrificeBesideIt() {
    Cell filter = beside("Crew", "Fan, orifice", 1).getRow().getCell(8);
    Cell mesh = filter.getSheet().getRow(filter.getRowIndex() + 1).getCell(8);

    assertThat(mesh.getStringCellValue()).contains("mesh");
    assertThat(mesh.getCellStyle().getIndention()).isPositive();
  }

  private static double right(String sheet, String label, int columns) {
    return beside(sheet, label, columns).getNumericCellValue();
  }

  /** The cell so many columns right of a label. */
  private static Cell beside(String sheet, String label, int columns) {
    for (Row row : workbook.getSheet(sheet)) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.STRING && cell.getStringCellValue().equals(label)) {
          return row.getCell(cell.getColumnIndex() + columns);
        }
      }
    }
    throw new AssertionError(sheet + " has no " + label);
  }

  @Test
  void sheetsFollowTheEstimatorsInTheirOrder() {
    List<String> names = new ArrayList<>();
    workbook.forEach(sheet -> names.add(sheet.getSheetName()));

    assertThat(names)
        .containsExactly(
            "Bid",
            "Coatings",
            "Sprayers",
            "Settings",
            "Summary",
            "How sure",
            "Findings",
            "Hours",
            "Order",
            "Offer",
            "Plan",
            "Crew",
            "Cautions",
            "Basis");
    assertThat(texts(workbook.getSheet("Basis")))
        .contains("a sheet of yours has the name: the page Bid is called Offer");
  }

  /** After a sort of the bid each row is whole again, since it takes all from one row there. */
  @Test
  void eachRowOfHoursRefersToOneRowOfTheBid() {
    Set<Integer> referred = new HashSet<>();
    int lines = 0;
    for (Row row : workbook.getSheet("Hours")) {
      Set<Integer> rows = new HashSet<>();
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.FORMULA) {
          Matcher matcher = BID_CELL.matcher(cell.getCellFormula());
          while (matcher.find()) {
            rows.add(
                Integer.parseInt(matcher.group(1) == null ? matcher.group(2) : matcher.group(1)));
          }
        }
      }
      if (!rows.isEmpty()) {
        assertThat(rows).hasSize(1);
        referred.addAll(rows);
        lines++;
      }
    }
    assertThat(lines).isEqualTo(report.rows());
    assertThat(referred).hasSize(report.rows());
  }

  @Test
  void labourOnHoursAddsUpToTheJob() {
    Sheet hours = workbook.getSheet("Hours");
    double sum = 0;
    for (Row row : hours) {
      if (row.getRowNum() > 0
          && row.getCell(HoursColumn.COUNTED.ordinal()).getNumericCellValue() == 1) {
        sum += row.getCell(HoursColumn.LABOUR.ordinal()).getNumericCellValue();
      }
    }

    assertThat(sum).isCloseTo(report.hours(), within(1e-9));
  }

  @Test
  void orderBuysWhatIsNeeded() {
    double need = 0;
    double volume = 0;
    double over = 0;
    for (Row row : workbook.getSheet("Order")) {
      if (row.getRowNum() > 0) {
        need += number(row, OrderColumn.NEED);
        volume += number(row, OrderColumn.VOLUME);
        over += number(row, OrderColumn.LEFT_OVER);
      }
    }

    assertThat(need).isCloseTo(report.paint(), within(1e-9));
    assertThat(volume - need).isCloseTo(over, within(1e-9));
    assertThat(over).isPositive();
  }

  @Test
  void howSureHasTheStatedFigureBetweenItsEnds() {
    Sheet page = workbook.getSheet("How sure");
    for (int row = 4; row < 10; row++) {
      double low = page.getRow(row).getCell(1).getNumericCellValue();
      double stated = page.getRow(row).getCell(2).getNumericCellValue();
      double high = page.getRow(row).getCell(3).getNumericCellValue();

      assertThat(stated).as("row %d", row).isBetween(low, high);
      assertThat(high).as("row %d", row).isGreaterThan(low);
    }
    assertThat(page.getRow(4).getCell(2).getNumericCellValue())
        .isCloseTo(report.paint(), within(1e-9));
    assertThat(texts(page))
        .anyMatch(text -> text.startsWith("Time with the trigger on moves the labour most: by "));
  }

  @Test
  void planHasEachRoomThatCounts() {
    List<String> texts = texts(workbook.getSheet("Plan"));

    assertThat(texts)
        .contains(
            "Waiting room",
            "Outside",
            "Not judged: state Air temperature,"
                + " Surface temperature and Humidity on a Settings sheet.");
    assertThat(texts).filteredOn(text -> text.equals("class: data sheet wins")).hasSize(8);
  }

  private static double number(Row row, OrderColumn column) {
    Cell cell = row.getCell(column.ordinal());
    return cell == null ? 0 : cell.getNumericCellValue();
  }

  @Test
  void crewHasOnePageForEachRoomAndNoLineThatIsLeftOut() {
    XSSFSheet crew = workbook.getSheet("Crew");
    List<String> texts = texts(crew);

    // eleven rooms, ten breaks between them
    assertThat(crew.getRowBreaks()).hasSize(10);
    assertThat(texts).contains("Waiting room", "Plant room", "Hand pace: s for 10 ft", "3.8");
    int waiting = texts.indexOf("Waiting room");
    int reception = texts.indexOf("Reception");
    // the ceiling of the waiting room is left out by Include
    assertThat(texts.subList(waiting, reception))
        .contains("walls", "doors")
        .doesNotContain("ceiling");
  }

  @Test
  void everySheetHasAPrintAreaAndFitsTheWidth() {
    for (String name :
        List.of(
            "Summary",
            "How sure",
            "Findings",
            "Hours",
            "Order",
            "Offer",
            "Plan",
            "Crew",
            "Basis")) {
      XSSFSheet sheet = workbook.getSheet(name);
      assertThat(workbook.getPrintArea(workbook.getSheetIndex(sheet))).as(name).isNotNull();
      assertThat(sheet.getFitToPage()).as(name).isTrue();
      assertThat(sheet.getPrintSetup().getFitWidth()).as(name).isEqualTo((short) 1);
    }
  }

  /** So wide that letters of findings come out at eight points; Basis is a list to look up in. */
  @Test
  void wordsOfFindingsAndBasisAreReadOnPaper() {
    Map<String, Integer> most = Map.of("Findings", Pages.READABLE, "Basis", Pages.MOST_ON_ONE);
    for (String name : List.of("Findings", "Basis")) {
      XSSFSheet sheet = workbook.getSheet(name);
      String area = workbook.getPrintArea(workbook.getSheetIndex(sheet));
      int last = new AreaReference(area, SpreadsheetVersion.EXCEL2007).getLastCell().getCol();
      int characters = IntStream.rangeClosed(0, last).map(sheet::getColumnWidth).sum() / 256;
      assertThat(characters).as(name).isBetween(100, most.get(name));
      assertThat(sheet.getPrintSetup().getLandscape()).as(name).isTrue();
      assertThat(sheet.getMargin(PageMargin.LEFT)).as(name).isLessThan(0.5);
      assertThat(sheet.getRepeatingRows()).as(name).isNotNull();
    }
    assertThat(texts(workbook.getSheet("Findings")).subList(0, 10))
        .containsExactly(
            "Severity",
            "Room",
            "Surface",
            "Finding",
            "Why",
            "What to do",
            "Cell",
            "Check",
            "Measured",
            "Limit");
    // also of a finding that has no cell
    for (Row row : workbook.getSheet("Findings")) {
      String check = row.getCell(7).getStringCellValue();
      assertThat(row.getRowNum() == 0 || Checks.find(check).isPresent()).as(check).isTrue();
    }
  }

  private static List<String> texts(Sheet sheet) {
    List<String> texts = new ArrayList<>();
    for (Row row : sheet) {
      for (Cell cell : row) {
        if (cell.getCellType() == CellType.STRING) {
          texts.add(cell.getStringCellValue());
        }
      }
    }
    return texts;
  }
}
