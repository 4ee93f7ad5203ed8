package org.wetmil.workbook.fill.beside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.wetmil.estimate.FilledColumn;

/** Letter paper, landscape, with half an inch on either side, takes 102 characters at full size. */
class PrintStripsTest {
  private static final int FIRST = 8;
  private static final List<FilledColumn> COLUMNS =
      List.of(
          FilledColumn.NET_AREA,
          FilledColumn.TIP_CODE,
          FilledColumn.WET_FILM,
          FilledColumn.PAINT,
          FilledColumn.LABOUR,
          FilledColumn.SPRAY,
          FilledColumn.FINDINGS);

  private final XSSFWorkbook workbook = new XSSFWorkbook();

  @AfterEach
  void close() throws IOException {
    workbook.close();
  }

  @Test
  void eachPageHasWholeGroupsAndTheLastHasFindingsBesideHours() {
    XSSFSheet sheet = bid(100);
    new PrintStrips(sheet).part(FIRST, COLUMNS);

    // area and tip with film and paint; labour with findings; the break is after a column
    assertThat(sheet.getColumnBreaks()).containsExactlyInAnyOrder(FIRST - 1, FIRST + 3);
  }

  @Test
  void smallerPrintTakesFewerPages() {
    XSSFSheet sheet = bid(60);
    new PrintStrips(sheet).part(FIRST, COLUMNS);

    assertThat(sheet.getColumnBreaks()).containsExactly(FIRST - 1);
  }

  @Test
  void columnsRepeatedOnEachPageTakeTheirRoom() {
    XSSFSheet sheet = bid(100);
    sheet.setRepeatingColumns(CellRangeAddress.valueOf("A:C"));
    new PrintStrips(sheet).part(FIRST, COLUMNS);

    assertThat(sheet.getColumnBreaks()).containsExactlyInAnyOrder(FIRST - 1, FIRST + 1, FIRST + 5);
  }

  @Test
  void whatFitsOnAPageIsNotParted() {
    XSSFSheet sheet = bid(40);
    new PrintStrips(sheet).part(FIRST, COLUMNS);

    assertThat(sheet.getColumnBreaks()).isEmpty();
  }

  @Test
  void sheetFittedToAPageOrWithAPrintAreaIsLeftAlone() {
    XSSFSheet fitted = bid(100);
    fitted.setFitToPage(true);
    new PrintStrips(fitted).part(FIRST, COLUMNS);
    XSSFSheet chosen = bid(100);
    workbook.setPrintArea(workbook.getSheetIndex(chosen), 0, FIRST - 1, 0, 9);
    new PrintStrips(chosen).part(FIRST, COLUMNS);

    assertThat(fitted.getColumnBreaks()).isEmpty();
    assertThat(chosen.getColumnBreaks()).isEmpty();
  }

  @Test
  void breaksOfAnEarlierFillGoAndThoseOfTheEstimatorStay() {
    XSSFSheet sheet = bid(100);
    sheet.setColumnBreak(4);
    new PrintStrips(sheet).part(FIRST, COLUMNS);
    new PrintStrips(sheet).clear(FIRST, FIRST + COLUMNS.size() - 1);

    assertThat(sheet.getColumnBreaks()).containsExactly(4);
  }

  /** Eight columns of the estimator's and seven of ours; the hours of spraying are folded away. */
  private XSSFSheet bid(int scale) {
    XSSFSheet sheet = workbook.createSheet();
    int[] widths = {10, 10, 10, 10, 10, 10, 10, 10, 20, 20, 20, 20, 20, 200, 60};
    for (int i = 0; i < widths.length; i++) {
      sheet.setColumnWidth(i, widths[i] * 256);
    }
    sheet.setColumnHidden(FIRST + 5, true);
    sheet.getPrintSetup().setPaperSize(PrintSetup.LETTER_PAPERSIZE);
    sheet.getPrintSetup().setLandscape(true);
    sheet.getPrintSetup().setScale((short) scale);
    sheet.setMargin(PageMargin.LEFT, 0.5);
    sheet.setMargin(PageMargin.RIGHT, 0.5);
    return sheet;
  }
}
