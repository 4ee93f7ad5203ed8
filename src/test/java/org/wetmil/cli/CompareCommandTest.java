package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.workbook.Locked;
import org.wetmil.workbook.read.Book;

class CompareCommandTest {
  @TempDir Path folder;

  private Path a;

  @BeforeEach
  void writeFirst() {
    a = SmallBid.write(folder.resolve("a.xlsx"));
  }

  @Test
  void oneLengthIsNamedWithItsCellAndWhatItMakes() throws IOException {
    Path b = version(book -> cell(book, 1, 2).setCellValue(15));

    Ran ran = Ran.of("compare", a, b);

    assertThat(ran.code()).isEqualTo(ExitCode.DONE);
    assertThat(ran.out()).contains("      Length: 12 ft -> 15 ft (Bid!C2)");
    assertThat(ran.out()).anyMatch(line -> line.contains("Office, walls, latex: area +54.0"));
    assertThat(ran.out()).noneMatch(line -> line.contains("only in"));
    assertThat(ran.out()).anyMatch(line -> line.startsWith("Each figure is rounded by itself"));
    assertThat(folder.resolve("b-compared.xlsx")).exists();
  }

  @Test
  void filledAndUnfilledVersionsOfOneBidAreTheSame() {
    Path filled = folder.resolve("filled.xlsx");
    Ran.fill(a, "--out", filled);

    Ran ran = Ran.of("compare", a, filled, "--out", folder.resolve("out.xlsx"));

    assertThat(ran.out()).anyMatch(line -> line.startsWith("Nothing is different"));
    assertThat(ran.out()).anyMatch(line -> line.matches("Paint .*\\+0\\.00 gal"));
  }

  @Test
  void filledSampleAndItsBidAreTheSame() {
    Ran ran =
        Ran.of(
            "compare",
            Path.of("sample-workbooks/clinic-refit.xlsx"),
            Path.of("sample-workbooks/clinic-refit-filled.xlsx"),
            "--out",
            folder.resolve("out.xlsx"));

    assertThat(ran.out()).anyMatch(line -> line.startsWith("Nothing is different"));
  }

  @Test
  void metricTwinDiffersByNoMoreThanItsRounding() {
    Path metric =
        version(
            book -> {
              book.getSheetAt(0).removeRow(book.getSheetAt(0).getRow(0));
              SmallBid.row(
                  book.getSheetAt(0),
                  0,
                  "Room",
                  "Surface",
                  "Length (m)",
                  "Width (m)",
                  "Height (m)",
                  "Coating",
                  "Tip");
              for (int row = 1; row <= 3; row++) {
                for (int column = 2; column <= 4; column++) {
                  Cell cell = cell(book, row, column);
                  cell.setCellValue(Math.round(cell.getNumericCellValue() * 30.48) / 100.0);
                }
              }
            });

    Ran ran = Ran.of("compare", a, metric);

    assertThat(ran.out()).anyMatch(line -> line.startsWith("A is in US units and B in metric"));
    assertThat(ran.out()).noneMatch(line -> line.contains("->"));
  }

  @Test
  void currenciesThatDifferAreSaidAndNotCompared() {
    Path euro = version(book -> settings(book, "Currency", "EUR"));
    Path dollar = folder.resolve("c.xlsx");
    SmallBid.write(dollar, book -> settings(book, "Currency", "USD"));

    Ran ran = Ran.of("compare", dollar, euro);

    assertThat(ran.out()).anyMatch(line -> line.startsWith("A is in USD and B in EUR"));
    assertThat(ran.out()).noneMatch(line -> line.startsWith("Price before tax"));
  }

  @Test
  void differencesAndTotalsOfTheSheetAreFormulas() throws IOException {
    Path b = version(book -> cell(book, 1, 2).setCellValue(15));
    Ran.of("compare", a, b);
    try (InputStream in = Files.newInputStream(folder.resolve("b-compared.xlsx"));
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      assertThat(book.getNumberOfSheets()).isEqualTo(1);
      XSSFSheet sheet = book.getSheet("Compared");
      assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
      var evaluator = book.getCreationHelper().createFormulaEvaluator();
      int formulas = 0;
      for (Row row : sheet) {
        for (Cell cell : row) {
          if (cell.getCellType() == CellType.FORMULA) {
            double stored = cell.getNumericCellValue();
            double computed = evaluator.evaluate(cell).getNumberValue();
            assertThat(computed).isCloseTo(stored, org.assertj.core.api.Assertions.within(1e-8));
            formulas++;
          }
        }
      }
      assertThat(formulas).isGreaterThanOrEqualTo(7);
    }
  }

  @Test
  void ofTablesSideBySideTheCellOfTheOneIsNamed() throws IOException {
    Path before = Files.createDirectory(folder.resolve("before"));
    Ran ran = Ran.of("compare", sideBySide(before, 210), sideBySide(folder, 250));

    assertThat(ran.out())
        .anyMatch(line -> line.matches(".*Bid!F2 .*East 1.*"))
        .anyMatch(line -> line.matches(".*Area: .*250.*\\(Bid!I2\\)"));
  }

  private static Path sideBySide(Path into, int area) {
    String[] headings = {"Room", "Surface", "Coating", "Area (ft²)"};
    return new Book()
        .sheet("Bid")
        .row(
            Stream.of(Stream.of(headings), Stream.of((Object) null), Stream.of(headings))
                .flatMap(each -> each)
                .toArray())
        .row("West 1", "walls", "latex", 110, null, "East 1", "ceiling", "primer", area)
        .row("West 2", "walls", "latex", 120, null, "East 2", "ceiling", "primer", 220)
        .write(into);
  }

  @Test
  void olderOutputStaysWithoutForce() throws IOException {
    Path b = version(book -> {});
    Path output = Files.writeString(folder.resolve("b-compared.xlsx"), "mine");

    assertThat(Ran.of("compare", a, b).code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(output).hasContent("mine");
    assertThat(Ran.of("compare", a, b, "--force").code()).isEqualTo(ExitCode.DONE);
  }

  @Test
  void whatIsNoWorkbookIsSaidInASentence() throws IOException {
    Path broken = Files.writeString(folder.resolve("broken.xlsx"), "no workbook");

    Ran ran = Ran.of("compare", a, broken);

    assertThat(ran.code()).isEqualTo(ExitCode.UNUSABLE);
    assertThat(ran.err()).hasSize(1);
    assertThat(ran.err().get(0)).startsWith(broken + ": ");
    assertThat(folder.resolve("broken-compared.xlsx")).doesNotExist();
    assertThat(Ran.of("compare", a, folder.resolve("none.xlsx")).code())
        .isEqualTo(ExitCode.UNUSABLE);
    assertThat(Ran.of("compare", a).code()).isEqualTo(2);
  }

  @Test
  void protectedBidIsPrintedAndWrittenOpenOnlyWhenAskedFor() throws IOException {
    Path b = Locked.with("word", version(book -> {}));
    Path words = Files.writeString(folder.resolve("words.txt"), "word");

    Ran ran = Ran.of("compare", a, b, "--password-file", words);

    assertThat(ran.code()).isEqualTo(ExitCode.DONE);
    assertThat(ran.out()).anyMatch(line -> line.startsWith("no workbook is written"));
    assertThat(folder.resolve("b-compared.xlsx")).doesNotExist();
    assertThat(Ran.of("compare", a, b).code()).isEqualTo(ExitCode.UNUSABLE);
  }

  @Test
  void comparisonInAFolderIsPassedOverByFill() {
    Ran.of("compare", a, version(book -> {}));

    Ran ran = Ran.fill(folder, "--out", folder.resolve("filled"));

    assertThat(ran.err()).anyMatch(line -> line.contains("it compares two versions of a bid"));
  }

  private Path version(Consumer<XSSFWorkbook> change) {
    return SmallBid.write(folder.resolve("b.xlsx"), change);
  }

  private static Cell cell(XSSFWorkbook book, int row, int column) {
    return book.getSheetAt(0).getRow(row).getCell(column);
  }

  private static void settings(XSSFWorkbook book, String name, String value) {
    XSSFSheet sheet = book.createSheet("Settings");
    SmallBid.row(sheet, 0, "Setting", "Value");
    SmallBid.row(sheet, 1, name, value);
  }
}
