package org.wetmil.workbook.fill.page;

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
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.jobs.FillJob;

class LimitsPageTest {
  @TempDir Path folder;

  @Test
  void gaugeReadingsAndSolventsAreJudged() throws IOException {
    assertThat(texts("gym-hall.xlsx"))
        .contains(
            "Changing room A",
            "160 to 240",
            "average inside, 1 spot outside",
            "Harbour Wall",
            "not over, 2004/42/CE")
        .doesNotContain("Outside");
  }

  @Test
  void withoutAnythingToJudgeThereIsNoPage() throws IOException {
    assertThat(texts("clinic-refit.xlsx")).isEmpty();
  }

  private List<String> texts(String sample) throws IOException {
    Path filled = folder.resolve("filled.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false)
        .fill(Path.of("sample-workbooks", sample), filled);
    List<String> texts = new ArrayList<>();
    try (InputStream in = Files.newInputStream(filled);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFSheet page = workbook.getSheet("Limits");
      if (page != null) {
        for (Row row : page) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.STRING) {
              texts.add(cell.getStringCellValue());
            }
          }
        }
      }
    }
    return texts;
  }
}
