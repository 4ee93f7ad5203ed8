package org.wetmil.workbook.recalc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.jobs.FillJob;
import org.wetmil.workbook.WorkbookException;

/**
 * Workbooks at the limits of the format: the result still computes to what is stored, and holds no
 * formula that a spreadsheet program would refuse.
 */
class OddWorkbooksTest {
  /** Limits of a formula and of a text in it (specification of Excel's limits). */
  private static final int FORMULA = 8_192;

  private static final int QUOTED = 255;
  private static final Pattern TEXTS = Pattern.compile("\"((?:[^\"]|\"\")*)\"");

  @TempDir Path folder;

  @Test
  void aHundredSheetsAreAddedUp() throws IOException {
    holds(
        workbook -> {
          for (int i = 0; i < 100; i++) {
            workbook.cloneSheet(0, "It's a sheet of long name " + i);
          }
        });
  }

  @Test
  void aCoatingMayHaveALongName() throws IOException {
    String name = "x*?\"".repeat(100);
    holds(
        workbook -> {
          workbook.getSheetAt(0).getRow(1).getCell(5).setCellValue(name);
          XSSFSheet coatings = workbook.createSheet("Coatings");
          SmallBid.row(coatings, 0, "Coating", "Class", "Volume solids (%)");
          SmallBid.row(coatings, 1, name, "latex", 40);
        });
  }

  @Test
  void cellsMayBeNearlyFull() throws IOException {
    holds(
        workbook -> {
          workbook.getSheetAt(0).getRow(1).getCell(0).setCellValue("r".repeat(32_000));
          workbook.getSheetAt(0).getRow(3).getCell(5).setCellValue("c".repeat(32_000));
        });
  }

  @Test
  void aSheetMayHaveAnyNameAndBeProtected() throws IOException {
    holds(
        workbook -> {
          workbook.setSheetName(0, "It's #1 \"A\" & <b>!");
          workbook.getSheetAt(0).protectSheet("secret");
          workbook.lockStructure();
        });
  }

  @Test
  void numbersMayBeLargeOrSmallAndRowsFarDown() throws IOException {
    holds(
        workbook -> {
          XSSFSheet bid = workbook.getSheetAt(0);
          // more would leave of "left over", a difference of two large volumes, too few digits
          bid.getRow(1).getCell(2).setCellValue(1e4);
          bid.getRow(2).getCell(2).setCellValue(1e-9);
          SmallBid.row(bid, 1_048_575, "Attic", "walls", 12, 10, 9, "latex", "517");
        });
  }

  @Test
  void namesMayLookLikeOurs() throws IOException {
    holds(
        workbook -> {
          for (String each : List.of("WM_Waste", "wm_mine")) {
            XSSFName name = workbook.createName();
            name.setNameName(each);
            name.setRefersToFormula("Bid!$J$1");
          }
        });
  }

  @Test
  void columnsThatFindNoRoomAreSaid() {
    Path bid =
        SmallBid.write(
            folder.resolve("job.xlsx"),
            workbook -> workbook.getSheetAt(0).getRow(2).createCell(16_383).setCellValue("x"));

    assertThatThrownBy(() -> fill(bid))
        .isInstanceOf(WorkbookException.Unwritable.class)
        .hasMessageContaining("\"Bid\"")
        .hasMessageContaining("XFD");
    assertThat(folder).isDirectoryNotContaining("glob:**-filled*");
  }

  private Path fill(Path bid) {
    Path output = folder.resolve("job-filled.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(bid, output);
    return output;
  }

  private void holds(Consumer<XSSFWorkbook> change) throws IOException {
    Path output = fill(SmallBid.write(folder.resolve("job.xlsx"), change));

    Map<String, Object> stored = Formulas.stored(output);
    assertThat(stored).isNotEmpty();
    assertThat(Formulas.differences(stored, Formulas.evaluated(output))).isEmpty();
    try (InputStream in = Files.newInputStream(output);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              requireWithinLimits(cell.getCellFormula());
            }
          }
        }
      }
      workbook.getAllNames().forEach(name -> requireWithinLimits(name.getRefersToFormula()));
    }
  }

  private static void requireWithinLimits(String formula) {
    assertThat(formula).hasSizeLessThanOrEqualTo(FORMULA);
    Matcher texts = TEXTS.matcher(formula);
    while (texts.find()) {
      assertThat(texts.group(1).replace("\"\"", "\"")).hasSizeLessThanOrEqualTo(QUOTED);
    }
  }
}
