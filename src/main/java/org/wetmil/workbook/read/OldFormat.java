package org.wetmil.workbook.read;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hpsf.CustomProperties;
import org.apache.poi.hssf.OldExcelFormatException;
import org.apache.poi.hssf.usermodel.HSSFName;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.workbook.WorkbookException;
import org.wetmil.workbook.read.grid.OwnMarks;

/**
 * Copies what reading a bid needs of a workbook of Excel 97-2003 into the newer format: values,
 * formulas with their stored results, number formats, merged and hidden cells, and our own marks.
 */
final class OldFormat {
  /** Rows held in memory. */
  private static final int WINDOW = 100;

  private static final String MARK = "wm_";

  private final HSSFWorkbook old;
  private final SXSSFWorkbook copy;
  private final Map<String, CellStyle> styles = new HashMap<>();

  private OldFormat(HSSFWorkbook old, SXSSFWorkbook copy) {
    this.old = old;
    this.copy = copy;
  }

  /**
   * @throws WorkbookException when the file is damaged, encrypted or older still
   */
  static byte[] newer(Path file) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (InputStream in = Files.newInputStream(file);
        HSSFWorkbook old = new HSSFWorkbook(in);
        SXSSFWorkbook copy = new SXSSFWorkbook(WINDOW)) {
      new OldFormat(old, copy).copy();
      copy.write(out);
      return out.toByteArray();
    } catch (IOException e) {
      throw WorkbookException.Unreadable.of(file, e);
    } catch (OldExcelFormatException e) {
      throw new WorkbookException.OtherFormat(file, "a workbook of Excel 95 or older (.xls)");
    } catch (EncryptedDocumentException e) {
      throw new WorkbookException.Encrypted(file, false);
    } catch (RuntimeException e) {
      // The library throws many kinds on records that it does not understand.
      throw new WorkbookException.Damaged(file, "its records", "they cannot be understood", e);
    }
  }

  private void copy() {
    XSSFWorkbook book = copy.getXSSFWorkbook();
    if (old.getInternalWorkbook().isUsing1904DateWindowing()) {
      book.getCTWorkbook().getWorkbookPr().setDate1904(true);
    }
    for (Sheet from : old) {
      Sheet sheet = copy.createSheet(from.getSheetName());
      from.getMergedRegions().forEach(sheet::addMergedRegionUnsafe);
      for (Row row : from) {
        copy(row, sheet.createRow(row.getRowNum()));
      }
    }
    for (int i = 0; i < old.getNumberOfSheets(); i++) {
      copy.setSheetVisibility(i, old.getSheetVisibility(i));
    }
    old.getAllNames().stream().filter(OldFormat::isMark).forEach(this::copy);
    property(book);
  }

  private void copy(Row from, Row to) {
    to.setZeroHeight(from.getZeroHeight());
    for (Cell cell : from) {
      if (cell.getCellType() != CellType.BLANK) {
        Cell copied = to.createCell(cell.getColumnIndex());
        copied.setCellStyle(style(cell.getCellStyle().getDataFormatString()));
        copy(cell, copied);
      }
    }
  }

  private void copy(Cell from, Cell to) {
    CellType type = from.getCellType();
    if (type == CellType.FORMULA) {
      to.setCellFormula(from.getCellFormula());
      type = from.getCachedFormulaResultType();
    }
    switch (type) {
      case NUMERIC -> to.setCellValue(from.getNumericCellValue());
      case STRING -> to.setCellValue(from.getStringCellValue());
      case BOOLEAN -> to.setCellValue(from.getBooleanCellValue());
      case ERROR -> to.setCellErrorValue(from.getErrorCellValue());
      default -> {}
    }
  }

  private CellStyle style(String format) {
    return styles.computeIfAbsent(
        format,
        any -> {
          CellStyle style = copy.createCellStyle();
          style.setDataFormat(copy.createDataFormat().getFormat(format));
          return style;
        });
  }

  private static boolean isMark(HSSFName name) {
    return name.getNameName().startsWith(MARK) && !name.isDeleted();
  }

  private void copy(HSSFName from) {
    Name name = copy.createName();
    name.setSheetIndex(from.getSheetIndex());
    name.setNameName(from.getNameName());
    name.setRefersToFormula(from.getRefersToFormula());
  }

  /** The property that tells a filled workbook. */
  private void property(XSSFWorkbook book) {
    CustomProperties properties =
        old.getDocumentSummaryInformation() == null
            ? null
            : old.getDocumentSummaryInformation().getCustomProperties();
    if (properties != null && properties.get(OwnMarks.PROPERTY) instanceof String version) {
      book.getProperties().getCustomProperties().addProperty(OwnMarks.PROPERTY, version);
    }
  }
}
