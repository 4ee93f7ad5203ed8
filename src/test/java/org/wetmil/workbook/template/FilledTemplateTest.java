package org.wetmil.workbook.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.wetmil.catalogue.Setting;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.jobs.FillJob;
import org.wetmil.jobs.FillReport;
import org.wetmil.jobs.TemplateJob;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.read.BidReader;
import org.wetmil.workbook.read.ReadWorkbook;

/** A template on its way from the estimator to the filled workbook. */
class FilledTemplateTest {
  @TempDir Path folder;

  /** What an estimator types into a template. */
  private interface Typing {
    void into(XSSFWorkbook workbook);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void fewTypedRowsAreFilledAndNothingElseIsFound(UnitSystem system) throws IOException {
    boolean us = system == UnitSystem.US;
    Path bid =
        typed(
            system,
            book -> {
              line(book, 1, "walls", us ? 24 : 7.3, us ? 18 : 5.5, us ? 9 : 2.7, "latex");
              line(book, 2, "ceiling", us ? 24 : 7.3, us ? 18 : 5.5, us ? 9 : 2.7, "latex");
              line(book, 7, "walls", us ? 12 : 3.6, us ? 10 : 3, us ? 9 : 2.7, "primer");
            });

    FillReport report = fill(bid);

    assertThat(report.rows()).isEqualTo(3);
    assertThat(report.filled()).isEqualTo(3);
    assertThat(report.system()).isEqualTo(system);
    assertThat(report.located())
        .extracting(found -> found.finding().spot().sheet())
        .as("of the job and of the lines, none of the sheets that were left blank")
        .isSubsetOf("", "Bid");
    assertThat(report.paintGal()).isBetween(2.0, 20.0);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void bothFamiliesGiveTheSameFigures(UnitSystem system) throws IOException {
    double foot = system == UnitSystem.US ? 1 : 0.3048;
    Path bid =
        typed(system, book -> line(book, 1, "walls", 24 * foot, 18 * foot, 9 * foot, "latex"));

    assertThat(fill(bid).bid().total(FilledColumn.NET_AREA)).isCloseTo(756, within());
  }

  private static Offset<Double> within() {
    return Offset.offset(1e-9);
  }

  @ParameterizedTest
  @EnumSource(UnitSystem.class)
  void exampleOfEachSheetIsReadWithoutAFinding(UnitSystem system) throws IOException {
    Path bid =
        typed(
            system,
            book -> {
              line(book, 1, "walls", 24, 18, 9, "latex");
              for (Tables table : Tables.values()) {
                example(book, table, Examples.of(table, system));
              }
            });

    ReadWorkbook read = BidReader.read(bid);

    assertThat(read.bid().problems()).isEmpty();
    assertThat(read.bid().remarks()).isEmpty();
    assertThat(read.bid().catalogue().coating("Meadow Matt").orNull()).isNotNull();
    assertThat(read.bid().catalogue().sprayer("Shop machine").orNull()).isNotNull();
    assertThat(read.bid().catalogue().tipsOnHand()).hasSize(1);
  }

  @Test
  void exampleMeansAboutTheSameInBothFamilies() throws IOException {
    double[] target = new double[2];
    for (UnitSystem system : UnitSystem.values()) {
      Path bid =
          typed(
              system,
              book -> {
                line(book, 1, "walls", 24, 18, 9, "latex");
                example(book, Tables.COATINGS, Examples.of(Tables.COATINGS, system));
              });
      target[system.ordinal()] =
          BidReader.read(bid)
              .bid()
              .catalogue()
              .coating("Meadow Matt")
              .orNull()
              .row()
              .number("Wet film target");
    }

    assertThat(target[0]).isEqualTo(4.6);
    assertThat(target[1]).isBetween(4.5, 4.6);
  }

  @Test
  void tableIsRecognisedAndTakesInTheFilledColumns() throws IOException {
    Path bid = typed(UnitSystem.US, book -> line(book, 1, "walls", 24, 18, 9, "latex"));

    assertThat(BidReader.read(bid).layouts().get(0).tables().get(0).excelTable())
        .contains("BidLines");
    Path filled = folder.resolve("filled.xlsx");
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(bid, filled);

    try (XSSFWorkbook book = open(filled)) {
      XSSFSheet sheet = book.getSheet("Bid");
      int last = InputColumn.values().length;
      XSSFTable table = sheet.getTables().get(0);
      assertThat(table.getColumnCount()).as("filled columns are of the table").isGreaterThan(last);
      assertThat(table.getCTTable().getAutoFilter().getRef())
          .isEqualTo(table.getCTTable().getRef());
      assertThat(sheet.getRow(0).getCell(last).getStringCellValue())
          .isEqualTo(FilledColumn.NET_AREA.heading(UnitSystem.US));
      assertThat(sheet.getDataValidations()).hasSize(last);
      assertThat(book.getName("list_coatings")).isNotNull();
    }
  }

  @Test
  void filledTemplateIsFilledAgain() throws IOException {
    Path bid = typed(UnitSystem.US, book -> line(book, 1, "walls", 24, 18, 9, "latex"));
    Path once = folder.resolve("once.xlsx");
    Path twice = folder.resolve("twice.xlsx");
    FillJob job = new FillJob(LocalDate.of(2026, 1, 5), "test", false);

    FillReport first = job.fill(bid, once);
    FillReport second = job.fill(once, twice);

    assertThat(second.paintGal()).isEqualTo(first.paintGal());
    assertThat(second.located()).hasSameSizeAs(first.located());
    try (XSSFWorkbook book = open(twice)) {
      assertThat(book.getSheet("Coatings").getCellComments()).hasSize(1);
    }
  }

  @Test
  void blankTemplateIsRefusedAsHoldingNoLine() throws IOException {
    Path blank = typed(UnitSystem.US, book -> {});

    assertThatThrownBy(() -> fill(blank))
        .isInstanceOf(WorkbookException.NoBid.class)
        .hasMessageContaining("no bid line was found under the headings on sheet \"Bid\"");
  }

  @Test
  void settingTypedBesideItsUnitIsTaken() throws IOException {
    Path bid =
        typed(
            UnitSystem.METRIC,
            book -> {
              line(book, 1, "walls", 7, 5, 2.7, "latex");
              for (var row : book.getSheet("Settings")) {
                switch (row.getCell(0).getStringCellValue()) {
                  case "Distance" -> row.getCell(1).setCellValue(25);
                  case "Waste" -> row.getCell(1).setCellValue(8);
                  case "Measuring rule" -> row.getCell(1).setCellValue("Solid");
                  default -> {}
                }
              }
            });

    ReadWorkbook read = BidReader.read(bid);

    assertThat(read.bid().problems()).isEmpty();
    List<Setting> settings = List.of(Setting.DISTANCE, Setting.WASTE);
    assertThat(settings)
        .extracting(setting -> read.bid().catalogue().number(setting))
        .containsExactly(25 / 2.54, 0.08);
    assertThat(read.bid().catalogue().text(Setting.MEASURING_RULE)).isEqualTo("Solid");
  }

  private Path typed(UnitSystem system, Typing typing) throws IOException {
    Path template = folder.resolve("template-" + system + ".xlsx");
    TemplateJob.write(template, system, true);
    Path bid = folder.resolve("bid-" + system + ".xlsx");
    try (XSSFWorkbook book = open(template);
        OutputStream out = Files.newOutputStream(bid)) {
      typing.into(book);
      book.write(out);
    }
    return bid;
  }

  private FillReport fill(Path bid) {
    return new FillJob(LocalDate.of(2026, 1, 5), "test", true)
        .fill(bid, folder.resolve("filled.xlsx"));
  }

  private static void line(
      XSSFWorkbook book,
      int row,
      String surface,
      double length,
      double width,
      double height,
      String coating) {
    XSSFRow cells = book.getSheet("Bid").getRow(row);
    cells.getCell(InputColumn.ROOM.ordinal()).setCellValue("Hall");
    cells.getCell(InputColumn.SURFACE.ordinal()).setCellValue(surface);
    cells.getCell(InputColumn.CONDITION.ordinal()).setCellValue("primed");
    cells.getCell(InputColumn.LENGTH.ordinal()).setCellValue(length);
    cells.getCell(InputColumn.WIDTH.ordinal()).setCellValue(width);
    cells.getCell(InputColumn.HEIGHT.ordinal()).setCellValue(height);
    cells.getCell(InputColumn.COATING.ordinal()).setCellValue(coating);
  }

  /** Types the first row of a sheet; a number as a number. */
  private static void example(XSSFWorkbook book, Tables table, Map<String, String> cells) {
    cells.forEach(
        (heading, text) -> {
          XSSFSheet sheet = book.getSheet(table.title());
          var cell = sheet.getRow(1).getCell(column(sheet, heading));
          if (text.matches("\\d+(\\.\\d+)?")) {
            cell.setCellValue(Double.parseDouble(text));
          } else {
            cell.setCellValue(text);
          }
        });
  }

  private static int column(XSSFSheet sheet, String heading) {
    for (var cell : sheet.getRow(0)) {
      String text = cell.getStringCellValue();
      if (text.equals(heading) || text.startsWith(heading + " (")) {
        return cell.getColumnIndex();
      }
    }
    throw new IllegalArgumentException(
        "no column "
            + heading
            + " on "
            + new CellReference(sheet.getSheetName(), 0, 0, true, true));
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
