package org.wetmil.workbook.copy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.DataValidationConstraint;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellAddress;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFComment;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbookType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.copy.CellContent.Num;
import org.wetmil.workbook.opc.WorkbookKind;
import org.wetmil.workbook.stream.PackageReader;

/** What a bid has besides its cells. */
class KeptPartsTest {
  private static final byte[] MACROS = {1, 2, 3, 4, 5};
  private static final byte[] PICTURE = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10};

  @TempDir Path folder;

  @Test
  void chartPictureNoteValidationRuleTableAndNameAreKept() throws IOException {
    Path input = folder.resolve("bid.xlsx");
    writeRichBid(input, new XSSFWorkbook());
    Path output = folder.resolve("out.xlsx");
    fill(input, output);

    try (XSSFWorkbook copy = open(output)) {
      XSSFSheet sheet = copy.getSheet("Bid");
      assertThat(sheet.getDrawingPatriarch().getCharts()).hasSize(1);
      assertThat(copy.getAllPictures().get(0).getData()).isEqualTo(PICTURE);
      assertThat(sheet.getCellComment(new CellAddress("A2")).getString().getString())
          .isEqualTo("measured on site");
      assertThat(sheet.getDataValidations().get(0).getPromptBoxText()).isEqualTo("or a ceiling");
      assertThat(sheet.getSheetConditionalFormatting().getNumConditionalFormattings()).isEqualTo(1);
      assertThat(sheet.getMergedRegions()).containsExactly(CellRangeAddress.valueOf("A20:B20"));
      assertThat(copy.getName("heights").getRefersToFormula()).isEqualTo("Bid!$B$2:$B$3");
      assertThat(copy.getProperties().getCustomProperties().getProperty("job").getLpwstr())
          .isEqualTo("clinic");
      assertThat(sheet.getRow(1).getCell(9).getNumericCellValue()).isEqualTo(1);
    }
    assertSameMeaning(input, output);
  }

  @Test
  void columnsOfATableKeepTheirNamesThoughTheLibrarySeesNoHeader() throws IOException {
    Path input = folder.resolve("bid.xlsx");
    writeRichBid(input, new XSSFWorkbook());
    Path output = folder.resolve("out.xlsx");
    fill(input, output);

    try (XSSFWorkbook copy = open(output)) {
      XSSFTable table = copy.getSheet("Bid").getTables().get(0);
      assertThat(table.getColumns())
          .extracting(column -> column.getName())
          .containsExactly("Room", "Height");
    }
  }

  @Test
  void stylesKeepTheirNumbersAndLooksWhenOthersAreAdded() throws IOException {
    Path input = folder.resolve("bid.xlsx");
    writeRichBid(input, new XSSFWorkbook());
    Path output = folder.resolve("out.xlsx");
    Copies.write(
        input,
        output,
        workbook -> {
          for (int i = 0; i < 20; i++) {
            XSSFCellStyle style = workbook.createCellStyle();
            style.setFont(workbook.createFont());
            style.setDataFormat(workbook.createDataFormat().getFormat("0." + "0".repeat(i + 1)));
          }
          return List.of();
        });

    try (XSSFWorkbook before = open(input);
        XSSFWorkbook after = open(output)) {
      assertThat(after.getNumCellStyles()).isEqualTo(before.getNumCellStyles() + 20);
      for (int i = 0; i < before.getNumCellStyles(); i++) {
        assertThat(look(after.getCellStyleAt(i))).isEqualTo(look(before.getCellStyleAt(i)));
      }
    }
  }

  @Test
  void macrosAreKeptUnderANameThatSaysSo() throws IOException {
    Path input = folder.resolve("bid.xlsm");
    XSSFWorkbook made = new XSSFWorkbook(XSSFWorkbookType.XLSM);
    made.setVBAProject(new ByteArrayInputStream(MACROS));
    writeRichBid(input, made);
    Path output = folder.resolve("out.xlsm");
    fill(input, output);

    assertThat(WorkbookKind.of(output)).isEqualTo(WorkbookKind.XLSM);
    try (XSSFWorkbook copy = open(output)) {
      PackagePart macros =
          copy.getPackage().getPartsByContentType("application/vnd.ms-office.vbaProject").get(0);
      try (InputStream in = macros.getInputStream()) {
        assertThat(in.readAllBytes()).isEqualTo(MACROS);
      }
    }
    assertThatThrownBy(() -> fill(input, folder.resolve("other.xlsx")))
        .isInstanceOf(WorkbookException.Unwritable.class)
        .hasMessageContaining(".xlsm");
  }

  @Test
  void aTemplateBecomesAWorkbook() throws IOException {
    Path input = folder.resolve("bid.xltx");
    XSSFWorkbook made = new XSSFWorkbook();
    writeRichBid(input, made, true);
    assertThat(WorkbookKind.of(input)).isEqualTo(WorkbookKind.XLTX);
    Path output = folder.resolve("out.xlsx");
    fill(input, output);

    assertThat(WorkbookKind.of(output)).isEqualTo(WorkbookKind.XLSX);
    assertSameMeaning(input, output);
  }

  @Test
  void theCalendarOf1904IsKept() throws IOException {
    Path input = folder.resolve("bid.xlsx");
    XSSFWorkbook made = new XSSFWorkbook();
    made.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
    writeRichBid(input, made);
    Path output = folder.resolve("out.xlsx");
    fill(input, output);

    try (PackageReader reader = PackageReader.open(output)) {
      assertThat(reader.date1904()).isTrue();
    }
  }

  @Test
  void aSheetMadeAnewUnderAnOldNameHasOnlyItsNewCells() throws IOException {
    Path input = folder.resolve("bid.xlsx");
    writeRichBid(input, new XSSFWorkbook());
    Path output = folder.resolve("out.xlsx");
    Copies.write(
        input,
        output,
        workbook -> {
          workbook.removeSheetAt(workbook.getSheetIndex("Findings"));
          workbook.createSheet("Findings").createRow(0).createCell(0).setCellValue("new");
          return List.of();
        });

    try (XSSFWorkbook copy = open(output)) {
      XSSFSheet sheet = copy.getSheet("Findings");
      assertThat(sheet.getLastRowNum()).isZero();
      assertThat(sheet.getRow(0).getCell(0).getStringCellValue()).isEqualTo("new");
      assertThat(copy.getSheet("Bid").getRow(1).getCell(0).getStringCellValue()).isEqualTo("Lobby");
    }
  }

  @Test
  void rowsMadeInAnOriginalSheetAreAFault() throws IOException {
    Path input = folder.resolve("bid.xlsx");
    writeRichBid(input, new XSSFWorkbook());

    assertThatThrownBy(
            () ->
                Copies.write(
                    input,
                    folder.resolve("out.xlsx"),
                    workbook -> {
                      workbook.getSheet("Bid").createRow(30).createCell(0).setCellValue(1);
                      return List.of();
                    }))
        .isInstanceOf(IllegalStateException.class);
  }

  @Test
  void theSameInputGivesTheSameBytes() throws Exception {
    Path input = folder.resolve("bid.xlsx");
    writeRichBid(input, new XSSFWorkbook());
    fill(input, folder.resolve("one.xlsx"));
    // Times in a zip file count in steps of two seconds.
    Thread.sleep(2_100);
    fill(input, folder.resolve("two.xlsx"));

    assertThat(folder.resolve("two.xlsx")).hasSameBinaryContentAs(folder.resolve("one.xlsx"));
  }

  private static void fill(Path input, Path output) {
    Copies.write(
        input,
        output,
        workbook ->
            List.of(Edits.adding("Bid", row -> List.of(new AddedCell(9, 0, new Num(row))))));
  }

  private static void assertSameMeaning(Path input, Path output) {
    try (PackageReader before = PackageReader.open(input);
        PackageReader after = PackageReader.open(output)) {
      assertThat(Meaning.changes(before, after))
          .singleElement()
          .satisfies(change -> assertThat(change).startsWith("rows of Bid changed"));
    }
  }

  private static String look(XSSFCellStyle style) {
    return style.getFont().getCTFont().xmlText()
        + style.getDataFormatString()
        + style.getFillForegroundColor()
        + style.getFillPattern()
        + style.getBorderTop()
        + style.getWrapText()
        + style.getAlignment();
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    return new XSSFWorkbook(Files.newInputStream(file));
  }

  private static void writeRichBid(Path file, XSSFWorkbook made) throws IOException {
    writeRichBid(file, made, false);
  }

  private static void writeRichBid(Path file, XSSFWorkbook made, boolean template)
      throws IOException {
    try (XSSFWorkbook workbook = made;
        OutputStream out = Files.newOutputStream(file)) {
      XSSFSheet sheet = workbook.createSheet("Bid");
      XSSFCellStyle wrapped = workbook.createCellStyle();
      wrapped.setWrapText(true);
      wrapped.setDataFormat(workbook.createDataFormat().getFormat("0.00 \"ft\""));
      String[] rooms = {"Room", "Lobby", "Stair"};
      for (int i = 0; i < rooms.length; i++) {
        XSSFRow row = sheet.createRow(i);
        row.createCell(0).setCellValue(rooms[i]);
        row.getCell(0).setCellStyle(wrapped);
        if (i == 0) {
          row.createCell(1).setCellValue("Height");
        } else {
          row.createCell(1).setCellValue(9.5 + i);
        }
      }
      sheet.addMergedRegion(CellRangeAddress.valueOf("A20:B20"));
      sheet.createTable(new AreaReference("A1:B3", SpreadsheetVersion.EXCEL2007));
      addDrawings(workbook, sheet);
      addRules(sheet);
      XSSFName name = workbook.createName();
      name.setNameName("heights");
      name.setRefersToFormula("Bid!$B$2:$B$3");
      workbook.getProperties().getCustomProperties().addProperty("job", "clinic");
      XSSFSheet findings = workbook.createSheet("Findings");
      for (int i = 0; i < 5; i++) {
        findings.createRow(i).createCell(0).setCellValue("old " + i);
      }
      if (template) {
        workbook
            .getPackage()
            .replaceContentType(
                XSSFWorkbookType.XLSX.getContentType(),
                "application/vnd.openxmlformats-officedocument.spreadsheetml.template.main+xml");
      }
      workbook.write(out);
    }
  }

  private static void addDrawings(XSSFWorkbook workbook, XSSFSheet sheet) {
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFChart chart = drawing.createChart(new XSSFClientAnchor(0, 0, 0, 0, 4, 4, 9, 12));
    XDDFChartData data = chart.createData(ChartTypes.PIE, null, null);
    data.addSeries(
        XDDFDataSourcesFactory.fromStringCellRange(sheet, CellRangeAddress.valueOf("A2:A3")),
        XDDFDataSourcesFactory.fromNumericCellRange(sheet, CellRangeAddress.valueOf("B2:B3")));
    chart.plot(data);
    int picture = workbook.addPicture(PICTURE, Workbook.PICTURE_TYPE_PNG);
    drawing.createPicture(new XSSFClientAnchor(0, 0, 0, 0, 4, 14, 6, 16), picture);
    ClientAnchor anchor = new XSSFClientAnchor(0, 0, 0, 0, 2, 2, 4, 4);
    XSSFComment note = drawing.createCellComment(anchor);
    note.setAddress(new CellAddress("A2"));
    note.setString("measured on site");
  }

  private static void addRules(XSSFSheet sheet) {
    DataValidationHelper helper = sheet.getDataValidationHelper();
    DataValidationConstraint list =
        helper.createExplicitListConstraint(new String[] {"wall", "ceiling"});
    XSSFDataValidation validation =
        (XSSFDataValidation) helper.createValidation(list, new CellRangeAddressList(1, 9, 2, 2));
    validation.createPromptBox("surface", "or a ceiling");
    sheet.addValidationData(validation);
    sheet
        .getSheetConditionalFormatting()
        .addConditionalFormatting(
            new CellRangeAddress[] {CellRangeAddress.valueOf("B2:B3")},
            sheet.getSheetConditionalFormatting().createConditionalFormattingRule("$B2>10"));
  }
}
