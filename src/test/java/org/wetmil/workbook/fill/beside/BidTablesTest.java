package org.wetmil.workbook.fill.beside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumn;
import org.wetmil.jobs.FillJob;

/** Excel tables grow with the filled columns, and tables side by side keep their lines apart. */
class BidTablesTest {
  private static final String[] HEADINGS = {
    "Room", "Surface", "Length (ft)", "Height (ft)", "Coating", "Paint (gal)"
  };

  @TempDir Path folder;

  @Test
  void tableTakesInTheFilledColumnsUnderHeadingsOfTheirOwn() throws IOException {
    Path filled = fill(save(bidInATable()), "filled.xlsx");

    try (XSSFWorkbook book = open(filled)) {
      XSSFSheet sheet = book.getSheet("Bid");
      XSSFTable table = sheet.getTables().get(0);
      CellRangeAddress range = CellRangeAddress.valueOf(table.getCTTable().getRef());
      List<String> columns =
          table.getCTTable().getTableColumns().getTableColumnList().stream()
              .map(CTTableColumn::getName)
              .toList();
      List<String> headings =
          IntStream.rangeClosed(range.getFirstColumn(), range.getLastColumn())
              .mapToObj(column -> sheet.getRow(0).getCell(column).getStringCellValue())
              .toList();
      assertThat(columns).isEqualTo(headings).doesNotHaveDuplicates();
      assertThat(columns).contains("Paint (gal)", "Paint (gal) 2", "Findings");
      assertThat(formulaOf(table, "Paint (gal) 2")).matches("[A-Z]+2\\*[A-Z]+2/[A-Z]+2");
    }
  }

  @Test
  void fillingAgainLeavesTheTableAsItWas() throws IOException {
    Path once = fill(save(bidInATable()), "once.xlsx");
    Path twice = fill(once, "twice.xlsx");

    assertThat(tableXml(twice)).isEqualTo(tableXml(once));
  }

  @Test
  void tablesSideBySideFillTheirOwnBlocks() throws IOException {
    XSSFWorkbook book = new XSSFWorkbook();
    XSSFSheet sheet = book.createSheet("Bid");
    rows(sheet, 0, "West ", 10);
    rows(sheet, 8, "East ", 20);
    Path filled = fill(save(book), "filled.xlsx");

    try (XSSFWorkbook read = open(filled)) {
      Sheet bid = read.getSheet("Bid");
      assertThat(numbers(bid, "Net area (ft²)", 1)).containsExactly(80.0, 160.0);
      assertThat(numbers(bid, "Net area (ft²)", 2)).containsExactly(88.0, 168.0);
    }
  }

  private static List<Double> numbers(Sheet sheet, String heading, int row) {
    Row headings = sheet.getRow(0);
    return IntStream.range(0, headings.getLastCellNum())
        .filter(
            column ->
                headings.getCell(column) != null
                    && headings.getCell(column).getStringCellValue().equals(heading))
        .mapToObj(column -> sheet.getRow(row).getCell(column).getNumericCellValue())
        .toList();
  }

  private static String formulaOf(XSSFTable table, String name) {
    return table.getCTTable().getTableColumns().getTableColumnList().stream()
        .filter(column -> column.getName().equals(name))
        .findFirst()
        .orElseThrow()
        .getCalculatedColumnFormula()
        .getStringValue();
  }

  private static XSSFWorkbook bidInATable() {
    XSSFWorkbook book = new XSSFWorkbook();
    XSSFSheet sheet = book.createSheet("Bid");
    rows(sheet, 0, "Room ", 10);
    AreaReference area = book.getCreationHelper().createAreaReference("A1:F4");
    XSSFTable table = sheet.createTable(area);
    table.setName("Rooms");
    table.setDisplayName("Rooms");
    table.getCTTable().addNewAutoFilter().setRef("A1:F4");
    return book;
  }

  private static void rows(XSSFSheet sheet, int column, String room, double length) {
    Row head = sheet.getRow(0) == null ? sheet.createRow(0) : sheet.getRow(0);
    for (int i = 0; i < HEADINGS.length; i++) {
      head.createCell(column + i).setCellValue(HEADINGS[i]);
    }
    for (int i = 1; i <= 3; i++) {
      Row row = sheet.getRow(i) == null ? sheet.createRow(i) : sheet.getRow(i);
      row.createCell(column).setCellValue(room + i);
      row.createCell(column + 1).setCellValue("walls");
      row.createCell(column + 2).setCellValue(length + i - 1);
      row.createCell(column + 3).setCellValue(8);
      row.createCell(column + 4).setCellValue("latex");
    }
  }

  private Path save(XSSFWorkbook book) throws IOException {
    Path file = folder.resolve("bid.xlsx");
    try (OutputStream out = Files.newOutputStream(file)) {
      book.write(out);
    }
    return file;
  }

  private Path fill(Path input, String name) {
    Path output = folder.resolve(name);
    new FillJob(LocalDate.of(2026, 1, 5), "test", false).fill(input, output);
    return output;
  }

  private static String tableXml(Path file) throws IOException {
    try (XSSFWorkbook book = open(file)) {
      return book.getSheet("Bid").getTables().get(0).getCTTable().xmlText();
    }
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
