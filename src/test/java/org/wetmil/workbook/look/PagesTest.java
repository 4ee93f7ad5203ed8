package org.wetmil.workbook.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PagesTest {
  /** Ten columns; the first stands on each page, which takes 196 characters. */
  @ParameterizedTest
  @CsvSource({"19, 1", "20, 2", "35, 2", "36, 3"})
  void aListTakesAsManyPagesSideBySideAsItIsReadOn(int width, int pages) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFSheet sheet = list(workbook, width);
      assertThat(sheet.getFitToPage()).isTrue();
      assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) pages);
      assertThat(sheet.getRepeatingRows()).isEqualTo(CellRangeAddress.valueOf("1:1"));
    }
  }

  @Test
  void eachOfSeveralPagesSaysWhatItsRowsAreAbout() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      assertThat(list(workbook, 25).getRepeatingColumns())
          .isEqualTo(CellRangeAddress.valueOf("A:A"));
      assertThat(list(workbook, 10).getRepeatingColumns()).isNull();
    }
  }

  private static XSSFSheet list(XSSFWorkbook workbook, int width) {
    XSSFSheet sheet = workbook.createSheet();
    for (int i = 0; i < 10; i++) {
      Pages.width(sheet, i, width);
    }
    Pages.list(sheet, 10, 40, 1);
    return sheet;
  }
}
