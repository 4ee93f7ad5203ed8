package org.wetmil.workbook.copy;

import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.workbook.copy.CellContent.Formula;
import org.wetmil.workbook.copy.CellContent.Num;
import org.wetmil.workbook.copy.CellContent.Text;

/** Cells of a new sheet as the library keeps them, for a workbook whose charts read them there. */
final class LibraryCells implements Cells {
  private final XSSFSheet sheet;

  LibraryCells(XSSFSheet sheet) {
    this.sheet = sheet;
  }

  @Override
  public void put(int row, AddedCell added) {
    XSSFCell cell = line(row).createCell(added.column());
    if (added.style() != 0) {
      cell.setCellStyle(sheet.getWorkbook().getCellStyleAt(added.style()));
    }
    CellContent content = added.content();
    if (content instanceof Formula formula) {
      cell.setCellFormula(formula.formula());
      content = formula.cached();
    }
    if (content instanceof Text text) {
      // a spreadsheet program takes a text cell for text, whatever it begins with
      cell.setCellValue(text.value());
    } else if (content instanceof Num number) {
      cell.setCellValue(number.value());
    }
  }

  @Override
  public void height(int row, float points) {
    line(row).setHeightInPoints(points);
  }

  @Override
  public void row(int row) {
    line(row);
  }

  @Override
  public void style(int row, int column, int style) {
    XSSFRow line = line(row);
    XSSFCell cell = line.getCell(column) == null ? line.createCell(column) : line.getCell(column);
    cell.setCellStyle(sheet.getWorkbook().getCellStyleAt(style));
  }

  @Override
  public CellContent get(int row, int column) {
    XSSFCell cell = sheet.getRow(row) == null ? null : sheet.getRow(row).getCell(column);
    if (cell == null) {
      return null;
    }
    boolean formula = cell.getCellType() == CellType.FORMULA;
    return switch (formula ? cell.getCachedFormulaResultType() : cell.getCellType()) {
      case STRING -> new Text(cell.getStringCellValue());
      case NUMERIC -> new Num(cell.getNumericCellValue());
      default -> new CellContent.Blank();
    };
  }

  private XSSFRow line(int row) {
    XSSFRow line = sheet.getRow(row);
    return line == null ? sheet.createRow(row) : line;
  }
}
