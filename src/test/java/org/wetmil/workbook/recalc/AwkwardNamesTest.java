package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.jobs.FillJob;

/**
 * Sums by room, floor, coating and colour when names read as numbers, dates, wildcards or
 * operators, are spelt twice, or stand on sheets in other units.
 */
class AwkwardNamesTest {
  private static final Object[][] US = {
    {"Floor", "Room", "Surface", "Coating", "Colour", "Sheen", "Area (ft²)"},
    {1, 101, "walls", "latex", "white", "flat", 400},
    {"1", "101", "ceiling", "latex", "White ", "flat", 150},
    {1, "1-2", "walls", "latex", 7016, "-", 220},
    {"2", "1/2", "walls", "latex", "7016", "", 210},
    {2, "Exam*", "walls", "latex", "", "satin", 180},
    {"2", "Exam?", "walls", "latex", "a~b", "", 170},
    {"2", "Exam1", "walls", "primer", "<>", "", 160},
    {"", "=1", "walls", "primer", ">5", "", 140},
    {"-", "TRUE", "walls", "primer", "true", "", 130},
    {"n/a", "exam 1", "walls", "primer", "semi-gloss", "", 120},
    {"", "Exam-1", "walls", "primer", "semi gloss", "", 110},
    {"", "  Exam\n1 ", "walls", "lacquer", "x · y", "", 100},
    {"", "", "walls", "lacquer", "x", "y", 90},
    {"", "no coating", "walls", "", "", "", 80},
  };

  private static final Object[][] METRIC = {
    {"Floor", "Room", "Surface", "Coating", "Colour", "Sheen", "Area (m²)"},
    {1, 101, "walls", "latex", "white", "flat", 30},
    {"1", "Annex", "walls", "stain", "", "", 25},
    {"", "not measured", "walls", "stain", "", "", ""},
  };

  @TempDir Path folder;

  /**
   * Fills the bid.
   *
   * @param tilde whether a colour has one: the library does not undo its doubling in criteria
   */
  private Path fill(boolean tilde) throws IOException {
    Path bid = folder.resolve("bid.xlsx");
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      XSSFCellStyle date = workbook.createCellStyle();
      date.setDataFormat(workbook.createDataFormat().getFormat("d-mmm"));
      write(workbook.createSheet("House"), US);
      if (!tilde) {
        workbook.getSheet("House").getRow(6).getCell(4).setCellValue("ab");
      }
      // a room that the spreadsheet program took for a date
      XSSFRow row = workbook.getSheet("House").createRow(US.length);
      write(row, new Object[] {1, 46024, "walls", "latex", "", "", 60});
      row.getCell(1).setCellStyle(date);
      write(workbook.createSheet("Annex"), METRIC);
      try (OutputStream out = Files.newOutputStream(bid)) {
        workbook.write(out);
      }
    }
    Path filled = folder.resolve("filled.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(bid, filled);
    return filled;
  }

  private static void write(XSSFSheet sheet, Object[][] rows) {
    for (int i = 0; i < rows.length; i++) {
      write(sheet.createRow(i), rows[i]);
    }
  }

  private static void write(XSSFRow row, Object[] cells) {
    for (int i = 0; i < cells.length; i++) {
      XSSFCell cell = row.createCell(i);
      if (cells[i] instanceof Number number) {
        cell.setCellValue(number.doubleValue());
      } else if (!cells[i].equals("")) {
        cell.setCellValue(cells[i].toString());
      }
    }
  }

  @Test
  void spreadsheetLibraryComputesTheStoredValues() throws IOException {
    Path filled = fill(false);
    Map<String, Object> stored = Formulas.stored(filled);

    assertThat(stored).hasSizeGreaterThan(300);
    assertThat(Formulas.differences(stored, Formulas.evaluated(filled))).isEmpty();
  }

  @Test
  void libreOfficeComputesTheStoredValues() throws IOException, InterruptedException {
    Office.assumePresent();
    Path filled = fill(true);
    Map<String, Object> stored = Formulas.stored(filled);

    Path anew = Office.computed(List.of(filled), folder).get(0);

    assertThat(Formulas.differences(stored, Formulas.values(anew, stored.keySet()))).isEmpty();
  }
}
