package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.SmallBid;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.Locked;

/** Every input that cannot be used: one clear sentence, code 3, and nothing changed on the disk. */
class FillBadInputTest {
  @TempDir Path folder;

  @Test
  void aFileThatIsNotThere() {
    refuses(folder.resolve("none.xlsx"), "no such file");
  }

  @Test
  void anEmptyFile() throws IOException {
    refuses(Files.createFile(folder.resolve("job.xlsx")), "is empty");
  }

  @Test
  void textUnderTheNameOfAWorkbook() throws IOException {
    refuses(Files.writeString(folder.resolve("job.xlsx"), "Room,Surface\n"), "a text file");
  }

  @Test
  void aFileOfCommas() throws IOException {
    refuses(Files.writeString(folder.resolve("job.csv"), "Room,Surface\n"), "save it as .xlsx");
  }

  @Test
  void bytesThatAreNoWorkbook() throws IOException {
    refuses(Files.write(folder.resolve("job.xlsx"), new byte[] {0, 1, 2, 3}), "is needed");
  }

  @Test
  void anOldWorkbook() throws IOException {
    Path file = folder.resolve("job.xls");
    try (HSSFWorkbook old = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      old.createSheet("Bid");
      old.write(out);
    }
    refuses(file, "Excel 97-2003");
    refuses(file, "save it as .xlsx");
  }

  @Test
  void anOpenDocumentSpreadsheet() throws IOException {
    Path file = folder.resolve("job.ods");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry("mimetype"));
      zip.write(
          "application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.US_ASCII));
    }
    refuses(file, "OpenDocument");
    refuses(file, "save it as .xlsx");
  }

  @Test
  void aBinaryWorkbook() {
    Path file =
        new HandMade(HandMade.sheet(""))
            .replace(
                "[Content_Types].xml",
                "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
                "application/vnd.ms-excel.sheet.binary.macroEnabled.main")
            .write(folder.resolve("job.xlsb"));
    refuses(file, "a binary workbook (.xlsb)");
    refuses(file, "save it as .xlsx");
  }

  @Test
  void aWorkbookProtectedWithAPassword() {
    Path file = Locked.with("secret", SmallBid.write(folder.resolve("job.xlsx")));
    refuses(file, "--password-file");
  }

  @Test
  void aZipFileThatIsCutShort() throws IOException {
    byte[] whole = Files.readAllBytes(SmallBid.write(folder.resolve("job.xlsx")));
    Path file = folder.resolve("job.xlsx");
    Files.write(file, Arrays.copyOf(whole, whole.length * 2 / 3));
    refuses(file, "zip container");
  }

  @Test
  void aSheetWhoseXmlIsBroken() {
    HandMade made = new HandMade(HandMade.sheet("<row r=\"1\"><c r=\"A1\"><v>1</v></row>"));
    refuses(made.write(folder.resolve("job.xlsx")), "damaged at sheet \"Bid\"");
  }

  @Test
  void aPartThatTheRowsDoNotNeedIsBroken() {
    HandMade made =
        new HandMade(
                HandMade.sheet(
                    row(1, "Room", "Surface", "Coating", "Area (ft²)")
                        + row(2, "Office", "walls", "latex", "100")))
            .styles("<fonts count=\"1\"><font>");
    refuses(made.write(folder.resolve("job.xlsx")), "damaged at xl/styles.xml");
  }

  @Test
  void noTableIsFoundAndTheHeadingsAreTold() {
    Path file =
        SmallBid.write(
            folder.resolve("job.xlsx"),
            workbook -> {
              workbook.removeSheetAt(0);
              SmallBid.row(workbook.createSheet("Prices"), 0, "Room", "Item", "Price");
              SmallBid.row(workbook.getSheetAt(0), 1, "Office", "Chairs", 12);
            });
    refuses(file, "Looked for: Room or Surface");
  }

  @Test
  void noRowCanBeUsed() {
    Path file =
        SmallBid.write(
            folder.resolve("job.xlsx"),
            workbook -> {
              for (int row = 1; row < 4; row++) {
                workbook.getSheetAt(0).removeRow(workbook.getSheetAt(0).getRow(row));
              }
            });
    refuses(file, "no bid line was found under the headings on sheet \"Bid\"");
  }

  private static String row(int number, String... texts) {
    StringBuilder row = new StringBuilder("<row r=\"" + number + "\">");
    for (String text : texts) {
      row.append("<c t=\"inlineStr\"><is><t>").append(text).append("</t></is></c>");
    }
    return row.append("</row>").toString();
  }

  private void refuses(Path input, String why) {
    Map<String, String> before = contents();

    Ran ran = Ran.fill(input);

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .singleElement()
        .asString()
        .startsWith(input + ": ")
        .contains(why)
        .endsWith(".")
        .doesNotContain("Exception");
    assertThat(contents()).as("the folder and the bytes in it").isEqualTo(before);
  }

  private Map<String, String> contents() {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        contents.put(file.toString(), Arrays.toString(Files.readAllBytes(file)));
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return contents;
  }
}
