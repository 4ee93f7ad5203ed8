package org.wetmil.workbook.fill.beside;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.poi.openxml4j.opc.PackagePartName;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.NewRows;
import org.wetmil.workbook.stream.SheetReference;

/**
 * What tells Wetmil's own columns and sheets in a workbook: a document property and names, which
 * follow when a sheet is renamed or columns move.
 */
public final class Marks {
  /** The custom document property of a filled workbook; its value is the version. */
  public static final String PROPERTY = "Wetmil filled";

  /** The custom document property that names the file it was filled from. */
  public static final String SOURCE = "Wetmil source";

  /** The custom document property of a workbook that compares purchases with bids. */
  public static final String RECONCILED = "Wetmil reconciled";

  /** The custom document property of a workbook that says how past bids came out. */
  public static final String AUDITED = "Wetmil audited";

  /** The custom document property of a workbook that compares two versions of a bid. */
  public static final String COMPARED = "Wetmil compared";

  /** Begins every workbook name of ours. */
  public static final String PREFIX = "wm_";

  /** Begins the name of a filled column. */
  public static final String COLUMN = PREFIX + "col_";

  /** Begins the name of a sheet of ours. */
  public static final String SHEET = PREFIX + "sheet_";

  private Marks() {}

  public static void stamp(XSSFWorkbook workbook, FillStamp stamp) {
    property(workbook, PROPERTY, stamp.version());
    property(workbook, SOURCE, stamp.inputName());
  }

  public static void property(XSSFWorkbook workbook, String name, String value) {
    var properties = workbook.getProperties().getCustomProperties();
    if (properties.contains(name)) {
      properties.getProperty(name).setLpwstr(value);
    } else {
      properties.addProperty(name, value);
    }
  }

  public static void sheet(XSSFSheet sheet, String word) {
    XSSFName name = sheet.getWorkbook().createName();
    name.setNameName(SHEET + word);
    name.setRefersToFormula(SheetReference.quoted(sheet.getSheetName()) + "!$A$1");
  }

  /** Lets the marks of sheets span all that was written, so that what is added later is told. */
  public static void spans(LeanWorkbook workbook) {
    for (Name name : workbook.getAllNames()) {
      if (name.getNameName().startsWith(SHEET)) {
        XSSFSheet sheet = workbook.getSheet(name.getSheetName());
        NewRows rows = workbook.rows(sheet);
        name.setRefersToFormula(
            SheetReference.quoted(sheet.getSheetName())
                + "!$A$1:$"
                + CellReference.convertNumToColString(Math.max(1, rows.columns()) - 1)
                + "$"
                + Math.max(1, rows.rows()));
      }
    }
  }

  static void columns(XSSFSheet sheet, SheetPlan.Block block, int slot) {
    for (FilledColumn column : block.columns()) {
      String letters = block.letters(column);
      XSSFName name = sheet.getWorkbook().createName();
      name.setNameName(
          COLUMN + column.name().toLowerCase(Locale.ROOT) + (slot == 0 ? "" : "_" + (slot + 1)));
      name.setSheetIndex(sheet.getWorkbook().getSheetIndex(sheet));
      name.setRefersToFormula(
          SheetReference.quoted(sheet.getSheetName())
              + "!$"
              + letters
              + "$"
              + (block.table().headingRow() + 1)
              + ":$"
              + letters
              + "$"
              + (block.table().lastRow() + 1));
    }
  }

  /** Whether a name is for this program alone; the names of figures serve the estimator too. */
  public static boolean isHidden(String name) {
    return name.startsWith(COLUMN) || name.startsWith(SHEET);
  }

  /** Takes away the names and sheets of an earlier fill. */
  public static void clear(XSSFWorkbook workbook, List<String> ourSheets) {
    ourSheets.forEach(
        name -> {
          int index = workbook.getSheetIndex(name);
          if (index >= 0) {
            Set<PackagePartName> parts = SheetParts.ownedBy(workbook.getSheetAt(index));
            workbook.removeSheetAt(index);
            SheetParts.remove(workbook.getPackage(), parts);
          }
        });
    for (Name name : List.copyOf(workbook.getAllNames())) {
      if (name.getNameName().toLowerCase(Locale.ROOT).startsWith(PREFIX)) {
        workbook.removeName(name);
      }
    }
  }
}
