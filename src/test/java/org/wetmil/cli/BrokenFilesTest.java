package org.wetmil.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellUtil;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.wetmil.SmallBid;
import org.wetmil.hostile.Parts;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.Locked;

/** Broken files that {@link MutationsTest} found the program to fail on, each by name. */
class BrokenFilesTest {
  @TempDir Path folder;
  @TempDir Path logs;

  @Test
  void aWorkbookPartNestedThousandsDeep() throws IOException {
    Parts parts = Parts.of(SmallBid.write(folder.resolve("job.xlsx")));
    Parts.Part part = parts.ending("xl/workbook.xml");
    String deep = "<x>".repeat(9_000) + "</x>".repeat(9_000);
    refused(
        parts.replace(part, part.text().replace("</workbook>", deep + "</workbook>")),
        "nested more than 1000 deep");
  }

  @Test
  void aDefinedNameWithoutAName() throws IOException {
    Parts parts = Parts.of(SmallBid.write(folder.resolve("job.xlsx")));
    Parts.Part part = parts.ending("xl/workbook.xml");
    String nameless = "</sheets><definedNames><definedName>1</definedName></definedNames>";
    refused(parts.replace(part, part.text().replace("</sheets>", nameless)), "has no name");
  }

  @Test
  void aCellWithoutAValueWhereAFilledOneGoes() throws IOException {
    Path bid =
        withCells(
            "<c r=\"Z2\"><v></v></c><c r=\"AA2\" t=\"s\"><v>   </v></c>"
                + "<c r=\"AB2\" t=\"inlineStr\"><is><t/></is></c>");

    assertThat(Ran.fill(bid, "--quiet").code()).isZero();
  }

  @Test
  void anArrayFormulaOutsideItsOwnCells() throws IOException {
    Path bid = withCells("<c r=\"Z2\"><f t=\"array\" ref=\"A1:C9\">A1:C9*2</f></c>");

    Ran ran = Ran.fill(bid, "--quiet");

    assertThat(ran.err()).isEmpty();
    assertThat(ran.code()).isZero();
  }

  @Test
  void aNoteOnAPartThatIsNoText() throws IOException {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipFile from = new ZipFile(bid.toFile());
        ZipOutputStream to = new ZipOutputStream(bytes)) {
      for (ZipEntry part : Collections.list(from.entries())) {
        ZipEntry noted = new ZipEntry(part.getName());
        noted.setComment("noted");
        to.putNextEntry(noted);
        from.getInputStream(part).transferTo(to);
      }
    }
    String latin = bytes.toString(StandardCharsets.ISO_8859_1).replace("noted", "\u00ff\u00ffted");
    Files.write(bid, latin.getBytes(StandardCharsets.ISO_8859_1));
    refused(bid, "its zip container");
  }

  @Test
  void notesWhoseBoxesAreLost() throws IOException {
    Parts parts = filledOnce();
    Parts.Part part = parts.ending("xl/worksheets/_rels/sheet1.xml.rels");

    refused(
        parts.replace(part, part.text().replaceAll("<Relationship [^>]*vmlDrawing[^>]*>", "")),
        "it contradicts the rest");
  }

  @Test
  void notesWhoseBoxesNameNoColumn() throws IOException {
    Parts parts = filledOnce();
    Parts.Part part = parts.ending(".vml");

    refused(
        parts.replace(
            part, part.text().replaceAll("<([a-z]+:)?Column>[^<]*</([a-z]+:)?Column>", "")),
        "it contradicts the rest");
  }

  @Test
  void aSheetThatIsNumberedByAWord() throws IOException {
    Parts parts = Parts.of(SmallBid.write(folder.resolve("job.xlsx")));
    Parts.Part part = parts.ending("xl/workbook.xml");
    refused(
        parts.replace(part, part.text().replaceAll("sheetId=\"\\d+\"", "sheetId=\"rId5\"")),
        "it contradicts the rest");
  }

  @Test
  void aSentenceDoesNotQuoteABook() throws IOException {
    String cell = "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>" + "9".repeat(32_767) + "</v></c></row>";
    Path file = new HandMade(HandMade.sheet(cell)).strings("<t>a</t>").write(file());

    Ran ran = refused(file, "cell A1 asks for text 9999");
    assertThat(ran.err().get(0)).hasSizeLessThan(600);
  }

  @Test
  void aLedgerWithoutHeadingsIsQuotedInASentence() throws IOException {
    Path bid = SmallBid.write(file());
    Path ledger = Files.writeString(folder.resolve("l.csv"), "x,\u0000\n" + "y,".repeat(200_000));

    Ran ran = Ran.of("reconcile", bid, "--purchases", ledger);

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).hasSize(2).allMatch(line -> line.endsWith("."));
    assertThat(ran.err().get(0)).hasSizeLessThan(600).doesNotContain("\u0000");
  }

  @Test
  void aProtectedWorkbookWhoseContainerIsAltered() throws IOException {
    byte[] bytes = Files.readAllBytes(Locked.with("secret", SmallBid.write(file())));
    Path words = Files.writeString(folder.resolve("words.txt"), "secret");
    // the number of the first sector of the directory, in the head of a compound file
    bytes[0x30] = 0x7F;
    bytes[0x31] = 0x7F;
    Path file = Files.write(file(), bytes);

    Ran ran = Ran.fill(file, "--password-file", words);

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err()).singleElement().asString().endsWith(".").doesNotContain("Exception");
  }

  /** The platform's reader of XML prints what is wrong with the first bytes, past all of ours. */
  @Test
  void aPartThatDoesNotBeginAsXmlIsSaidOnce() throws IOException, InterruptedException {
    Parts parts = Parts.of(SmallBid.write(file()));
    Parts.Part part = parts.ending("xl/workbook.xml");
    byte[] noise = "\u00ff\u0080 no XML".getBytes(StandardCharsets.ISO_8859_1);
    Path file = Files.write(file(), parts.replace(part, part.name(), noise).zip());

    Program.Ended run = Program.start(logs, List.of(), "", "fill", file).end();

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err())
        .singleElement()
        .asString()
        .contains("damaged at xl/workbook.xml (it does not begin as XML does)");
  }

  @Test
  void aHeightTooSmallForAnyFan() {
    Path file =
        SmallBid.write(
            file(), workbook -> workbook.getSheetAt(0).getRow(1).getCell(4).setCellValue(1e-320));

    Ran ran = Ran.fill(file);

    assertThat(ran.code()).as(() -> String.join("\n", ran.err())).isZero();
    assertThat(ran.out()).noneMatch(line -> line.contains("NaN"));
  }

  @Test
  void aHeadingOfThousandsOfBrackets() {
    filled(workbook -> cell(workbook, 0, 7).setCellValue("Room" + "(a)".repeat(8_000)));
  }

  @Test
  @Timeout(30)
  void aHeadingOfThousandsOfHyphens() {
    filled(workbook -> cell(workbook, 0, 7).setCellValue("Room " + "a-".repeat(15_000) + "a b c"));
  }

  @Test
  @Timeout(30)
  void aTitleOfSpacesInside() {
    filled(
        workbook -> {
          workbook.getSheetAt(0).shiftRows(1, 3, 1);
          workbook.getSheetAt(0).getRow(0).getCell(0).setCellValue("Notes");
          cell(workbook, 1, 1).setCellValue("A" + " ".repeat(32_000) + "B");
        });
  }

  @Test
  void aNumberFormatOfThousandsOfQuotes() {
    filled(
        workbook -> {
          CellStyle style = workbook.createCellStyle();
          style.setDataFormat(
              workbook.createDataFormat().getFormat("0\"a\";" + "0\"b\"".repeat(20_000)));
          cell(workbook, 1, 2).setCellStyle(style);
        });
  }

  @Test
  void aTotalOfRowsBeyondAllSheets() throws IOException {
    Parts parts = Parts.of(SmallBid.write(file()));
    Parts.Part part = parts.ending("sheet1.xml");
    String total =
        "<row r=\"5\"><c r=\"C5\"><f>SUM(C2:C99999999999999999999)</f><v>1</v></c></row>";
    String text = part.text().replace("</sheetData>", total + "</sheetData>");
    Files.write(file(), parts.replace(part, text).zip());
    assertThat(Ran.fill(file(), "--quiet").code()).isZero();
  }

  @Test
  void aMarkOfThousandsOfCells() throws IOException {
    Parts parts = Parts.of(SmallBid.write(file()));
    Parts.Part part = parts.ending("xl/workbook.xml");
    String mark =
        "</sheets><definedNames><definedName name=\"wm_col_paint\" localSheetId=\"0\">"
            + "'Bid'!$Z$2,".repeat(10_000)
            + "Bid!$Z$1</definedName></definedNames>";
    Files.write(file(), parts.replace(part, part.text().replace("</sheets>", mark)).zip());
    assertThat(Ran.fill(file(), "--quiet").code()).isZero();
  }

  @Test
  void aConstantOfAnExponentBeyondAllNumbers() throws IOException {
    for (String constant : List.of("1E999999999", "1E99999999999")) {
      Parts parts = filledOnce();
      Parts.Part part = parts.ending("sheet1.xml");
      String text = part.text().replaceFirst("<f>[^<]*</f>", "<f>" + constant + "*2</f>");
      Path again = Files.write(folder.resolve("again.xlsx"), parts.replace(part, text).zip());
      assertThat(Ran.fill(again, "--quiet", "--force").code()).isZero();
      Files.delete(folder.resolve("once.xlsx"));
    }
  }

  @Test
  void thousandsOfMergesBesideTheBid() throws IOException, InterruptedException {
    Parts parts = Parts.of(SmallBid.write(file()));
    Parts.Part part = parts.ending("sheet1.xml");
    StringBuilder merges = new StringBuilder("</sheetData><mergeCells>");
    for (int i = 0; i < 3_000; i++) {
      CellRangeAddress range =
          new CellRangeAddress(
              i / 160 * 100 + 10, i / 160 * 100 + 109, i % 160 * 100 + 10, i % 160 * 100 + 109);
      merges.append("<mergeCell ref=\"%s\"/>".formatted(range.formatAsString()));
    }
    String text = part.text().replace("</sheetData>", merges + "</mergeCells>");
    Files.write(file(), parts.replace(part, text).zip());
    List<String> little = List.of("-Xmx128m");
    Program.Ended run = Program.start(logs, little, "", "fill", "--quiet", file()).end();
    assertThat(run.err()).isEmpty();
  }

  /** The platform's reader of XML prints that the type has no end, past all of ours. */
  @ParameterizedTest
  @CsvSource({"1, a document type", "9000, no element begins in its first 8000 bytes"})
  void aDocumentTypeThatIsCutOffIsSaidOnce(int remark, String said)
      throws IOException, InterruptedException {
    Parts parts = Parts.of(SmallBid.write(file()));
    Parts.Part part = parts.ending("xl/workbook.xml");
    String cut =
        "<?xml version=\"1.0\"?><!--"
            + "a".repeat(remark)
            + "--><!DOCTYPE a [<!ENTITY b \"c\"><!ENTI";
    Path file = Files.write(file(), parts.replace(part, cut).zip());
    Program.Ended run = Program.start(logs, List.of(), "", "fill", file).end();
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err()).singleElement().asString().contains(said);
  }

  private static Cell cell(XSSFWorkbook workbook, int row, int column) {
    Row at = CellUtil.getRow(row, workbook.getSheetAt(0));
    return CellUtil.getCell(at, column);
  }

  private void filled(Consumer<XSSFWorkbook> change) {
    Ran ran = Ran.fill(SmallBid.write(file(), change), "--quiet");
    assertThat(ran.code()).as(() -> String.join("\n", ran.err())).isZero();
  }

  private Path file() {
    return folder.resolve("job.xlsx");
  }

  private Parts filledOnce() {
    Path bid = SmallBid.write(folder.resolve("job.xlsx"));
    Path filled = folder.resolve("once.xlsx");
    assertThat(Ran.fill(bid, "--out", filled).code()).isZero();
    return Parts.of(filled);
  }

  /** A small bid with more cells at the end of its second row. */
  private Path withCells(String cells) throws IOException {
    Parts parts = Parts.of(SmallBid.write(folder.resolve("job.xlsx")));
    Parts.Part part = parts.ending("sheet1.xml");
    String text = part.text();
    int end = text.indexOf("</row>", text.indexOf("<row r=\"2\""));
    String longer = text.substring(0, end) + cells + text.substring(end);
    return Files.write(file(), parts.replace(part, longer).zip());
  }

  private Ran refused(Parts parts, String why) throws IOException {
    return refused(Files.write(file(), parts.zip()), why);
  }

  private Ran refused(Path file, String why) throws IOException {
    byte[] before = Files.readAllBytes(file);
    List<String> names = Machine.names(folder);

    Ran ran = Ran.fill(file);

    assertThat(ran.code()).isEqualTo(3);
    assertThat(ran.err())
        .singleElement()
        .asString()
        .startsWith(file + ": ")
        .contains(why)
        .endsWith(".")
        .doesNotContain("Exception");
    assertThat(file).hasBinaryContent(before);
    assertThat(Machine.names(folder)).isEqualTo(names);
    return ran;
  }
}
