package org.wetmil.workbook.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.checks.Spot;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.NewWorkbook;
import org.wetmil.workbook.look.FindingsList.Column;

/** The list of findings that all workbooks share. */
class FindingsListTest {
  @TempDir Path folder;

  @Test
  void findingsBeyondTheMostAreCountedInTheLastRow() throws IOException {
    assertThat(messages(3, 5))
        .containsExactly(
            "Finding",
            "number 0",
            "number 1",
            "number 2",
            "Findings lists the first 3 of 5, worst first; 2 more are printed by the run and not"
                + " listed.");
  }

  @Test
  void asManyAsTheMostAreListedWithoutAWord() throws IOException {
    assertThat(messages(3, 3)).containsExactly("Finding", "number 0", "number 1", "number 2");
  }

  @Test
  void pagesSayTheSameOfAListThatIsCutShort() {
    assertThat(FindingsList.leftOut(FindingsList.MOST)).isEmpty();
    assertThat(FindingsList.leftOut(FindingsList.MOST + 1234))
        .hasValue(
            "Findings lists the first 50,000 of 51,234, worst first; 1,234 more are printed by the"
                + " run and not listed.");
  }

  private List<String> messages(int most, int count) throws IOException {
    Path file = folder.resolve(most + "-" + count + ".xlsx");
    try (LeanWorkbook workbook = new LeanWorkbook()) {
      FindingsList list =
          new FindingsList(
              new Look(workbook),
              List.of(Column.message(50), Column.why(30)),
              new FindingsList.Place(
                  List.of("Line"), List.of(9), (rows, finding) -> rows.text("here", null)),
              List.of(Column.LIMIT),
              most);
      list.write(workbook, workbook.createSheet("Findings"), findings(count));
      NewWorkbook.write(workbook, file, false);
    }
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      Sheet sheet = workbook.getSheetAt(0);
      Stream.Builder<String> messages = Stream.builder();
      for (Row row : sheet) {
        messages.add(row.getCell(1).getStringCellValue());
      }
      return messages.build().toList();
    }
  }

  private static List<Finding> findings(int count) {
    return Stream.iterate(0, i -> i + 1)
        .limit(count)
        .map(
            i ->
                new Finding(
                    "ledger-empty",
                    Severity.WARNING,
                    new Spot("l.csv", i, null, ""),
                    "",
                    "",
                    "",
                    "",
                    "number " + i))
        .toList();
  }
}
