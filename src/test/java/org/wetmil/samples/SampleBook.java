package org.wetmil.samples;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Builds the invented sample workbooks as an estimator would: a title, headings, plain rows. */
final class SampleBook {
  /** Characters of the usual font that a page across takes at a readable size. */
  private static final int PAGE_WIDTH = 180;

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private final XSSFCellStyle title = workbook.createCellStyle();
  private final XSSFCellStyle heading = workbook.createCellStyle();

  SampleBook() {
    XSSFFont large = workbook.createFont();
    large.setBold(true);
    large.setFontHeightInPoints((short) 15);
    title.setFont(large);
    XSSFFont bold = workbook.createFont();
    bold.setBold(true);
    heading.setFont(bold);
    heading.setWrapText(true);
    heading.setBorderBottom(BorderStyle.MEDIUM);
    heading.setAlignment(HorizontalAlignment.LEFT);
    // a fixed date, so that the same code writes the same file
    workbook
        .getProperties()
        .getCoreProperties()
        .setCreated(Optional.of(new Date(1_767_225_600_000L)));
    workbook.getProperties().getCoreProperties().setCreator("Wetmil sample, invented");
  }

  /**
   * Adds a sheet.
   *
   * @param titles rows above the headings; an empty one stays empty
   * @param headings parted by bars
   * @param rows parted by bars; what reads as a number becomes one, a cell begun by an equals sign
   *     a formula, one begun by an apostrophe stays text
   */
  SampleBook sheet(
      String name, List<String> titles, String headings, int[] widths, String... rows) {
    XSSFSheet sheet = workbook.createSheet(name);
    int next = 0;
    for (String line : titles) {
      XSSFCell cell = sheet.createRow(next++).createCell(0);
      cell.setCellValue(line);
      if (next == 1) {
        cell.setCellStyle(title);
      }
    }
    XSSFRow head = sheet.createRow(next++);
    String[] words = headings.split("\\|");
    for (int i = 0; i < words.length; i++) {
      XSSFCell cell = head.createCell(i);
      cell.setCellValue(words[i].strip());
      cell.setCellStyle(heading);
    }
    int frozen = next;
    for (String row : rows) {
      fill(sheet.createRow(next++), row);
    }
    for (int i = 0; i < widths.length; i++) {
      sheet.setColumnWidth(i, widths[i] * 256);
    }
    sheet.createFreezePane(titles.isEmpty() ? 0 : 1, frozen);
    sheet.getPrintSetup().setLandscape(true);
    onPaper(sheet, IntStream.of(widths).sum(), frozen - 1);
    return this;
  }

  /** A wide sheet takes several pages, each with the headings and the rooms, to stay readable. */
  private static void onPaper(XSSFSheet sheet, int width, int heading) {
    boolean wide = width > PAGE_WIDTH;
    sheet.setFitToPage(!wide);
    if (!wide) {
      sheet.getPrintSetup().setFitHeight((short) 0);
      return;
    }
    sheet.getPrintSetup().setScale((short) 60);
    sheet.setMargin(PageMargin.LEFT, 0.4);
    sheet.setMargin(PageMargin.RIGHT, 0.4);
    sheet.setRepeatingRows(new CellRangeAddress(heading, heading, -1, -1));
    sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, 2));
  }

  private static void fill(XSSFRow row, String cells) {
    String[] texts = cells.split("\\|", -1);
    for (int i = 0; i < texts.length; i++) {
      String text = texts[i].strip();
      if (text.isEmpty()) {
        continue;
      }
      XSSFCell cell = row.createCell(i);
      if (text.startsWith("=")) {
        cell.setCellFormula(text.substring(1));
      } else if (text.matches("-?\\d+(\\.\\d+)?")) {
        cell.setCellValue(Double.parseDouble(text));
      } else {
        cell.setCellValue(text.startsWith("'") ? text.substring(1) : text);
      }
    }
  }

  /** Writes another value into a cell. */
  SampleBook put(String sheet, String address, Object value) {
    CellReference at = new CellReference(address);
    XSSFCell cell = workbook.getSheet(sheet).getRow(at.getRow()).getCell(at.getCol());
    if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else {
      cell.setCellValue(value.toString());
    }
    return this;
  }

  /** Puts a row in the place of one, counted from 1, which moves down with all below it. */
  SampleBook insert(String name, String cells, int place) {
    XSSFSheet sheet = workbook.getSheet(name);
    sheet.shiftRows(place - 1, sheet.getLastRowNum(), 1);
    fill(sheet.createRow(place - 1), cells);
    return this;
  }

  /** Has its sheets printed on A4, as where lengths are metric. */
  SampleBook onA4() {
    workbook.forEach(sheet -> sheet.getPrintSetup().setPaperSize(PrintSetup.A4_PAPERSIZE));
    return this;
  }

  XSSFWorkbook workbook() {
    return workbook;
  }

  void save(Path file) throws IOException {
    workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
    }
  }
}
