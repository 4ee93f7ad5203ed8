package org.wetmil.workbook.stream;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.DateUtil;
import org.wetmil.workbook.opc.XmlIn;

/** How the numbers of a workbook are shown, by the style index of a cell. */
public final class NumberFormats {
  private static final String GENERAL = "General";

  /** What is asked for with each cell is found out once. */
  private record Format(String code, boolean isDate) {
    private Format(int id, String code) {
      this(code, DateUtil.isADateFormat(id, code));
    }
  }

  private static final Format UNKNOWN = new Format(0, GENERAL);

  private final List<Format> byStyle;

  private NumberFormats(List<Format> byStyle) {
    this.byStyle = byStyle;
  }

  /** Of a workbook without styles. */
  static NumberFormats none() {
    return new NumberFormats(List.of());
  }

  /** Of the styles part. */
  static NumberFormats read(XMLStreamReader at) throws XMLStreamException {
    Map<Integer, String> own = new HashMap<>();
    List<Format> byStyle = new ArrayList<>();
    while (XmlIn.nextChild(at)) {
      switch (at.getLocalName()) {
        case "numFmts" -> {
          while (XmlIn.nextChild(at)) {
            String code = XmlIn.attribute(at, "formatCode");
            own.put(XmlIn.whole(at, "numFmtId", 0), code == null ? GENERAL : code);
            XmlIn.skip(at);
          }
        }
        case "cellXfs" -> {
          while (XmlIn.nextChild(at)) {
            int id = XmlIn.whole(at, "numFmtId", 0);
            byStyle.add(new Format(id, own.getOrDefault(id, builtIn(id))));
            XmlIn.skip(at);
          }
        }
        default -> XmlIn.skip(at);
      }
    }
    return new NumberFormats(List.copyOf(byStyle));
  }

  private static String builtIn(int id) {
    String code = BuiltinFormats.getBuiltinFormat(id);
    return code == null ? GENERAL : code;
  }

  /** How many styles the workbook has. */
  public int styles() {
    return byStyle.size();
  }

  /** The format code such as 0.00; General for a style that the workbook does not have. */
  public String code(int style) {
    return format(style).code();
  }

  /** Whether a number in this style is shown as a date or a time. */
  public boolean isDate(int style) {
    return format(style).isDate();
  }

  /** Whether a number in this style is shown times 100 with a percent sign. */
  public boolean isPercent(int style) {
    String code = code(style);
    boolean quoted = false;
    for (int i = 0; i < code.length(); i++) {
      switch (code.charAt(i)) {
        case '"' -> quoted = !quoted;
        case '\\', '_', '*' -> i += quoted ? 0 : 1;
        case '%' -> {
          if (!quoted) {
            return true;
          }
        }
        default -> {
          // Any other character says nothing about percent.
        }
      }
    }
    return false;
  }

  private Format format(int style) {
    return style >= 0 && style < byStyle.size() ? byStyle.get(style) : UNKNOWN;
  }
}
