package org.wetmil.workbook.read;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Makes small workbooks for tests, a row at a time. */
public final class Book {
  /** A formula; without a value it has no stored result. */
  public record Formula(String text, Object value) {}

  /** A number shown in a format. */
  public record Shown(double number, String format) {}

  private final XSSFWorkbook workbook = new XSSFWorkbook();
  private Sheet sheet;
  private int next;

  /** Begins a sheet. */
  public Book sheet(String name) {
    sheet = workbook.createSheet(name);
    next = 0;
    return this;
  }

  /** Adds a row; a null leaves a cell out. */
  public Book row(Object... values) {
    Row row = sheet.createRow(next++);
    for (int i = 0; i < values.length; i++) {
      if (values[i] != null) {
        set(row.createCell(i), values[i]);
      }
    }
    return this;
  }

  /** Leaves rows out. */
  public Book skip(int rows) {
    next += rows;
    return this;
  }

  public Book merge(String range) {
    sheet.addMergedRegion(CellRangeAddress.valueOf(range));
    return this;
  }

  /** Does something that only one test needs. */
  public Book with(Consumer<XSSFWorkbook> change) {
    change.accept(workbook);
    return this;
  }

  private void set(Cell cell, Object value) {
    if (value instanceof Formula formula) {
      cell.setCellFormula(formula.text());
      if (formula.value() instanceof Number number) {
        cell.setCellValue(number.doubleValue());
      } else if (formula.value() instanceof String text) {
        cell.setCellValue(text);
      } else if (((XSSFCell) cell).getCTCell().isSetV()) {
        ((XSSFCell) cell).getCTCell().unsetV();
      }
    } else if (value instanceof Shown shown) {
      CellStyle style = workbook.createCellStyle();
      style.setDataFormat(workbook.createDataFormat().getFormat(shown.format()));
      cell.setCellStyle(style);
      cell.setCellValue(shown.number());
    } else if (value instanceof Number number) {
      cell.setCellValue(number.doubleValue());
    } else if (value instanceof Boolean flag) {
      cell.setCellValue(flag);
    } else {
      cell.setCellValue(value.toString());
    }
  }

  public Path write(Path folder) {
    return write(folder, "job.xlsx");
  }

  public Path write(Path folder, String name) {
    Path file = folder.resolve(name);
    try (OutputStream out = Files.newOutputStream(file)) {
      workbook.write(out);
      workbook.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return file;
  }

  ReadWorkbook read(Path folder) {
    return BidReader.read(write(folder), ReadOptions.USUAL);
  }
}
