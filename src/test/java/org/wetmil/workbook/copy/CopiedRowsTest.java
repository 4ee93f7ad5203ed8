package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.copy.CellContent.Num;
import org.wetmil.workbook.copy.CellContent.Text;
import org.wetmil.workbook.opc.ZipPackage;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;

/** Rows as odd programs write them. */
class CopiedRowsTest {
  private static final String SHEET = "xl/worksheets/sheet1.xml";

  @TempDir Path folder;

  @Test
  void rowsOfPrefixedXmlKeepTheirMeaning() {
    HandMade made =
        new HandMade(
            "<x:worksheet xmlns:x=\""
                + HandMade.MAIN
                + "\"><x:sheetData><x:row r=\"1\"><x:c r=\"A1\"><x:v>7</x:v></x:c></x:row>"
                + "</x:sheetData></x:worksheet>");

    assertThat(addresses(copy(made, adding(2, new Num(3))))).containsExactly("A1=7", "C1=3");
  }

  @Test
  void cellsAndRowsWithoutAddressesStayInTheirPlaces() {
    HandMade made =
        new HandMade(
            HandMade.sheet(
                "<row><c><v>1</v></c><c r=\"D1\"><v>4</v></c><c><v>5</v></c></row>"
                    + "<row r=\"3\"><c><v>1</v></c></row><row><c><v>9</v></c></row>"));
    SheetEdit edit =
        new SheetEdit(
            "Bid",
            row -> List.of(new AddedCell(2, 0, new Num(row))),
            (row, column) -> row == 0 && column == 3);

    assertThat(addresses(copy(made, edit)))
        .containsExactly("A1=1", "C1=0", "E1=5", "A3=1", "C3=2", "A4=9", "C4=3");
  }

  @Test
  void anEmptyRowTakesCells() {
    HandMade made = new HandMade(HandMade.sheet("<row r=\"2\" hidden=\"1\"/>"));

    assertThat(addresses(copy(made, adding(0, new Text("x"))))).containsExactly("A2=x");
  }

  @Test
  void foreignAttributesKeepTheirNamespaceAndStayIgnorable() throws IOException {
    HandMade made =
        new HandMade(
            "<worksheet xmlns=\""
                + HandMade.MAIN
                + "\" xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\""
                + " xmlns:ac=\"http://schemas.microsoft.com/office/spreadsheetml/2009/9/ac\""
                + " mc:Ignorable=\"ac\"><dimension ref=\"A1\"/><sheetData ac:kept=\"yes\">"
                + "<row r=\"1\" spans=\"1:1\" ac:dyDescent=\"0.25\"><c r=\"A1\" cm=\"1\" vm=\"2\">"
                + "<v>1</v></c></row></sheetData></worksheet>");

    String xml = sheetXml(copy(made, adding(4, new Num(2.5))));

    assertThat(xml)
        .contains("mc:Ignorable=\"ac\"")
        .contains("<sheetData ac:kept=\"yes\">")
        .contains("<row r=\"1\" spans=\"1:5\" ac:dyDescent=\"0.25\">")
        .contains("<c r=\"A1\" cm=\"1\" vm=\"2\"><v>1</v></c><c r=\"E1\"><v>2.5</v></c>")
        .doesNotContain("<dimension");
  }

  @Test
  void formulasAreCopiedAsTheyWereWritten() throws IOException {
    String cells =
        "<c r=\"A1\" t=\"str\"><f t=\"shared\" ref=\"A1:A2\" si=\"0\">B1&amp;\"&lt;\"</f>"
            + "<v>a &lt;</v></c><c r=\"B1\"><f t=\"array\" ref=\"B1\" ca=\"1\">SUM(C1:C2)</f></c>";
    HandMade made =
        new HandMade(
            HandMade.sheet(
                "<row r=\"1\">"
                    + cells
                    + "</row><row r=\"2\"><c r=\"A2\" t=\"str\"><f t=\"shared\" si=\"0\"/><v/></c>"
                    + "</row>"));

    assertThat(sheetXml(copy(made, adding(5, new Num(1)))))
        .contains(
            "<c r=\"A1\" t=\"str\"><f t=\"shared\" ref=\"A1:A2\" si=\"0\">B1&amp;\"&lt;\"</f>")
        .contains("<c r=\"B1\"><f t=\"array\" ref=\"B1\" ca=\"1\">SUM(C1:C2)</f></c>")
        .contains("<f t=\"shared\" si=\"0\"/><v/></c>");
  }

  @Test
  void richInlineTextKeepsItsRunsAndSpaces() throws IOException {
    String cell =
        "<c r=\"A1\" t=\"inlineStr\"><is><r><rPr><b/></rPr><t xml:space=\"preserve\"> two </t></r>"
            + "<r><t>coats</t></r></is></c>";
    HandMade made = new HandMade(HandMade.sheet("<row r=\"1\">" + cell + "</row>"));

    assertThat(sheetXml(copy(made, adding(5, new Num(1))))).contains(cell);
  }

  @Test
  void anUnstyledCellInAStyledColumnStaysUnstyled() throws IOException {
    HandMade made =
        new HandMade(
                HandMade.sheet("<row r=\"1\"><c r=\"A1\"><v>1</v></c><c r=\"B1\"/></row>")
                    .replace(
                        "<sheetData>",
                        "<cols><col min=\"1\" max=\"3\" style=\"1\" width=\"9\"/></cols><sheetData>"))
            .styles(
                "<fonts><font/></fonts><fills><fill/></fills><borders><border/></borders>"
                    + "<cellStyleXfs><xf/></cellStyleXfs><cellXfs><xf/><xf numFmtId=\"9\"/></cellXfs>");

    String xml = sheetXml(copy(made, adding(2, new Num(2))));

    assertThat(xml)
        .contains("style=\"1\"")
        .contains("<c r=\"A1\"><v>1</v></c><c r=\"B1\"/><c r=\"C1\"><v>2</v></c>");
  }

  @Test
  void lineBreaksInAttributesSurvive() throws IOException {
    HandMade made =
        new HandMade(
            HandMade.sheet("<row r=\"1\"/>")
                .replace(
                    "</sheetData>",
                    "</sheetData><dataValidations><dataValidation sqref=\"A1\" prompt=\"one&#10;two\"/>"
                        + "</dataValidations>"));

    assertThat(sheetXml(copy(made, adding(2, new Num(2))))).contains("prompt=\"one&#10;two\"");
  }

  @Test
  void ourCellsStandBeforeTheExtensionOfARow() throws IOException {
    HandMade made =
        new HandMade(HandMade.sheet("<row r=\"1\"><c r=\"A1\"><v>1</v></c><extLst/></row>"));

    assertThat(sheetXml(copy(made, adding(1, new Num(2)))))
        .contains("<c r=\"B1\"><v>2</v></c><extLst/></row>");
  }

  @Test
  void aCellThatHasOnlyAFormatGivesWayToOurs() {
    HandMade made =
        new HandMade(HandMade.sheet("<row r=\"1\"><c r=\"A1\" s=\"0\"/><c r=\"B1\"/></row>"));

    assertThat(addresses(copy(made, adding(0, new Num(8))))).containsExactly("A1=8", "B1=");
  }

  @Test
  void aCellWithContentIsNeverReplaced() {
    HandMade made = new HandMade(HandMade.sheet("<row r=\"1\"><c r=\"A1\"><f>B1</f></c></row>"));

    assertThatThrownBy(() -> copy(made, adding(0, new Num(8))))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("Bid!A1");
    assertThat(folder).isDirectoryNotContaining(file -> !file.endsWith("in.xlsx"));
  }

  @Test
  void droppedCellsMakeRoomForOurs() {
    HandMade made =
        new HandMade(
            HandMade.sheet("<row r=\"1\"><c r=\"A1\"><v>1</v></c><c r=\"B1\"><v>2</v></c></row>"));
    SheetEdit edit =
        new SheetEdit(
            "Bid", row -> List.of(new AddedCell(1, 0, new Num(3))), (row, column) -> column == 1);

    assertThat(addresses(copy(made, edit))).containsExactly("A1=1", "B1=3");
  }

  @Test
  void aRowThatIsThereTwiceTakesOurCellsOnce() {
    HandMade made = new HandMade(HandMade.sheet("<row r=\"1\"/><row r=\"1\"/>"));

    assertThat(addresses(copy(made, adding(0, new Num(8))))).containsExactly("A1=8");
  }

  @Test
  void textOfAnyCharactersComesBack() {
    String odd = "a\u0001b\uD800c\r\n\t_x0041_ \uD83D\uDE00 \uFFFE";
    HandMade made = new HandMade(HandMade.sheet("<row r=\"1\"/>"));

    assertThat(addresses(copy(made, adding(0, new Text(odd))))).containsExactly("A1=" + odd);
  }

  @Test
  void numbersComeBackExactly() {
    for (double number :
        new double[] {0.1, -0.0, 1e15, -123456789012345.0, 1e300, Double.MIN_VALUE, 2.0 / 3}) {
      HandMade made = new HandMade(HandMade.sheet("<row r=\"1\"/>"));
      String stored = addresses(copy(made, adding(0, new Num(number)))).get(0).substring(3);
      assertThat(Double.parseDouble(stored)).isEqualTo(number + 0.0);
    }
  }

  @Test
  void stringsKeepTheirPlacesThoughTheSheetAddsSome() throws IOException {
    HandMade made =
        new HandMade(
                HandMade.sheet(
                    "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>1</v></c><c r=\"B1\" t=\"s\"><v>0</v></c>"
                        + "</row>"))
            .strings("<t>same</t>", "<t>same</t><phoneticPr fontId=\"1\"/>");
    Path input = made.write(folder.resolve("in.xlsx"));
    Path output = folder.resolve("out.xlsx");
    Copies.write(
        input,
        output,
        workbook -> {
          workbook.createSheet("Ours").createRow(0).createCell(0).setCellValue("same");
          return List.of();
        });

    try (ZipPackage zip = ZipPackage.open(output)) {
      assertThat(text(zip, "xl/sharedStrings.xml"))
          .contains("<si><t>same</t></si><si><t>same</t><phoneticPr fontId=\"1\"/></si><si>");
    }
    assertThat(addresses(output)).containsExactly("A1=same", "B1=same");
    try (PackageReader reader = PackageReader.open(output)) {
      assertThat(Meaning.cell(reader, "Ours", 0, 0).text()).isEqualTo("same");
    }
  }

  @Test
  void aBrokenPartThatOnlyTheLibraryReadsIsNamed() {
    HandMade made =
        new HandMade(HandMade.sheet("<row r=\"1\"/>")).styles("<fonts>\n<font></fonts>");

    assertThatThrownBy(() -> copy(made, adding(0, new Num(8))))
        .isInstanceOf(WorkbookException.Damaged.class)
        .hasMessageContaining("xl/styles.xml (its XML is broken at line 2)");
  }

  @Test
  void aPartThatNothingRefersToStandsInTheWayOfANewSheet() {
    Path input =
        new HandMade(HandMade.sheet("<row r=\"1\"/>"))
            .part("xl/worksheets/sheet2.xml", HandMade.sheet(""))
            .replace(
                "[Content_Types].xml",
                "</Types>",
                "<Override PartName=\"/xl/worksheets/sheet2.xml\" ContentType=\"application/"
                    + "vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/></Types>")
            .write(folder.resolve("in.xlsx"));

    assertThatThrownBy(
            () ->
                Copies.write(
                    input,
                    folder.resolve("out.xlsx"),
                    workbook -> {
                      workbook.createSheet("Ours");
                      return List.of();
                    }))
        .isInstanceOf(WorkbookException.Damaged.class)
        .hasMessageContaining("contradicts");
  }

  @Test
  void aCellOutsideTheSheetIsSaidWithItsSheet() {
    HandMade made = new HandMade(HandMade.sheet("<row r=\"1\"><c r=\"XFE1\"><v>1</v></c></row>"));

    assertThatThrownBy(() -> copy(made, adding(0, new Num(8))))
        .isInstanceOf(WorkbookException.Damaged.class)
        .hasMessageContaining("sheet \"Bid\"")
        .hasMessageContaining("XFE1");
  }

  private static SheetEdit adding(int column, CellContent content) {
    return Edits.adding("Bid", row -> List.of(new AddedCell(column, 0, content)));
  }

  private Path copy(HandMade made, SheetEdit edit) {
    Path output = folder.resolve("out.xlsx");
    Copies.write(made.write(folder.resolve("in.xlsx")), output, true, workbook -> List.of(edit));
    return output;
  }

  private static List<String> addresses(Path file) {
    List<String> found = new ArrayList<>();
    try (PackageReader reader = PackageReader.open(file)) {
      reader.rows(
          reader.sheets().get(0),
          row -> {
            for (RawCell cell : row.cells()) {
              char letter = (char) ('A' + cell.column());
              found.add(letter + Integer.toString(cell.row() + 1) + "=" + cell.text());
            }
            return true;
          });
    }
    return found;
  }

  private static String sheetXml(Path file) throws IOException {
    try (ZipPackage zip = ZipPackage.open(file)) {
      return text(zip, SHEET);
    }
  }

  private static String text(ZipPackage zip, String part) throws IOException {
    try (InputStream in = zip.bytes(part)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
