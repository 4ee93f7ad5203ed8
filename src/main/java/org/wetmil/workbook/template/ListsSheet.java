package org.wetmil.workbook.template;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
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
import org.wetmil.workbook.fill.Look;
import org.wetmil.workbook.fill.Texts;

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
    for (Tables table : offered()) {
      List<String> formulas = write(table, column);
      name(table, column, formulas);
      sheet.setColumnWidth(column, 24 * 256);
      column++;
    }
    sheet.createFreezePane(0, 1);
    sheet.setDisplayGridlines(false);
  }

  /** Writes a column; gives the formulas in it. */
  private List<String> write(Tables table, int column) {
    int at = 0;
    XSSFCell heading = cell(at++, column);
    heading.setCellValue(table.title());
    heading.setCellStyle(look.asked());
    for (Row row : Catalogue.builtIn().rows(table)) {
      cell(at++, column).setCellValue(row.name());
    }
    List<String> formulas = new ArrayList<>();
    if (own.contains(table)) {
      String names = Texts.sheet(table.title()) + "!$A$2:$A$" + (TableSheet.ROWS + 1);
      for (int i = 1; i <= TableSheet.ROWS; i++) {
        // counted within a range, so that rows may come and go; without the sheet there is none
        String name = "INDEX(%s,%d)".formatted(names, i);
        String formula = "IFERROR(IF(%s=\"\",\"\",%s),\"\")".formatted(name, name);
        XSSFCell cell = cell(at++, column);
        cell.setCellFormula(formula);
        cell.setCellValue("");
        formulas.add(formula);
      }
    }
    return formulas;
  }

  private void name(Tables table, int column, List<String> formulas) {
    int last = Catalogue.builtIn().rows(table).size() + formulas.size() + 1;
    String letters = CellReference.convertNumToColString(column);
    String from = "%s!$%s$".formatted(NAME, letters);
    String whole = from + "1:$" + letters + "$" + last;
    XSSFName name = sheet.getWorkbook().createName();
    name.setNameName(name(table));
    name.setRefersToFormula(
        formulas.isEmpty()
            ? from + "2:$" + letters + "$" + last
            // down to the last row that shows a name
            : "%s2:INDEX(%s,MAX(2,SUMPRODUCT(MAX((%s<>\"\")*ROW(%s)))))"
                .formatted(from, whole, whole, whole));
  }

  private XSSFCell cell(int row, int column) {
    XSSFRow found = sheet.getRow(row) == null ? sheet.createRow(row) : sheet.getRow(row);
    return found.createCell(column);
  }
}
