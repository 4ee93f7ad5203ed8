package org.wetmil.workbook.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.copy.NewWorkbook;
import org.wetmil.workbook.fill.beside.Highlights;
import org.wetmil.workbook.look.Texts;
import org.wetmil.workbook.start.rooms.RoomList;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.template.TemplateWriter;

/** Writes a bid workbook with the lines that a room list begins. */
final class StartWriter {
  /** Digits that no list states, left by going from one unit to another and back. */
  private static final MathContext DIGITS = new MathContext(12);

  private final XSSFWorkbook workbook;
  private final UnitSystem system;

  private StartWriter(XSSFWorkbook workbook, UnitSystem system) {
    this.workbook = workbook;
    this.system = system;
  }

  static void write(
      RoomList list, List<DraftLine> lines, List<Path> inputs, Path output, boolean overwrite) {
    OpeningRows openings = OpeningRows.of(list);
    requireRoom(inputs.get(0), list, lines.size(), "bid lines");
    requireRoom(inputs.get(0), list, openings.rows().size(), "rows of openings");
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      TemplateWriter.shape(workbook, list.system(), lines.size());
      StartWriter writer = new StartWriter(workbook, list.system());
      writer.lines(lines);
      writer.marks(lines);
      writer.openings(openings.rows());
      NewWorkbook.write(workbook, inputs, output, overwrite);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void requireRoom(Path file, RoomList list, int rows, String what) {
    int most = CellAddress.MAX_ROWS - 1;
    if (rows > most) {
      throw new WorkbookException.TooLarge(
          file,
          String.format(
              Locale.ROOT,
              "its %,d rooms give %,d %s, more than the %,d that a sheet holds below its headings",
              list.rooms().size(),
              rows,
              what,
              most));
    }
  }

  private void lines(List<DraftLine> lines) {
    XSSFSheet sheet = workbook.getSheet(TemplateWriter.BID);
    for (int i = 0; i < lines.size(); i++) {
      XSSFRow row = sheet.getRow(i + 1);
      lines
          .get(i)
          .numbers()
          .forEach(
              (column, base) ->
                  row.getCell(column.ordinal()).setCellValue(shown(column.quantity(), base)));
      lines
          .get(i)
          .words()
          .forEach(
              (column, word) -> row.getCell(column.ordinal()).setCellValue(Texts.fitting(word)));
    }
  }

  /**
   * Hatches the cells that are still to be filled in, as long as nothing is typed. The notes of the
   * row say which, so that the marks follow a sort.
   */
  private void marks(List<DraftLine> lines) {
    XSSFSheet sheet = workbook.getSheet(TemplateWriter.BID);
    int priority = Highlights.nextPriority(sheet);
    String notes = "$" + CellAddress.letters(InputColumn.NOTES.ordinal()) + "2";
    for (InputColumn column : InputColumn.values()) {
      if (lines.stream().anyMatch(line -> line.missing().contains(column))) {
        String cell = CellAddress.letters(column.ordinal()) + "2";
        Highlights.hatch(
            sheet,
            "AND(OR(LEN(TRIM(%1$s))=0,%1$s=\"%6$s\"),LEFT(%2$s,%3$d)=\"%4$s\",ISNUMBER(FIND(\"%5$s\",LEFT(%2$s,FIND(\".\",%2$s&\".\")))))"
                .formatted(
                    cell,
                    notes,
                    DraftLine.TO_FILL_IN.length(),
                    DraftLine.TO_FILL_IN,
                    column.heading(),
                    DraftLine.ASKED),
            new CellRangeAddress(1, lines.size(), column.ordinal(), column.ordinal()),
            priority++);
      }
    }
  }

  private void openings(List<OpeningRows.Row> rows) {
    XSSFSheet sheet = workbook.getSheet(Tables.OPENINGS.title());
    Map<String, Integer> columns = headings(sheet);
    for (int i = 0; i < rows.size(); i++) {
      OpeningRows.Row row = rows.get(i);
      XSSFRow at = sheet.getRow(i + 1) == null ? sheet.createRow(i + 1) : sheet.getRow(i + 1);
      CellStyle style = sheet.getRow(1).getCell(0).getCellStyle();
      columns.values().forEach(column -> cell(at, column, style));
      at.getCell(columns.get("Room")).setCellValue(Texts.fitting(row.room()));
      at.getCell(columns.get("Surface")).setCellValue(row.surface());
      at.getCell(columns.get("Kind")).setCellValue(row.opening().kind().word());
      at.getCell(columns.get("Count")).setCellValue(row.count());
      at.getCell(columns.get("Id")).setCellValue(Texts.fitting(row.id()));
      if (row.opening().isSized()) {
        at.getCell(columns.get("Width"))
            .setCellValue(shown(Quantity.LENGTH, row.opening().widthFt()));
        at.getCell(columns.get("Height"))
            .setCellValue(shown(Quantity.LENGTH, row.opening().heightFt()));
      }
    }
  }

  private static XSSFCell cell(XSSFRow row, int column, CellStyle style) {
    XSSFCell cell = row.getCell(column) == null ? row.createCell(column) : row.getCell(column);
    cell.setCellStyle(style);
    return cell;
  }

  private static Map<String, Integer> headings(XSSFSheet sheet) {
    Map<String, Integer> columns = new HashMap<>();
    sheet
        .getRow(0)
        .forEach(
            cell ->
                columns.put(
                    cell.getStringCellValue().replaceAll(" \\(.*", ""), cell.getColumnIndex()));
    return columns;
  }

  private double shown(Quantity quantity, double base) {
    return BigDecimal.valueOf(quantity.shown(base, system)).round(DIGITS).doubleValue();
  }
}
