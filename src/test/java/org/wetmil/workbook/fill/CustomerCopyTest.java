package org.wetmil.workbook.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillReport;

class CustomerCopyTest {
  private static final Path CLINIC = Path.of("sample-workbooks", "clinic-refit.xlsx");

  @TempDir Path folder;

  @Test
  void customerSeesThePriceAndTheScopeAndNothingElse() throws IOException {
    Path copy = folder.resolve("copy.xlsx");
    FillReport report = job().fill(CLINIC, folder.resolve("filled.xlsx"), copy);

    try (InputStream in = Files.newInputStream(copy);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      assertThat(workbook.getNumberOfSheets()).isEqualTo(1);
      assertThat(workbook.getAllNames()).allMatch(name -> name.getNameName().startsWith("_xlnm."));
      assertThat(workbook.getSheetAt(0).getCellComments()).isEmpty();
      assertThat(
              workbook
                  .getProperties()
                  .getCustomProperties()
                  .getUnderlyingProperties()
                  .sizeOfPropertyArray())
          .isZero();
      List<String> texts = new ArrayList<>();
      List<Double> numbers = new ArrayList<>();
      for (Row row : workbook.getSheetAt(0)) {
        for (Cell cell : row) {
          assertThat(cell.getCellType()).isNotEqualTo(CellType.FORMULA);
          if (cell.getCellType() == CellType.NUMERIC) {
            numbers.add(cell.getNumericCellValue());
          } else {
            texts.add(cell.toString());
          }
        }
      }
      var price = report.price().price().orElseThrow();
      assertThat(numbers).contains(price.total().doubleValue()).doesNotContain(report.hours());
      assertThat(numbers).doesNotContain(price.direct().doubleValue(), 0.0);
      assertThat(String.join("\n", texts))
          .contains("Waiting room", "Meadow Matt, Oat", "This price holds for 30 days")
          .contains("Plant room, Ground: pipes (not priced yet)")
          // openings take the whole wall: the customer is not offered 0 ft2
          .contains("Staff room, First: walls (not priced yet)")
          .doesNotContain("517", "clinic-refit", "psi", "Overhead", "Labour");
    }
  }

  @Test
  void noCopyWithoutPrice() throws IOException {
    Path bid = folder.resolve("bid.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      var sheet = workbook.createSheet("Bid");
      String[][] cells = {{"Surface", "Coating", "Area (ft²)"}, {"walls", "latex", "100"}};
      for (int r = 0; r < cells.length; r++) {
        for (int c = 0; c < 3; c++) {
          var row = sheet.getRow(r) == null ? sheet.createRow(r) : sheet.getRow(r);
          row.createCell(c).setCellValue(cells[r][c]);
        }
      }
      try (var out = Files.newOutputStream(bid)) {
        workbook.write(out);
      }
    }
    Path copy = folder.resolve("copy.xlsx");

    FillReport report = job().fill(bid, folder.resolve("filled.xlsx"), copy);

    assertThat(copy).doesNotExist();
    assertThat(report.price().price()).isEmpty();
  }

  private static FillJob job() {
    return new FillJob(LocalDate.of(2026, 1, 5), "test", false);
  }
}
