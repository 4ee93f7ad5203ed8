package org.wetmil.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.wetmil.SmallBid;

/** Spaces right of the table, as pasted text leaves them, give way to what is filled. */
class SpacesBesideTest {
  /** The first column right of the small bid. */
  private static final int BESIDE = 7;

  @TempDir Path folder;

  /** Once refused as a fault of the program. */
  @ParameterizedTest
  @ValueSource(strings = {" ", "\u00a0", "\u2003 ", "\n"})
  void aCellOfSpacesGivesWay(String spaces) throws IOException {
    Path output = folder.resolve("out.xlsx");
    Path bid =
        SmallBid.write(
            folder.resolve("job.xlsx"),
            workbook -> {
              XSSFSheet sheet = workbook.getSheetAt(0);
              sheet.getRow(0).createCell(BESIDE).setCellValue(spaces);
              sheet.getRow(2).createCell(BESIDE + 1).setCellValue(spaces);
            });

    FillReport report = new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(bid, output);

    assertThat(report.filled()).isEqualTo(2);
    try (InputStream in = Files.newInputStream(output);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFSheet sheet = workbook.getSheetAt(0);
      DataFormatter shown = new DataFormatter(Locale.ROOT);
      assertThat(shown.formatCellValue(sheet.getRow(0).getCell(BESIDE))).isNotBlank();
      assertThat(shown.formatCellValue(sheet.getRow(2).getCell(BESIDE + 1))).isNotBlank();
    }
  }
}
