package org.wetmil.workbook.opc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.Locked;
import org.wetmil.workbook.WorkbookException;

class WorkbookKindTest {
  private static final String MAIN_TYPE = "spreadsheetml.sheet.main+xml";

  @TempDir Path folder;

  @Test
  void aWorkbookIsKnownByItsContentWhateverItsName() {
    Path file = workbook().write(folder.resolve("bid.csv"));

    assertThat(WorkbookKind.require(file)).isEqualTo(WorkbookKind.XLSX);
  }

  @Test
  void macroTemplateAndBinaryWorkbooksAreToldApart() {
    assertThat(ofType("application/vnd.ms-excel.sheet.macroEnabled.main+xml"))
        .isEqualTo(WorkbookKind.XLSM);
    assertThat(ofType("application/vnd.ms-excel.template.macroEnabled.main+xml"))
        .isEqualTo(WorkbookKind.XLTM);
    assertThat(
            ofType("application/vnd.openxmlformats-officedocument.spreadsheetml.template.main+xml"))
        .isEqualTo(WorkbookKind.XLTX);
    assertThat(ofType("application/vnd.ms-excel.sheet.binary.macroEnabled.main"))
        .isEqualTo(WorkbookKind.XLSB);
    assertThat(
            ofType(
                "application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"))
        .isEqualTo(WorkbookKind.OTHER);
  }

  @Test
  void anOldWorkbookIsRefusedWithWhatToDo() throws IOException {
    Path file = folder.resolve("bid.xlsx");
    try (HSSFWorkbook old = new HSSFWorkbook();
        OutputStream out = Files.newOutputStream(file)) {
      old.createSheet("Bid");
      old.write(out);
    }

    assertThatThrownBy(() -> WorkbookKind.require(file))
        .isInstanceOf(WorkbookException.OtherFormat.class)
        .hasMessage(
            file
                + ": a workbook of Excel 97-2003 (.xls) cannot be read; open it in a spreadsheet"
                + " program and save it as .xlsx.");
  }

  @Test
  void aProtectedWorkbookIsNoOldOne() {
    Path file = Locked.with("secret", workbook().write(folder.resolve("bid.xlsx")));

    assertThatThrownBy(() -> WorkbookKind.require(file))
        .isInstanceOf(WorkbookException.Encrypted.class)
        .hasMessageContaining("protected with a password");
  }

  @Test
  void anOpenDocumentIsNamed() throws IOException {
    Path file = folder.resolve("bid.ods");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
      zip.putNextEntry(new ZipEntry("mimetype"));
      zip.write(
          "application/vnd.oasis.opendocument.spreadsheet".getBytes(StandardCharsets.US_ASCII));
    }

    assertThat(WorkbookKind.of(file)).isEqualTo(WorkbookKind.ODS);
  }

  @Test
  void textAndOtherFilesAreToldApart() throws IOException {
    assertThat(ofBytes("Room,Height\nLobby,9'\u2032".getBytes(StandardCharsets.UTF_8)))
        .isEqualTo(WorkbookKind.TEXT);
    assertThat(ofBytes(new byte[] {1, 2, 0, 4})).isEqualTo(WorkbookKind.OTHER);
    assertThat(ofBytes(new byte[0])).isEqualTo(WorkbookKind.EMPTY);
    assertThat(ofBytes(new byte[] {9, 8, 16, 0, 0, 6})).isEqualTo(WorkbookKind.OTHER);
    assertThat(ofBytes(new byte[] {9, 4, 6, 0, 0, 0})).isEqualTo(WorkbookKind.XLS);
  }

  @Test
  void aFileCutShortIsDamaged() throws IOException {
    Path whole = workbook().write(folder.resolve("whole.xlsx"));
    byte[] bytes = Files.readAllBytes(whole);
    Path file = folder.resolve("cut.xlsx");
    Files.write(file, Arrays.copyOf(bytes, bytes.length / 2));

    assertThatThrownBy(() -> WorkbookKind.of(file))
        .isInstanceOf(WorkbookException.Damaged.class)
        .hasMessageContaining("cut short");
  }

  @Test
  void aMissingFileAndAFolderAreSaid() {
    assertThatThrownBy(() -> WorkbookKind.of(folder.resolve("none.xlsx")))
        .isInstanceOf(WorkbookException.Unreadable.class)
        .hasMessageContaining("no such file");
    assertThatThrownBy(() -> WorkbookKind.of(folder))
        .isInstanceOf(WorkbookException.Unreadable.class)
        .hasMessageContaining("folder");
  }

  private static HandMade workbook() {
    return new HandMade(HandMade.sheet(""));
  }

  private WorkbookKind ofType(String type) {
    return WorkbookKind.of(
        workbook()
            .replace(
                "[Content_Types].xml",
                "application/vnd.openxmlformats-officedocument." + MAIN_TYPE,
                type)
            .write(folder.resolve("typed")));
  }

  private WorkbookKind ofBytes(byte[] bytes) throws IOException {
    return WorkbookKind.of(Files.write(folder.resolve("bytes"), bytes));
  }
}
