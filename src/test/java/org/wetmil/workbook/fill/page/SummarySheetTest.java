package org.wetmil.workbook.fill.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.jobs.FillJob;
import org.wetmil.workbook.read.Book;

class SummarySheetTest {
  @TempDir Path folder;

  @Test
  void likelyEndsHaveTheirThousandsParted() throws IOException {
    Path bid =
        new Book()
            .sheet("Bid")
            .row("Room", "Surface", "Coating", "Area (ft²)")
            .row("Hangar", "walls", "latex", 900_000)
            .write(folder);
    Path filled = folder.resolve("filled.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(bid, filled);

    try (InputStream in = Files.newInputStream(filled);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFRow row = workbook.getSheet("Summary").getRow(5);
      for (int column : List.of(2, SummarySheet.LABEL)) {
        XSSFCell cell = row.getCell(column);
        assertThat(cell.getStringCellValue()).matches("likely \\d,\\d{3} to \\d{1,2},\\d{3}");
        assertThat(workbook.getCreationHelper().createFormulaEvaluator().evaluate(cell))
            .extracting(value -> value.getStringValue())
            .isEqualTo(cell.getStringCellValue());
      }
    }
  }
}
