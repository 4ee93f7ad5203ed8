package org.wetmil.workbook.stream;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.HandMade;
import org.wetmil.workbook.WorkbookException;

class PackageReaderTest {
  @TempDir Path folder;

  @Test
  void everyKindOfCellIsReadAsItIsStored() {
    String row =
        "<row r=\"2\"><c r=\"A2\" s=\"3\"><v>1.50</v></c><c r=\"B2\" t=\"s\"><v>0</v></c>"
            + "<c r=\"C2\" t=\"b\"><v>1</v></c><c r=\"D2\" t=\"e\"><f>NA()</f><v>#N/A</v></c>"
            + "<c r=\"E2\" t=\"inlineStr\"><is><r><t>in</t></r><r><t> line</t></r></is></c>"
            + "<c r=\"F2\" t=\"str\"><f>A1&amp;B1</f><v>a_x000D_b</v></c><c r=\"G2\"><f>A2</f></c>"
            + "<c r=\"H2\"><f t=\"shared\" si=\"0\"/><v>2</v></c><c r=\"I2\" s=\"1\"/>"
            + "<c r=\"J2\" t=\"str\"><f>\"\"</f><v></v></c><c r=\"K2\" t=\"d\"><v>2024-05-01</v></c>"
            + "</row>";
    HandMade made =
        new HandMade(HandMade.sheet(row))
            .strings("<r><t>ro</t></r><r><t>om</t></r><rPh sb=\"0\" eb=\"1\"><t>no</t></rPh>");

    assertThat(cells(made))
        .containsExactly(
            new RawCell(1, 0, CellKind.NUMBER, "1.50", null, 3),
            new RawCell(1, 1, CellKind.TEXT, "room", null, 0),
            new RawCell(1, 2, CellKind.BOOLEAN, "1", null, 0),
            new RawCell(1, 3, CellKind.ERROR, "#N/A", "NA()", 0),
            new RawCell(1, 4, CellKind.TEXT, "in line", null, 0),
            new RawCell(1, 5, CellKind.TEXT, "a\rb", "A1&B1", 0),
            new RawCell(1, 6, CellKind.BLANK, "", "A2", 0),
            new RawCell(1, 7, CellKind.NUMBER, "2", "", 0, "0"),
            new RawCell(1, 8, CellKind.BLANK, "", null, 1),
            new RawCell(1, 9, CellKind.TEXT, "", "\"\"", 0),
            new RawCell(1, 10, CellKind.TEXT, "2024-05-01", null, 0));
  }

  @Test
  void rowsAndCellsWithoutAddressesFollowTheOnesBefore() {
    HandMade made =
        new HandMade(
            HandMade.sheet(
                "<row><c><v>1</v></c><c r=\"D1\"><v>2</v></c><c><v>3</v></c></row>"
                    + "<row r=\"9\" hidden=\"true\"><c><v>4</v></c></row><row><c><v>5</v></c></row>"));

    assertThat(cells(made))
        .extracting(cell -> new CellAddress(cell.row(), cell.column()) + "=" + cell.text())
        .containsExactly("A1=1", "D1=2", "E1=3", "A9=4", "A10=5");
    assertThat(rows(made)).extracting(RawRow::hidden).containsExactly(false, true, false);
  }

  @Test
  void theConsumerCanStop() {
    Path file = write(new HandMade(HandMade.sheet("<row r=\"1\"/><row r=\"2\"/><row r=\"x\"/>")));
    List<RawRow> seen = new ArrayList<>();
    try (PackageReader reader = PackageReader.open(file)) {
      reader.rows(
          reader.sheets().get(0),
          row -> {
            seen.add(row);
            return seen.size() < 2;
          });
    }

    assertThat(seen).hasSize(2);
  }

  @Test
  void aTextThatIsNotThereIsSaidWithItsSheetAndCell() {
    HandMade made =
        new HandMade(HandMade.sheet("<row r=\"3\"><c r=\"B3\" t=\"s\"><v>4</v></c></row>"));

    assertThatThrownBy(() -> cells(made))
        .isInstanceOf(WorkbookException.Damaged.class)
        .hasMessageContaining("sheet \"Bid\"")
        .hasMessageContaining("cell B3 asks for text 4 of 0 stored texts");
  }

  @Test
  void prefixedAndStrictWorkbooksAreRead() {
    HandMade made =
        new HandMade(
                HandMade.sheet("<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c></row>")
                    .replace("<", "<x:")
                    .replace("<x:/", "</x:")
                    .replace("xmlns=", "xmlns:x="))
            .strings("<t>room</t>");
    assertThat(cells(made)).extracting(RawCell::text).containsExactly("room");

    made.replaceEverywhere(HandMade.MAIN, "http://purl.oclc.org/ooxml/spreadsheetml/main")
        .replaceEverywhere(
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
            "http://purl.oclc.org/ooxml/officeDocument/relationships");
    assertThat(cells(made)).extracting(RawCell::text).containsExactly("room");
    try (PackageReader reader = PackageReader.open(write(made))) {
      assertThat(reader.isStrict()).isTrue();
    }
  }

  @Test
  void sheetsAreWorksheetsInTheOrderOfTheirTabs() {
    HandMade made =
        new HandMade(HandMade.sheet(""))
            .replace(
                "xl/workbook.xml",
                "<sheets>",
                "<workbookPr date1904=\"1\"/><sheets><sheet name=\"Chart\" sheetId=\"7\" r:id=\"c\"/>"
                    + "<sheet name=\"Gone\" sheetId=\"8\" r:id=\"none\"/>"
                    + "<sheet name=\"Old\" sheetId=\"9\" state=\"veryHidden\" r:id=\"o\"/>")
            .replace(
                "xl/workbook.xml",
                "</sheets>",
                "</sheets><definedNames><definedName name=\"tips\" localSheetId=\"3\" hidden=\"1\">"
                    + "Bid!$A$1</definedName><definedName name=\"rate\">42</definedName>"
                    + "</definedNames>")
            .replace(
                "xl/_rels/workbook.xml.rels",
                "</Relationships>",
                "<Relationship Id=\"c\" Type=\"x/chartsheet\" Target=\"chartsheets/a.xml\"/>"
                    + "<Relationship Id=\"o\" Type=\"x/worksheet\" Target=\"/xl/work%20sheets/b.xml\"/>"
                    + "</Relationships>")
            .part("xl/work sheets/b.xml", HandMade.sheet(""));

    try (PackageReader reader = PackageReader.open(write(made))) {
      assertThat(reader.sheets())
          .containsExactly(
              new SheetPart("Old", "xl/work sheets/b.xml", SheetPart.Visibility.VERY_HIDDEN),
              new SheetPart("Bid", "xl/worksheets/sheet1.xml", SheetPart.Visibility.VISIBLE));
      assertThat(reader.date1904()).isTrue();
      assertThat(reader.definedNames())
          .containsExactly(
              new DefinedName("tips", "Bid", "Bid!$A$1", true),
              new DefinedName("rate", null, "42", false));
    }
  }

  @Test
  void aSheetThatLostItsPartIsSaidByName() {
    HandMade made = new HandMade("").without("xl/worksheets/sheet1.xml");

    try (PackageReader reader = PackageReader.open(write(made))) {
      assertThatThrownBy(reader::sheets)
          .isInstanceOf(WorkbookException.Damaged.class)
          .hasMessageContaining("\"Bid\"");
    }
  }

  @Test
  void brokenXmlIsSaidWithItsSheetAndLine() {
    HandMade made = new HandMade(HandMade.sheet("\n<row r=\"1\"><c></row>"));

    assertThatThrownBy(() -> cells(made))
        .isInstanceOf(WorkbookException.Damaged.class)
        .hasMessageContaining("sheet \"Bid\" (its XML is broken at line 2)");
  }

  @Test
  void rangesAndTablesOfASheetAreRead() {
    HandMade made =
        new HandMade(
                HandMade.sheet("<row r=\"1\"/>")
                    .replace(
                        "</sheetData>",
                        "</sheetData><autoFilter ref=\"A1:C9\"/><mergeCells><mergeCell ref=\"B2:$C$3\"/>"
                            + "</mergeCells>"))
            .part(
                "xl/worksheets/_rels/sheet1.xml.rels",
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
                    + "<Relationship Id=\"t\" Type=\"x/table\" Target=\"../tables/table1.xml\"/>"
                    + "</Relationships>")
            .part(
                "xl/tables/table1.xml",
                "<table xmlns=\""
                    + HandMade.MAIN
                    + "\" name=\"t\" displayName=\"Rooms\" ref=\"A1:C9\" totalsRowCount=\"1\"/>");

    try (PackageReader reader = PackageReader.open(write(made))) {
      SheetPart bid = reader.sheets().get(0);
      assertThat(reader.rows(bid, row -> true))
          .isEqualTo(
              new SheetRanges(
                  List.of(new CellRange(1, 1, 2, 2)), Optional.of(new CellRange(0, 0, 8, 2))));
      assertThat(reader.tables(bid))
          .containsExactly(new TableRef("t", "Rooms", new CellRange(0, 0, 8, 2), 1, 1));
    }
  }

  /** The library would take the last of them for the sheet, and this the first. */
  @Test
  void aSheetThatLeadsToTwoPartsIsDamaged() {
    HandMade made =
        new HandMade(HandMade.sheet(""))
            .part("xl/worksheets/sheet2.xml", HandMade.sheet(""))
            .part(
                "xl/_rels/workbook.xml.rels",
                """
                <Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">
                <Relationship Id="rId1" Type="x/worksheet" Target="worksheets/sheet1.xml"/>
                <Relationship Id="rId1" Type="x/worksheet" Target="worksheets/sheet2.xml"/>
                </Relationships>""");

    try (PackageReader reader = PackageReader.open(write(made))) {
      assertThatThrownBy(reader::sheets)
          .isInstanceOf(WorkbookException.Damaged.class)
          .hasMessageContaining("the sheet \"Bid\" leads to several parts");
    }
  }

  @Test
  void datesAndPercentagesAreKnownByTheirFormat() {
    HandMade made =
        new HandMade(HandMade.sheet(""))
            .styles(
                "<numFmts><numFmt numFmtId=\"164\" formatCode=\"d mmm yyyy\"/>"
                    + "<numFmt numFmtId=\"165\" formatCode=\"0.0&quot; %&quot;\"/>"
                    + "<numFmt numFmtId=\"166\" formatCode=\"0.0\\%\"/>"
                    + "<numFmt numFmtId=\"167\" formatCode=\"0.0%\"/></numFmts>"
                    + "<cellXfs><xf/><xf numFmtId=\"14\"/><xf numFmtId=\"164\"/><xf numFmtId=\"9\"/>"
                    + "<xf numFmtId=\"165\"/><xf numFmtId=\"166\"/><xf numFmtId=\"167\"/></cellXfs>");

    try (PackageReader reader = PackageReader.open(write(made))) {
      NumberFormats formats = reader.formats();
      List<Integer> dates = new ArrayList<>();
      List<Integer> percents = new ArrayList<>();
      for (int style = 0; style < 9; style++) {
        if (formats.isDate(style)) {
          dates.add(style);
        }
        if (formats.isPercent(style)) {
          percents.add(style);
        }
      }
      assertThat(dates).containsExactly(1, 2);
      assertThat(percents).containsExactly(3, 6);
      assertThat(formats.code(8)).isEqualTo("General");
    }
  }

  private Path write(HandMade made) {
    return made.write(folder.resolve("bid.xlsx"));
  }

  private List<RawRow> rows(HandMade made) {
    List<RawRow> rows = new ArrayList<>();
    try (PackageReader reader = PackageReader.open(write(made))) {
      reader.rows(reader.sheets().get(0), rows::add);
    }
    return rows;
  }

  private List<RawCell> cells(HandMade made) {
    return rows(made).stream().flatMap(row -> row.cells().stream()).toList();
  }
}
