package org.wetmil.workbook.fill.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.wetmil.workbook.look.Canvas;

/** Rows are 15 points high, a page holds 46 of them; the headings stand in row 7. */
class BidBreaksTest {
  private static final int HEADING = 7;

  private XSSFWorkbook workbook;
  private XSSFSheet sheet;

  @BeforeEach
  void open() {
    workbook = new XSSFWorkbook();
    sheet = workbook.createSheet("Bid");
  }

  @AfterEach
  void close() throws IOException {
    workbook.close();
  }

  @Test
  void whatNearlyFitsIsOnePage() {
    set(List.of(8, 20), 30, 53);

    assertThat(sheet.getRowBreaks()).isEmpty();
    assertThat(sheet.getPrintSetup().getFitHeight()).isEqualTo((short) 1);
    assertThat(sheet.getRepeatingRows()).isNull();
  }

  /** One row more, and the last room goes over with what closes the bid. */
  @Test
  void lastRoomGoesOverWithThePriceAndTheSignature() {
    set(List.of(8, 20), 30, 54);

    assertThat(sheet.getRowBreaks()).containsExactly(19);
    assertThat(sheet.getRepeatingRows().formatAsString()).isEqualTo("8:8");
  }

  @Test
  void roomsStayWholeOverManyPages() {
    // 46 rows with the top; then 45 below the headings
    set(List.of(8, 26, 46, 66, 86, 95), 100, 125);

    assertThat(sheet.getRowBreaks()).containsExactly(45, 85);
  }

  @Test
  void closingStandsAloneWhereTheLastRoomIsTooLong() {
    set(List.of(8), 40, 60);

    assertThat(sheet.getRowBreaks()).containsExactly(39);
  }

  @Test
  void heightsOfRowsCount() {
    Canvas page = new Canvas(sheet).height(10, 400);
    new BidBreaks(page, HEADING).set(List.of(8, 20), 30, 40);

    assertThat(sheet.getRowBreaks()).containsExactly(19);
  }

  private void set(List<Integer> rooms, int closing, int end) {
    new BidBreaks(new Canvas(sheet), HEADING).set(rooms, closing, end);
  }
}
