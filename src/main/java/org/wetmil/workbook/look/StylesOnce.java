package org.wetmil.workbook.look;

import java.util.List;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTDxf;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTXf;

/**
 * Takes a style that the workbook has already in the place of a second one like it. Nothing takes
 * styles away, so that a workbook filled again and again would grow by all of ours each time.
 */
public final class StylesOnce {
  private final StylesTable styles;

  public StylesOnce(XSSFWorkbook workbook) {
    this.styles = workbook.getStylesSource();
  }

  /** A style to be shaped; it is not in the workbook yet. */
  XSSFCellStyle draft() {
    XSSFCellStyle draft = new XSSFCellStyle(styles);
    CTXf xf = draft.getCoreXf();
    xf.setNumFmtId(0);
    xf.setFontId(0);
    xf.setFillId(0);
    xf.setBorderId(0);
    xf.setXfId(0);
    return draft;
  }

  /** The workbook's style like a draft. */
  XSSFCellStyle style(XSSFCellStyle draft) {
    String wanted = text(draft.getCoreXf());
    for (int i = 0; i < styles.getNumCellStyles(); i++) {
      if (text(styles.getCellXfAt(i)).equals(wanted)) {
        return styles.getStyleAt(i);
      }
    }
    return styles.getStyleAt(styles.putCellXf((CTXf) draft.getCoreXf().copy()) - 1);
  }

  /** The workbook's font like one that is not in it yet. */
  XSSFFont font(XSSFFont draft) {
    String wanted = text(draft.getCTFont());
    List<XSSFFont> fonts = styles.getFonts();
    for (XSSFFont font : fonts) {
      if (text(font.getCTFont()).equals(wanted)) {
        return font;
      }
    }
    draft.registerTo(styles);
    return draft;
  }

  /** The number of the workbook's conditional look like this one. */
  public long conditional(CTDxf look) {
    String wanted = text(look);
    for (int i = 0; i < styles._getDXfsSize(); i++) {
      if (text(styles.getDxfAt(i)).equals(wanted)) {
        return i;
      }
    }
    return styles.putDxf(look) - 1L;
  }

  /** The XML without prefixes, which differ between what was read and what was made. */
  private static String text(XmlObject object) {
    return object
        .xmlText()
        .replaceAll("\\sxmlns(:\\w+)?=\"[^\"]*\"", "")
        .replaceAll("(</?)[\\w-]+:", "$1");
  }
}
