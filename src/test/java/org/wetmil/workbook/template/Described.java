package org.wetmil.workbook.template;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A workbook by its meaning, line by line, so that two can be compared. */
final class Described {
  private Described() {}

  static List<String> lines(Path file) throws IOException {
    List<String> lines = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook book = new XSSFWorkbook(in)) {
      for (Sheet sheet : book) {
        sheet((XSSFSheet) sheet, lines);
      }
      for (Name name : book.getAllNames()) {
        lines.add(
            name.getSheetIndex() + " " + name.getNameName() + " = " + name.getRefersToFormula());
      }
      lines.add(book.getProperties().getCoreProperties().getTitle());
    }
    return lines;
  }

  private static void sheet(XSSFSheet sheet, List<String> lines) {
    String at = sheet.getSheetName() + " ";
    lines.add(at + "freezes " + sheet.getPaneInformation());
    lines.add(at + "on paper " + sheet.getCTWorksheet().getPageSetup());
    for (Row row : sheet) {
      for (Cell cell : row) {
        lines.add(at + cell.getAddress() + " " + value(cell) + " " + style(cell));
      }
    }
    for (DataValidation each : sheet.getDataValidations()) {
      lines.add(
          at
              + String.join(
                  "|",
                  each.getRegions().getCellRangeAddress(0).formatAsString(),
                  String.valueOf(each.getValidationConstraint().getFormula1()),
                  each.getPromptBoxTitle(),
                  each.getPromptBoxText(),
                  String.valueOf(each.getErrorStyle())));
    }
    for (XSSFTable table : sheet.getTables()) {
      lines.add(at + "table " + table.getCTTable());
    }
    sheet
        .getCellComments()
        .forEach((cell, note) -> lines.add(at + cell + " note " + note.getString()));
  }

  private static String value(Cell cell) {
    return cell.getCellType() == CellType.FORMULA
        ? "=" + cell.getCellFormula() + " -> " + cell.getStringCellValue()
        : cell.toString();
  }

  private static String style(Cell cell) {
    XSSFCellStyle style = (XSSFCellStyle) cell.getCellStyle();
    return String.join(
        " ",
        style.getDataFormatString(),
        style.getFont().getBold() ? "bold" : "plain",
        style.getBorderBottom().name(),
        style.getFillPattern().name());
  }
}
