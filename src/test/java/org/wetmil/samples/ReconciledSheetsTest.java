package org.wetmil.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.checks.Checks;

/** The sheets of the reconciled month, as a bookkeeper and other programs read them. */
class ReconciledSheetsTest {
  private XSSFWorkbook book;

  @BeforeEach
  void open() throws IOException {
    try (InputStream in = Files.newInputStream(ReconciledMonth.TWIN)) {
      book = new XSSFWorkbook(in);
    }
  }

  @AfterEach
  void close() throws IOException {
    book.close();
  }

  @Test
  void theSheetsStandInTheirOrder() {
    List<String> names = new ArrayList<>();
    book.forEach(sheet -> names.add(sheet.getSheetName()));

    assertThat(names)
        .containsExactly(
            "Reconcile",
            "Ledger",
            "Unmatched",
            "By coating",
            "By job",
            "By month",
            "Findings",
            "Basis");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Ledger", "Unmatched", "By coating", "By job", "By month", "Findings"})
  void aListHasHeadingsInItsFirstRowThatStayAndAFilterOverAll(String name) {
    XSSFSheet sheet = book.getSheet(name);

    assertThat(sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 1);
    assertThat(sheet.getCTWorksheet().getAutoFilter().getRef())
        .startsWith("A1:")
        .endsWith(String.valueOf(sheet.getLastRowNum() + 1));
    for (Cell heading : sheet.getRow(0)) {
      assertThat(heading.getStringCellValue()).isNotBlank();
    }
    for (Row row : sheet) {
      assertThat((int) row.getLastCellNum()).isLessThanOrEqualTo(sheet.getRow(0).getLastCellNum());
    }
  }

  @Test
  void everyFindingHasItsCheckInItsColumn() {
    XSSFSheet sheet = book.getSheet("Findings");
    int at = sheet.getRow(0).getLastCellNum() - 1;
    assertThat(sheet.getRow(0).getCell(at).getStringCellValue()).isEqualTo("Check");
    for (int row = 1; row <= sheet.getLastRowNum(); row++) {
      assertThat(Checks.find(sheet.getRow(row).getCell(at).getStringCellValue())).isPresent();
    }
  }

  @Test
  void ledgerCarriesEveryLineOnceWithItsColumns() {
    assertThat(texts(book.getSheet("Ledger").getRow(0)))
        .containsExactly(
            "Date",
            "Job",
            "Item",
            "Coating",
            "Quantity",
            "Unit",
            "Volume (gal)",
            "Amount",
            "Currency",
            "Document",
            "Kind",
            "File",
            "Line",
            "State");
    assertThat(book.getSheet("Ledger").getLastRowNum()).isEqualTo(61);
    Row unreadable = lineOf(48);
    assertThat(unreadable.getCell(4).getStringCellValue()).isEqualTo("two");
    assertThat(unreadable.getCell(7).getNumericCellValue()).isEqualTo(276);
    assertThat(unreadable.getCell(13).getStringCellValue()).isEqualTo("unreadable");
  }

  @Test
  void unmatchedBeginsWithWhatIsToBeActedOnAndEndsWithOtherGoods() {
    List<String> reasons = new ArrayList<>();
    book.getSheet("Unmatched").forEach(row -> reasons.add(row.getCell(0).getStringCellValue()));

    assertThat(reasons.stream().distinct())
        .containsExactly(
            "Reason",
            "no such job",
            "no such coating in this bid",
            "ambiguous",
            "unknown unit",
            "unreadable",
            "not a coating");
  }

  @Test
  void theChartShowsBidAgainstUsedByCoating() {
    List<XSSFChart> charts = book.getSheet("Reconcile").getDrawingPatriarch().getCharts();

    assertThat(charts).hasSize(1);
    XDDFChartData.Series bid = charts.get(0).getChartSeries().get(0).getSeries(0);
    assertThat(bid.getValuesData().getDataRangeReference()).isEqualTo("'By coating'!$B$2:$B$11");
    assertThat(bid.getCategoryData().getPointAt(0)).isEqualTo("Meadow Matt");
    assertThat(((Number) bid.getValuesData().getPointAt(0)).doubleValue())
        .isCloseTo(
            book.getSheet("By coating").getRow(1).getCell(1).getNumericCellValue(), within(1e-9));
  }

  /** Epoxy grey, its quantity written as a word: two kits of 2 gal. */
  @Test
  void aLineThatTheBookkeeperMatchesByHandCounts() {
    Cell used = usedOf("Clinic refit (invented)", "two-part");
    double before = used.getNumericCellValue();

    Row line = lineOf(48);
    line.createCell(3).setCellValue("two-part");
    line.createCell(6).setCellValue(4);
    book.getCreationHelper().createFormulaEvaluator().evaluateFormulaCell(used);

    assertThat(used.getNumericCellValue()).isCloseTo(before + 4, within(1e-9));
  }

  private Row lineOf(int line) {
    for (Row row : book.getSheet("Ledger")) {
      Cell cell = row.getCell(12);
      if (cell.getCellType() == CellType.NUMERIC && cell.getNumericCellValue() == line) {
        return row;
      }
    }
    throw new AssertionError("no line " + line);
  }

  /** The cell under Used of the first block that holds the coating of the job: that of paint. */
  private Cell usedOf(String job, String coating) {
    int used = -1;
    for (Row row : book.getSheet("Reconcile")) {
      List<String> texts = texts(row);
      used = texts.contains("Used (gal)") ? texts.indexOf("Used (gal)") : used;
      if (used >= 0 && texts.get(0).equals(job) && texts.get(1).equals(coating)) {
        return row.getCell(used);
      }
    }
    throw new AssertionError("no row for " + coating);
  }

  private static List<String> texts(Row row) {
    List<String> texts = new ArrayList<>();
    row.forEach(
        cell -> texts.add(cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : ""));
    return texts;
  }
}
