package org.wetmil.workbook.look;

import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.poi.xssf.usermodel.extensions.XSSFCellBorder;
import org.apache.poi.xssf.usermodel.extensions.XSSFCellFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTFill;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTXf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STPatternType;

/**
 * The styles that every workbook begins with. Some programs write none, and then the first style
 * added would become that of every unstyled cell.
 */
final class DefaultStyles {
  private DefaultStyles() {}

  static void ensure(XSSFWorkbook workbook) {
    StylesTable styles = workbook.getStylesSource();
    if (styles.getFonts().isEmpty()) {
      workbook.createFont();
    }
    if (styles.getFills().isEmpty()) {
      styles.putFill(fill(STPatternType.NONE));
      styles.putFill(fill(STPatternType.GRAY_125));
    }
    if (styles.getBorders().isEmpty()) {
      styles.putBorder(new XSSFCellBorder());
    }
    if (styles.getNumCellStyles() == 0) {
      CTXf plain = CTXf.Factory.newInstance();
      styles.putCellStyleXf(plain);
      CTXf usual = CTXf.Factory.newInstance();
      usual.setXfId(0);
      styles.putCellXf(usual);
    }
  }

  private static XSSFCellFill fill(STPatternType.Enum pattern) {
    CTFill fill = CTFill.Factory.newInstance();
    fill.addNewPatternFill().setPatternType(pattern);
    return new XSSFCellFill(fill, null);
  }
}
