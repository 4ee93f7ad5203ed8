package org.wetmil.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.ConditionalFormattingRule;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFRichTextString;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.samples.CellDump;

/** A filled workbook filled again: what is ours is replaced, what is the estimator's stays. */
class FillAgainTest {
  /** The input's name and SHA-256, and the job, which is the file's name where none is stated. */
  private static final String ABOUT_THE_INPUT = "(Basis![A-D]\\d+: null became|Summary!A2:) .*";

  private static final Path SAMPLE = Path.of("sample-workbooks/clinic-refit.xlsx");
  private static final FillJob JOB = new FillJob(LocalDate.of(2026, 1, 5), "test", false);

  @TempDir static Path shared;
  private static Path once;
  private static Path twice;

  @TempDir Path folder;

  @BeforeAll
  static void fillTheSampleTwice() {
    once = shared.resolve("1.xlsx");
    JOB.fill(SAMPLE, once);
    twice = shared.resolve("2.xlsx");
    JOB.fill(once, twice);
  }

  @Test
  void threeTimesInARowGivesTheFiguresOfTheOriginal() throws IOException {
    Path thrice = fill(twice, "3.xlsx");

    for (Path again : List.of(twice, thrice)) {
      assertThat(CellDump.differences(CellDump.of(once), CellDump.of(again)))
          .as("one line of the list of fills for each, and the title of the summary")
          .hasSize(again.equals(twice) ? 5 : 9)
          .allMatch(difference -> difference.matches(ABOUT_THE_INPUT));
      assertThat(furniture(again)).isEqualTo(furniture(once));
    }
  }

  @Test
  void theCellsOfTheEstimatorAreUnchanged() throws IOException {
    assertThat(CellDump.of(twice)).containsAllEntriesOf(CellDump.of(SAMPLE));
  }

  @Test
  void whatTheEstimatorWroteRoundOurColumnsStays() throws IOException {
    Path filled = fill(SmallBid.write(folder.resolve("job.xlsx")), "1.xlsx");
    int ours = heading(filled, "Net area (ft²)");
    int after = lastColumn(filled) + 1;
    Path edited =
        edit(
            filled,
            "2.xlsx",
            workbook -> {
              XSSFSheet bid = workbook.getSheet("Bid");
              SmallBid.row(bid, 8, "");
              bid.getRow(8).createCell(ours).setCellValue("my note below");
              bid.getRow(1).createCell(after).setCellFormula("2*" + address(ours, 1));
            });

    Path again = fill(edited, "3.xlsx");

    assertThat(heading(again, "Net area (ft²)")).as("the columns keep their place").isEqualTo(ours);
    assertThat(CellDump.of(again))
        .containsEntry("Bid!" + address(ours, 8), "my note below")
        .hasEntrySatisfying(
            "Bid!" + address(after, 1),
            text -> assertThat(text).startsWith("=2*" + address(ours, 1)));
  }

  @Test
  void rowsThatWereFilledDownAreReplacedToo() throws IOException {
    Path filled = fill(SmallBid.write(folder.resolve("job.xlsx")), "1.xlsx");
    int ours = heading(filled, "Net area (ft²)");
    Path edited =
        edit(
            filled,
            "2.xlsx",
            workbook -> {
              XSSFSheet bid = workbook.getSheet("Bid");
              SmallBid.row(bid, 4, "Hall", "ceiling", 20, 6, 9, "latex", "517");
              bid.getRow(4).createCell(ours).setCellValue(-1);
            });

    Path again = fill(edited, "3.xlsx");

    assertThat(heading(again, "Net area (ft²)")).isEqualTo(ours);
    assertThat(CellDump.of(again).get("Bid!" + address(ours, 4))).startsWith("=").contains("120.0");
  }

  @Test
  void marksOfTheEstimatorStay() throws IOException {
    Path bid =
        SmallBid.write(
            folder.resolve("job.xlsx"),
            workbook -> {
              XSSFSheet sheet = workbook.getSheetAt(0);
              note(sheet, new CellAddress("G3"), "mine, on a cell with a finding");
              note(sheet, new CellAddress("H3"), "mine, beside it");
              var formats = sheet.getSheetConditionalFormatting();
              ConditionalFormattingRule rule = formats.createConditionalFormattingRule("$C2>50");
              rule.createFontFormatting().setFontStyle(true, false);
              formats.addConditionalFormatting(
                  new CellRangeAddress[] {CellRangeAddress.valueOf("C2:C9")}, rule);
              workbook.getProperties().getCustomProperties().addProperty("Client", "invented");
              workbook.createName().setNameName("Mine");
              workbook.getName("Mine").setRefersToFormula("Bid!$A$1");
              workbook.createSheet("Findings").createRow(0).createCell(0).setCellValue("my own");
            });

    Map<String, String> again = furniture(fill(fill(bid, "1.xlsx"), "2.xlsx"));

    assertThat(again.get("sheets")).startsWith("[Bid, Findings, ").containsOnlyOnce("Findings 2");
    assertThat(again)
        .containsEntry("note Bid!G3", "mine, on a cell with a finding")
        .containsEntry("note Bid!H3", "mine, beside it")
        .containsKey("note Bid!F4")
        .containsEntry("property Client", "invented")
        .containsEntry("name Mine", "Bid!$A$1");
    assertThat(again.get("formats Bid")).contains("C2:C9 $C2>50");
  }

  private Path fill(Path input, String name) {
    Path output = folder.resolve(name);
    JOB.fill(input, output);
    return output;
  }

  private Path edit(Path file, String name, Consumer<XSSFWorkbook> change) throws IOException {
    Path edited = folder.resolve(name);
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in);
        OutputStream out = Files.newOutputStream(edited)) {
      change.accept(workbook);
      workbook.write(out);
    }
    return edited;
  }

  private static void note(XSSFSheet sheet, CellAddress at, String text) {
    var drawing = sheet.createDrawingPatriarch();
    XSSFComment note =
        drawing.createCellComment(
            drawing.createAnchor(
                0, 0, 0, 0, at.getColumn(), at.getRow(), at.getColumn() + 2, at.getRow() + 3));
    note.setAuthor("the estimator");
    note.setString(new XSSFRichTextString(text));
  }

  private static int heading(Path workbook, String heading) throws IOException {
    XSSFRow row = headings(workbook);
    for (var cell : row) {
      if (cell.getStringCellValue().equals(heading)) {
        return cell.getColumnIndex();
      }
    }
    throw new AssertionError("no heading " + heading);
  }

  private static int lastColumn(Path workbook) throws IOException {
    return headings(workbook).getLastCellNum() - 1;
  }

  private static XSSFRow headings(Path workbook) throws IOException {
    try (InputStream in = Files.newInputStream(workbook);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      return book.getSheet("Bid").getRow(0);
    }
  }

  private static String address(int column, int row) {
    return new CellAddress(row, column).formatAsString();
  }

  /** Whatever a workbook has besides cells, in words. */
  private static Map<String, String> furniture(Path file) throws IOException {
    Map<String, String> all = new TreeMap<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      List<String> sheets = new ArrayList<>();
      workbook.forEach(sheet -> sheets.add(sheet.getSheetName()));
      all.put("sheets", sheets.toString());
      for (var property :
          workbook
              .getProperties()
              .getCustomProperties()
              .getUnderlyingProperties()
              .getPropertyList()) {
        if (!property.getName().equals("Wetmil source")) {
          once(all, "property " + property.getName(), property.getLpwstr());
        }
      }
      for (var name : workbook.getAllNames()) {
        String scope = name.getSheetIndex() < 0 ? "" : name.getSheetIndex() + "!";
        // all of Basis grows with its list of fills
        if (!name.getRefersToFormula().matches("'?Basis'?!\\$A\\$1:.*")) {
          once(all, "name " + scope + name.getNameName(), name.getRefersToFormula());
        }
      }
      for (var each : workbook) {
        XSSFSheet sheet = (XSSFSheet) each;
        sheet
            .getCellComments()
            .forEach(
                (at, note) ->
                    once(
                        all,
                        "note " + sheet.getSheetName() + "!" + at,
                        note.getString().getString()));
        all.put("formats " + sheet.getSheetName(), formats(sheet).toString());
        all.put("columns " + sheet.getSheetName(), columns(sheet).toString());
      }
    }
    return all;
  }

  private static List<String> formats(XSSFSheet sheet) {
    List<String> formats = new ArrayList<>();
    for (var format : sheet.getCTWorksheet().getConditionalFormattingArray()) {
      for (var rule : format.getCfRuleArray()) {
        formats.add(format.getSqref() + " " + String.join("; ", rule.getFormulaArray()));
      }
    }
    return formats;
  }

  private static List<String> columns(XSSFSheet sheet) {
    List<String> columns = new ArrayList<>();
    long before = 0;
    for (var column : sheet.getCTWorksheet().getColsArray(0).getColArray()) {
      assertThat(column.getMin()).as("spans of columns that overlap").isGreaterThan(before);
      before = column.getMax();
      columns.add(
          column.getMin()
              + "-"
              + column.getMax()
              + ": "
              + column.getWidth()
              + " level "
              + column.getOutlineLevel()
              + (column.getHidden() ? " hidden" : ""));
    }
    return columns;
  }

  private static void once(Map<String, String> all, String key, String value) {
    assertThat(all.put(key, value)).as(key + " is there twice").isNull();
  }
}
