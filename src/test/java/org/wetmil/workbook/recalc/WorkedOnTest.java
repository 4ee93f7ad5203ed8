package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillReport;
import org.wetmil.workbook.Locked;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.read.BidReader;

/**
 * A filled sample in the hands of somebody who sorts, filters and inserts rows in a spreadsheet
 * program other than ours: the figures follow their lines.
 */
class WorkedOnTest {
  private static final Path SAMPLE = Path.of("sample-workbooks/clinic-refit-filled.xlsx");
  private static final int HEADINGS = 3;
  private static final int FIRST_LINE = 4;
  private static final double SAME = 1e-9;

  @TempDir Path folder;

  @BeforeEach
  void officeIsThere() {
    Office.assumePresent();
  }

  @Test
  void sortedByAnyColumnEachLineKeepsItsFiguresAndAllSumsStay() throws Exception {
    Path sorted =
        Macro.worked(
            SAMPLE,
            """
            Set sheet = doc.Sheets(0)
            Set lines = sheet.getCellRangeByPosition(0, %d, %d, %d)
            Dim field(0) As New com.sun.star.table.TableSortField
            field(0).Field = 4
            field(0).IsAscending = False
            Dim how(1) As New com.sun.star.beans.PropertyValue
            how(0).Name = "SortFields"
            how(0).Value = field()
            how(1).Name = "ContainsHeader"
            how(1).Value = False
            lines.sort(how())
            """
                .formatted(FIRST_LINE, lastColumn(), lastLine()),
            folder);

    assertThat(firstCells(sorted)).isNotEqualTo(firstCells(SAMPLE));
    assertThat(lines(sorted)).isEqualTo(lines(SAMPLE));
    for (String sheet : List.of("Summary", "Order")) {
      assertThat(differences(numbers(SAMPLE, sheet), numbers(sorted, sheet))).as(sheet).isEmpty();
    }
    FillReport again = again(sorted);
    assertThat(found(again, "overridden-by-hand")).isEmpty();
    assertThat(found(again, "choice-replaced")).isEmpty();
  }

  @Test
  void filteredLinesStillCountAndThatIsSaidAtTheNextFill() throws Exception {
    Path filtered =
        Macro.worked(
            SAMPLE,
            """
            Set sheet = doc.Sheets(0)
            Set table = sheet.getCellRangeByPosition(0, %d, %d, %d)
            Set filter = table.createFilterDescriptor(True)
            Dim field(0) As New com.sun.star.sheet.TableFilterField
            field(0).Field = 2
            field(0).Operator = com.sun.star.sheet.FilterOperator.EQUAL
            field(0).IsNumeric = False
            field(0).StringValue = "walls"
            filter.setFilterFields(field())
            filter.ContainsHeader = True
            table.filter(filter)
            """
                .formatted(HEADINGS, lastColumn(), lastLine()),
            folder);

    assertThat(lines(filtered)).isEqualTo(lines(SAMPLE));
    for (String sheet : List.of("Summary", "Order")) {
      assertThat(differences(numbers(SAMPLE, sheet), numbers(filtered, sheet))).as(sheet).isEmpty();
    }
    assertThat(found(again(filtered), "rows-hidden")).hasSize(1);
  }

  /** Their sums follow, their lists of rooms and surfaces do not. */
  @Test
  void aLineLeftOutAfterTheFillIsSaidOnPagesWhoseRowsStay() throws Exception {
    Path changed =
        Macro.worked(
            SAMPLE,
            "doc.Sheets(0).getCellByPosition(%d, %d).String = \"no\""
                .formatted(includeColumn(), FIRST_LINE),
            folder);

    assertThat(notices(SAMPLE)).hasSize(5).allMatch(String::isEmpty);
    assertThat(notices(changed)).hasSize(5).allMatch(notice -> notice.contains("was changed"));
    assertThat(notices(again(changed).output())).hasSize(5).allMatch(String::isEmpty);
  }

  @Test
  void insertedRowFilledDownIsComputedAndCountsInTheTotals() throws Exception {
    // the waiting room's walls once more, 4 ft longer: 682 ft² + 2 x 4 x 9 ft²
    Path inserted =
        Macro.worked(
            SAMPLE,
            """
            Set sheet = doc.Sheets(0)
            sheet.Rows.insertByIndex(%2$d, 1)
            Set above = sheet.getCellRangeByPosition(0, %1$d, %3$d, %1$d)
            sheet.copyRange(sheet.getCellByPosition(0, %2$d).CellAddress, above.RangeAddress)
            sheet.getCellByPosition(0, %2$d).String = "Waiting room, annex"
            sheet.getCellByPosition(4, %2$d).Value = 28
            """
                .formatted(FIRST_LINE, FIRST_LINE + 1, lastColumn()),
            folder);

    double added = figure(inserted, FIRST_LINE + 1, "Net area");
    assertThat(added).isCloseTo(754, within(SAME));
    assertThat(figure(inserted, FIRST_LINE + 1, "Paint ("))
        .isCloseTo(figure(inserted, FIRST_LINE, "Paint (") * 754 / 682, within(SAME));
    assertThat(total(inserted, "Net area") - total(SAMPLE, "Net area"))
        .as("totals take whole columns")
        .isCloseTo(754, within(1e-6));
    Map<String, String> before = lines(SAMPLE);
    assertThat(lines(inserted)).containsAllEntriesOf(before).hasSize(before.size() + 1);

    FillReport again = again(inserted);
    assertThat(found(again, "overridden-by-hand")).isEmpty();
    assertThat(again.rows())
        .isEqualTo(BidReader.read(SAMPLE).bid().sheets().get(0).lines().size() + 1);
    assertThat(figure(again.output(), FIRST_LINE + 1, "Net area")).isCloseTo(754, within(SAME));
  }

  @Test
  void insertedColumnLeavesAllFiguresRight() throws Exception {
    Path inserted = Macro.worked(SAMPLE, "doc.Sheets(0).Columns.insertByIndex(3, 1)", folder);

    assertThat(lines(inserted).values()).containsExactlyElementsOf(lines(SAMPLE).values());
    assertThat(found(again(inserted), "overridden-by-hand")).isEmpty();
  }

  @Test
  void protectedResultOpensWithItsPassword() throws Exception {
    Path bid = Files.copy(Path.of("sample-workbooks/gym-hall.xlsx"), folder.resolve("gym.xlsx"));
    FillJob job = new FillJob(LocalDate.of(2026, 1, 5), "test", false);
    Path plain = folder.resolve("plain.xlsx");
    job.fill(bid, plain);
    Locked.with("Rollo & Düse", EncryptionMode.agile, bid);
    Path filled = folder.resolve("gym-filled.xlsx");
    job.with(new Passwords(List.of("Rollo & Düse"))).fill(bid, filled);

    Path opened = Macro.worked(filled, "Rollo & Düse", "", folder);

    assertThat(differences(numbers(plain, "Summary"), numbers(opened, "Summary"))).isEmpty();
  }

  private FillReport again(Path file) {
    return new FillJob(LocalDate.of(2026, 1, 6), "test", false)
        .fill(file, folder.resolve("again.xlsx"));
  }

  private static List<String> found(FillReport report, String check) {
    return report.located().stream()
        .filter(each -> each.finding().check().equals(check))
        .map(each -> each.finding().message())
        .toList();
  }

  /** By what the estimator wrote in a line, the figures beside it, in the digits that are shown. */
  private static Map<String, String> lines(Path file) throws IOException {
    Map<String, String> lines = new TreeMap<>();
    try (XSSFWorkbook book = open(file)) {
      Sheet sheet = book.getSheetAt(0);
      int ours = column(sheet, "Net area");
      for (Row row : sheet) {
        if (row.getRowNum() >= FIRST_LINE && isLine(row, ours)) {
          String inputs = text(row, 0, ours);
          lines.merge(inputs, text(row, ours, column(sheet, "Findings")), (a, b) -> a + " / " + b);
        }
      }
    }
    return lines;
  }

  private static String text(Row row, int from, int to) {
    List<String> cells = new ArrayList<>();
    for (int i = from; i < to; i++) {
      Cell cell = row.getCell(i);
      cells.add(cell == null ? "" : shown(cell));
    }
    return String.join("|", cells).replaceAll("\\|+", "|");
  }

  private static String shown(Cell cell) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC -> "%.9g".formatted(cell.getNumericCellValue());
      case STRING -> cell.getStringCellValue();
      default -> new DataFormatter().formatCellValue(cell);
    };
  }

  private static List<String> firstCells(Path file) throws IOException {
    try (XSSFWorkbook book = open(file)) {
      List<String> cells = new ArrayList<>();
      book.getSheetAt(0).forEach(row -> cells.add(text(row, 0, 6)));
      return cells;
    }
  }

  private static Map<String, Double> numbers(Path file, String name) throws IOException {
    Map<String, Double> numbers = new TreeMap<>();
    try (XSSFWorkbook book = open(file)) {
      for (Row row : book.getSheet(name)) {
        for (Cell cell : row) {
          boolean number =
              cell.getCellType() == CellType.NUMERIC
                  || (cell.getCellType() == CellType.FORMULA
                      && cell.getCachedFormulaResultType() == CellType.NUMERIC);
          if (number) {
            numbers.put(cell.getAddress().toString(), cell.getNumericCellValue());
          }
        }
      }
    }
    return numbers;
  }

  private static List<String> differences(Map<String, Double> one, Map<String, Double> other) {
    List<String> differences = new ArrayList<>();
    one.forEach(
        (at, number) -> {
          double there = other.getOrDefault(at, Double.NaN);
          if (!(Math.abs(there - number) <= SAME * Math.max(1, Math.abs(number)))) {
            differences.add(at + ": " + number + " became " + there);
          }
        });
    return differences;
  }

  private static double figure(Path file, int row, String heading) throws IOException {
    try (XSSFWorkbook book = open(file)) {
      Sheet sheet = book.getSheetAt(0);
      return sheet.getRow(row).getCell(column(sheet, heading)).getNumericCellValue();
    }
  }

  /** A total among those at the top of Basis. */
  private static double total(Path file, String label) throws IOException {
    try (XSSFWorkbook book = open(file)) {
      for (Row row : book.getSheet("Basis")) {
        Cell first = row.getCell(0);
        if (first != null && first.toString().equals(label) && row.getCell(3) != null) {
          return row.getCell(3).getNumericCellValue();
        }
      }
    }
    throw new AssertionError("no total of " + label);
  }

  /** What pages say when the bid was changed after it was filled. */
  private static List<String> notices(Path file) throws IOException {
    List<String> notices = new ArrayList<>();
    try (XSSFWorkbook book = open(file)) {
      for (String page : List.of("Summary", "How sure", "Offer", "Plan")) {
        notices.add(shown(book.getSheet(page).getRow(2).getCell(0)));
      }
      notices.add(shown(book.getSheet("Crew").getRow(1).getCell(4)));
    }
    return notices;
  }

  private static int includeColumn() throws IOException {
    try (XSSFWorkbook book = open(SAMPLE)) {
      return column(book.getSheetAt(0), "Include");
    }
  }

  private static int lastColumn() throws IOException {
    try (XSSFWorkbook book = open(SAMPLE)) {
      return column(book.getSheetAt(0), "Findings");
    }
  }

  private static int lastLine() throws IOException {
    try (XSSFWorkbook book = open(SAMPLE)) {
      Sheet sheet = book.getSheetAt(0);
      int ours = column(sheet, "Net area");
      int last = 0;
      for (Row row : sheet) {
        last = row.getRowNum() >= FIRST_LINE && isLine(row, ours) ? row.getRowNum() : last;
      }
      return last;
    }
  }

  private static boolean isLine(Row row, int ours) {
    Cell cell = row.getCell(ours);
    return cell != null && cell.getCellType() == CellType.FORMULA;
  }

  private static int column(Sheet sheet, String heading) {
    int found = -1;
    for (Cell cell : sheet.getRow(HEADINGS)) {
      if (cell.toString().startsWith(heading)) {
        found = cell.getColumnIndex();
      }
    }
    return found;
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
