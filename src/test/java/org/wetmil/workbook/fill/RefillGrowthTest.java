package org.wetmil.workbook.fill;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.jobs.FillJob;
import org.wetmil.workbook.opc.ZipPackage;

/** A workbook that is filled again and again neither grows nor loses what is the estimator's. */
class RefillGrowthTest {
  private static final long SOME_BYTES = 1_024;

  @TempDir Path folder;

  @Test
  void fiveFillsAreNoLargerThanTwo() throws IOException {
    List<Long> sizes = new ArrayList<>();
    List<List<String>> parts = new ArrayList<>();
    Path file = Path.of("sample-workbooks", "clinic-refit.xlsx");
    for (int i = 1; i <= 5; i++) {
      file = fill(file, "filled" + i + ".xlsx");
      sizes.add(Files.size(file));
      try (ZipPackage zip = ZipPackage.open(file)) {
        parts.add(zip.names().stream().sorted().toList());
      }
    }
    assertThat(sizes.get(4)).isBetween(sizes.get(1) - SOME_BYTES, sizes.get(1) + SOME_BYTES);
    assertThat(parts.get(4)).isEqualTo(parts.get(1));
  }

  @Test
  void theEstimatorsNoteBesideOneOfOursStays() throws IOException {
    // row 3 is the one whose tip is too coarse, so that its Tip gets a note of ours
    Path bid =
        SmallBid.write(
            folder.resolve("job.xlsx"), workbook -> note(workbook.getSheetAt(0), 2, 0, "mine"));
    Path once = fill(bid, "once.xlsx");
    Path twice = fill(once, "twice.xlsx");

    assertThat(notes(once)).contains("A3: mine").hasSizeGreaterThan(1);
    assertThat(notes(twice)).isEqualTo(notes(once));
    assertThat(shapes(twice)).isEqualTo(shapes(once));
  }

  private Path fill(Path input, String name) {
    Path output = folder.resolve(name);
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(input, output);
    return output;
  }

  private static void note(XSSFSheet sheet, int row, int column, String text) {
    XSSFClientAnchor anchor = new XSSFClientAnchor(0, 0, 0, 0, column, row, column + 2, row + 3);
    Comment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
    comment.setAddress(new CellAddress(row, column));
    comment.setString(sheet.getWorkbook().getCreationHelper().createRichTextString(text));
    comment.setAuthor("Estimator");
  }

  private static List<String> notes(Path file) throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(file.toString())) {
      return workbook.getSheetAt(0).getCellComments().entrySet().stream()
          .map(note -> note.getKey() + ": " + note.getValue().getString())
          .sorted()
          .toList();
    }
  }

  /** The boxes in which notes are shown. */
  private static long shapes(Path file) throws IOException {
    try (ZipPackage zip = ZipPackage.open(file)) {
      String part =
          zip.names().stream().filter(name -> name.endsWith(".vml")).findFirst().orElseThrow();
      String text = new String(zip.bytes(part).readAllBytes(), StandardCharsets.UTF_8);
      return text.split("<v:shape ", -1).length - 1L;
    }
  }
}
