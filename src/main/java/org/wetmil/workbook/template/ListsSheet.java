package org.wetmil.workbook.template;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.stream.SheetReference;

/** The names that drop-down lists offer: those built in, then those on the estimator's sheets. */
final class ListsSheet {
  static final String NAME = "Lists";

  /** Not one of our marks, which are taken away when a workbook is filled again. */
  private static final String PREFIX = "list_";

  private final XSSFSheet sheet;
  private final Look look;
  private final Set<Tables> own;

  /**
   * @param own tables that have a sheet in the workbook
   */
  ListsSheet(XSSFSheet sheet, Look look, Set<Tables> own) {
    this.sheet = sheet;
    this.look = look;
    this.own = own;
  }

  /** The tables whose names are offered somewhere. */
  static Set<Tables> offered() {
    Set<Tables> offered = EnumSet.of(Tables.OPENING_KINDS);
    Arrays.stream(InputColumn.values())
        .map(InputColumn::table)
        .flatMap(Optional::stream)
        .forEach(offered::add);
    return offered;
  }

  /** The name by which a cell asks for the list of a table. */
  static String name(Tables table) {
    return PREFIX + table.title().toLowerCase(Locale.ROOT).replace(' ', '_');
  }

  void write() {
    int column = 0;
    int most = 0;
    for (Tables table : offered()) {
      int last = write(table, column);
      define(table, column, last);
      most = Math.max(most, last);
      Pages.width(sheet, column, 24);
      column++;
    }
    sheet.createFreezePane(0, 1);
    Pages.landscape(sheet, column, most);
  }

  /** Writes a column; gives its last row, from 1. */
  private int write(Tables table, int column) {
    int at = 0;
    XSSFCell heading = cell(at++, column);
    heading.setCellValue(table.title());
    heading.setCellStyle(look.asked());
    for (Row row : Catalogue.builtIn().rows(table)) {
      cell(at++, column).setCellValue(row.name());
    }
    if (own.contains(table)) {
      String names = SheetReference.quoted(table.title()) + "!$A$2:$A$" + (TableSheet.ROWS + 1);
      for (int i = 1; i <= TableSheet.ROWS; i++) {
        // counted within a range, so that rows may come and go; without the sheet there is none
        String name = "INDEX(%s,%s)".formatted(names, i);
        String formula = "IFERROR(IF(%s=\"\",\"\",%s),\"\")".formatted(name, name);
        XSSFCell cell = cell(at++, column);
        cell.setCellFormula(formula);
        cell.setCellValue("");
      }
    }
    return at;
  }

  /** Defines the name of a list, which stands in a column from row 2 to its last. */
  private void define(Tables table, int column, int last) {
    String letters = CellReference.convertNumToColString(column);
    String from = "%s!$%s$".formatted(NAME, letters);
    String whole = from + "1:$" + letters + "$" + last;
    XSSFName name = sheet.getWorkbook().createName();
    name.setNameName(name(table));
    name.setRefersToFormula(
        own.contains(table)
            // down to the last row that shows a name
            ? "%s2:INDEX(%s,MAX(2,SUMPRODUCT(MAX((%s<>\"\")*ROW(%s)))))"
                .formatted(from, whole, whole, whole)
            : from + "2:$" + letters + "$" + last);
  }

  private XSSFCell cell(int row, int column) {
    XSSFRow found = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
    return found.createCell(column);
  }
}
