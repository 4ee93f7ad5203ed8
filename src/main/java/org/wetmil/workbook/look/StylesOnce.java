package org.wetmil.workbook.look;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
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
  private static final Pattern NAMESPACE = Pattern.compile("\\sxmlns(:\\w+)?=\"[^\"]*\"");
  private static final Pattern PREFIX = Pattern.compile("(</?)[\\w-]+:");

  private final StylesTable styles;
  private final Index cells = new Index();
  private final Index fonts = new Index();
  private final Index conditionals = new Index();

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
    int known = cells.indexOf(wanted, styles.getNumCellStyles(), i -> text(styles.getCellXfAt(i)));
    if (known < 0) {
      known = styles.putCellXf((CTXf) draft.getCoreXf().copy()) - 1;
    }
    return styles.getStyleAt(known);
  }

  /** The workbook's font like one that is not in it yet. */
  XSSFFont font(XSSFFont draft) {
    List<XSSFFont> all = styles.getFonts();
    String wanted = text(draft.getCTFont());
    int known = fonts.indexOf(wanted, all.size(), i -> text(all.get(i).getCTFont()));
    if (known >= 0) {
      return all.get(known);
    }
    draft.registerTo(styles);
    return draft;
  }

  /** The number of the workbook's conditional look like this one. */
  public long conditional(CTDxf look) {
    int known =
        conditionals.indexOf(text(look), styles._getDXfsSize(), i -> text(styles.getDxfAt(i)));
    return known < 0 ? styles.putDxf(look) - 1L : known;
  }

  /** The XML without prefixes, which differ between what was read and what was made. */
  private static String text(XmlObject object) {
    String xml = NAMESPACE.matcher(object.xmlText()).replaceAll("");
    return PREFIX.matcher(xml).replaceAll("$1");
  }

  /** Where each text comes first in a list that grows at its end alone. */
  private static final class Index {
    private final Map<String, Integer> first = new HashMap<>();
    private int read;

    int indexOf(String wanted, int size, IntFunction<String> text) {
      for (; read < size; read++) {
        first.putIfAbsent(text.apply(read), read);
      }
      return first.getOrDefault(wanted, -1);
    }
  }
}
