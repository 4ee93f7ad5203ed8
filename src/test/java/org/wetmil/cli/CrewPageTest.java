package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;

/** The page that the crew tapes to the wall. */
class CrewPageTest {
  @TempDir Path folder;

  @Test
  void aRemedyRunsAcrossThePageSoThatNoneIsCutOff() throws IOException {
    Path out = folder.resolve("out.xlsx");
    assertThat(Ran.fill(SmallBid.write(folder.resolve("bid.xlsx")), "--out", out).code()).isZero();
    try (XSSFWorkbook filled = new XSSFWorkbook(out.toString())) {
      XSSFSheet crew = filled.getSheet("Crew");
      int row = 0;
      while (!"Runs or sags".equals(text(crew, row))) {
        row++;
      }
      assertThat(crew.getMergedRegions()).contains(new CellRangeAddress(row, row, 1, 9));
    }
  }

  private static String text(XSSFSheet sheet, int row) {
    return sheet.getRow(row) == null || sheet.getRow(row).getCell(0) == null
        ? ""
        : sheet.getRow(row).getCell(0).getStringCellValue();
  }
}
