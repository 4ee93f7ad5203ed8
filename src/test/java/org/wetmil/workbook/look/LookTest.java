package org.wetmil.workbook.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;

class LookTest {

  /** Both have no decimals; they were once made under one name. */
  @Test
  void aLargeFigureIsNotTheStyleOfANumberCutToSixDigits() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Look look = new Look(workbook);
      XSSFCellStyle cut = look.shortened(1_234_567.8);
      XSSFCellStyle large = look.figure(0);

      assertThat(cut.getDataFormatString()).isEqualTo("0");
      assertThat(large.getDataFormatString()).isEqualTo("#,##0");
      assertThat(large.getFont().getFontHeightInPoints())
          .isGreaterThan(cut.getFont().getFontHeightInPoints());
    }
  }
}
