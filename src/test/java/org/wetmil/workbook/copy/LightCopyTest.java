package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.Locked;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.copy.CellContent.Formula;
import org.wetmil.workbook.copy.CellContent.Num;
import org.wetmil.workbook.copy.CellContent.Text;
import org.wetmil.workbook.opc.Passwords;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;

class LightCopyTest {
  private static final String SECOND_SHEET = "Notes of LightCopyTest";

  @TempDir Path folder;
  private Path input;
  private Path output;

  @BeforeEach
  void nameFiles() {
    input = folder.resolve("bid.xlsx");
    output = folder.resolve("filled.xlsx");
  }

  @Test
  void nothingOfTheOriginalChangesWhenNothingIsAdded() throws IOException {
    writeBid();
    byte[] before = Files.readAllBytes(input);

    Copies.write(input, output, workbook -> List.of());

    assertThat(Files.readAllBytes(input)).isEqualTo(before);
    assertSameMeaning();
  }

  @Test
  void addedCellsStandInTheirRowsInTheOrderOfTheColumns() throws IOException {
    writeBid();
    Copies.write(
        input,
        output,
        workbook -> {
          CellStyle style = workbook.createCellStyle();
          style.setFillForegroundColor(IndexedColors.LEMON_CHIFFON.getIndex());
          int index = style.getIndex();
          return List.of(
              Edits.adding(
                  "Bid",
                  row ->
                      List.of(
                          new AddedCell(1, index, new Num(row + 0.5)),
                          new AddedCell(5, index, new Text(" a & <b> ")),
                          new AddedCell(7, 0, new Formula("A1&\"<\"", new Text("x "))),
                          new AddedCell(8, 0, new Formula("C1*2", new Num(8))))));
        });

    try (XSSFWorkbook copy = open(output)) {
      XSSFRow row = copy.getSheet("Bid").getRow(1);
      assertThat(row.getCell(0).getStringCellValue()).isEqualTo("Lobby");
      assertThat(row.getCell(1).getNumericCellValue()).isEqualTo(1.5);
      assertThat(row.getCell(2).getNumericCellValue()).isEqualTo(4.25);
      assertThat(row.getCell(5).getStringCellValue()).isEqualTo(" a & <b> ");
      assertThat(row.getCell(7).getCellFormula()).isEqualTo("A1&\"<\"");
      assertThat(row.getCell(7).getStringCellValue()).isEqualTo("x ");
      assertThat(row.getCell(8).getNumericCellValue()).isEqualTo(8);
      assertThat(row.getCell(5).getCellStyle().getFillForegroundColor())
          .isEqualTo(IndexedColors.LEMON_CHIFFON.getIndex());
    }
    assertThat(cell("Bid", 1, 0)).isEqualTo(new RawCell(1, 0, CellKind.TEXT, "Lobby", null, 1));
  }

  @Test
  void textThatLooksLikeAFormulaStaysText() throws IOException {
    writeBid();
    add(new AddedCell(6, 0, new Text("=cmd()")));

    assertThat(cell("Bid", 0, 6)).isEqualTo(new RawCell(0, 6, CellKind.TEXT, "=cmd()", null, 0));
  }

  @Test
  void stringsOfNewSheetsFollowThoseOfTheOriginal() throws IOException {
    writeBid();
    Copies.write(
        input,
        output,
        workbook -> {
          XSSFRow row = workbook.createSheet("Findings").createRow(0);
          row.createCell(0).setCellValue("first of ours");
          row.createCell(1).setCellValue("Lobby");
          row.createCell(2).setCellValue(3);
          return List.of();
        });

    assertThat(cell("Findings", 0, 0).text()).isEqualTo("first of ours");
    assertThat(cell("Findings", 0, 1).text()).isEqualTo("Lobby");
    assertThat(cell("Findings", 0, 2).text()).isEqualTo("3.0");
    assertSameMeaning();
  }

  @Test
  void aFailingShaperLeavesNoFileBehind() throws IOException {
    writeBid();

    assertThatThrownBy(
            () ->
                Copies.write(
                    input,
                    output,
                    workbook -> {
                      throw new IllegalStateException("on purpose");
                    }))
        .hasMessage("on purpose");
    assertThat(folder).isDirectoryNotContaining(file -> !file.equals(input));
  }

  @Test
  void aCopyThatIsBegunAndNotWrittenLeavesNoFileBehind() throws IOException {
    writeBid();
    byte[] before = Files.readAllBytes(input);

    LightCopy.begin(input, Passwords.NONE, List.of(), output, false).close();

    assertThat(folder).isDirectoryNotContaining(file -> !file.equals(input));
    assertThat(Files.readAllBytes(input)).isEqualTo(before);
  }

  @Test
  void whatCannotBeOpenedIsSaidWhenTheCopyIsWritten() throws IOException {
    new HandMade(HandMade.sheet("<row r=\"1\"><c r=\"A1\"><v>1</v></c></row>"))
        .part("xl/styles.xml", "<styleSheet>")
        .write(input);

    try (LightCopy copy = LightCopy.begin(input, Passwords.NONE, List.of(), output, false)) {
      assertThatThrownBy(() -> copy.write(workbook -> List.of()))
          .isInstanceOf(WorkbookException.Damaged.class)
          .hasMessageContaining("xl/styles.xml");
    }
    assertThat(folder).isDirectoryNotContaining(file -> !file.equals(input));

    LightCopy.begin(input, Passwords.NONE, List.of(), output, false).close();
    assertThat(folder).isDirectoryNotContaining(file -> !file.equals(input));
  }

  private void add(AddedCell... cells) {
    Copies.write(input, output, workbook -> List.of(Edits.adding("Bid", row -> List.of(cells))));
  }

  private RawCell cell(String sheet, int row, int column) {
    try (PackageReader reader = PackageReader.open(output)) {
      return Meaning.cell(reader, sheet, row, column);
    }
  }

  private void assertSameMeaning() {
    try (PackageReader before = PackageReader.open(input);
        PackageReader after = PackageReader.open(output)) {
      assertThat(Meaning.changes(before, after)).isEmpty();
    }
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    return new XSSFWorkbook(Files.newInputStream(file));
  }

  private void writeBid() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(input)) {
      XSSFSheet sheet = workbook.createSheet("Bid");
      XSSFCellStyle bold = workbook.createCellStyle();
      bold.setWrapText(true);
      sheet.setDefaultColumnStyle(3, bold);
      String[][] rooms = {{"Room", "Height"}, {"Lobby", "4.25"}, {"Stair", "7"}};
      for (int i = 0; i < rooms.length; i++) {
        XSSFRow row = sheet.createRow(i);
        XSSFCell name = row.createCell(0);
        name.setCellValue(rooms[i][0]);
        name.setCellStyle(bold);
        if (i == 0) {
          row.createCell(2).setCellValue(rooms[i][1]);
        } else {
          row.createCell(2).setCellValue(Double.parseDouble(rooms[i][1]));
        }
      }
      workbook.createSheet(SECOND_SHEET).createRow(4).createCell(4).setCellFormula("Bid!C2*2");
      workbook.write(out);
    }
  }

  @Test
  void nothingOfAProtectedWorkbookIsEverOnTheDiskWithoutItsProtection() throws IOException {
    writeBid();
    Locked.with("secret", input);
    Path temporaries = Path.of(System.getProperty("java.io.tmpdir"));
    List<Path> before = openCopies(temporaries);
    List<Path> during = new ArrayList<>();

    Copies.write(
        input,
        new Passwords(List.of("secret")),
        output,
        false,
        new Shaper() {
          @Override
          public List<SheetEdit> shape(LeanWorkbook workbook) {
            during.addAll(openCopies(folder));
            during.addAll(openCopies(temporaries));
            return List.of(Edits.adding("Bid", row -> List.of(new AddedCell(5, 0, new Num(row)))));
          }

          @Override
          public void beforeItIsPublished() {
            during.addAll(openCopies(folder));
            during.addAll(openCopies(temporaries));
          }
        });

    during.removeAll(before);
    assertThat(during).isEmpty();
    assertThat(openCopies(folder)).isEmpty();
    try (PackageReader reader = PackageReader.open(output, new Passwords(List.of("secret")))) {
      assertThat(reader.password()).contains("secret");
      assertThat(reader.sheets()).isNotEmpty();
    }
  }

  /** Copies of the workbook in the open; other tests and programs have files there, too. */
  private static List<Path> openCopies(Path in) {
    List<Path> found = new ArrayList<>();
    for (File file : Objects.requireNonNull(in.toFile().listFiles())) {
      if (file.isDirectory() && file.canRead()) {
        Stream.ofNullable(file.listFiles())
            .flatMap(Stream::of)
            .filter(LightCopyTest::isCopy)
            .forEach(each -> found.add(each.toPath()));
      } else if (isCopy(file)) {
        found.add(file.toPath());
      }
    }
    return found;
  }

  private static boolean isCopy(File file) {
    try (ZipFile zip = new ZipFile(file)) {
      ZipEntry main = zip.getEntry("xl/workbook.xml");
      return main != null
          && new String(zip.getInputStream(main).readAllBytes(), StandardCharsets.UTF_8)
              .contains(SECOND_SHEET);
    } catch (IOException e) {
      return false;
    }
  }
}
