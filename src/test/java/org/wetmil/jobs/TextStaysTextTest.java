package org.wetmil.jobs;

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
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;

/** What an estimator's cell says is never run: text that reads like a formula stays text. */
class TextStaysTextTest {
  private static final String EVIL = "=cmd(\"x\")&'*?~";

  @TempDir Path folder;

  @Test
  void textOfAnyCellIsTextInEverySheet() throws IOException {
    Path bid =
        SmallBid.write(
            folder.resolve("job.xlsx"),
            workbook -> {
              XSSFSheet sheet = workbook.getSheetAt(0);
              for (int row = 1; row < 4; row++) {
                sheet.getRow(row).getCell(0).setCellValue(EVIL + row);
                sheet.getRow(row).createCell(7).setCellValue(EVIL);
              }
              sheet.getRow(0).createCell(7).setCellValue("Notes");
              sheet.getRow(1).getCell(5).setCellValue(EVIL);
              sheet.getRow(3).getCell(1).setCellValue(EVIL + " walls");
              sheet.getRow(3).getCell(2).setCellValue(EVIL);
              XSSFSheet coatings = workbook.createSheet("Coatings");
              SmallBid.row(coatings, 0, "Coating", "Class", "Volume solids (%)");
              SmallBid.row(coatings, 1, EVIL, "latex", 40);
              XSSFSheet settings = workbook.createSheet("Settings");
              SmallBid.row(settings, 0, "Setting", "Value");
              SmallBid.row(settings, 1, "Job", EVIL);
              SmallBid.row(settings, 2, "Waste", EVIL);
            });
    Path output = folder.resolve("out.xlsx");

    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(bid, output);

    List<String> texts = new ArrayList<>();
    List<String> run = new ArrayList<>();
    try (InputStream in = Files.newInputStream(output);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            String place = sheet.getSheetName() + "!" + cell.getAddress();
            if (cell.getCellType() == CellType.FORMULA) {
              // within quotes it is a text that the formula compares with
              String outside = cell.getCellFormula().replaceAll("\"([^\"]|\"\")*\"", "");
              if (outside.contains("cmd")) {
                run.add(place);
              }
            } else if (cell.getCellType() == CellType.STRING
                && cell.getStringCellValue().contains("cmd")) {
              texts.add(sheet.getSheetName());
            }
          }
        }
      }
    }
    assertThat(run).isEmpty();
    assertThat(texts).contains("Bid", "Coatings", "Settings", "Findings", "Basis");
  }
}
