package org.wetmil.workbook.fill;

import java.util.List;

/** Text that fits into cells and formulas. */
public final class Texts {
  private static final int CELL = 32_767;

  private Texts() {}

  /** A text cut to what a cell holds. */
  static String fitting(String text) {
    return text.length() <= CELL ? text : text.substring(0, CELL - 3) + "...";
  }

  /** Lines in one cell; those that do not fit are counted. */
  static String lines(List<String> lines) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < lines.size(); i++) {
      String line = (i == 0 ? "" : "\n") + lines.get(i);
      if (out.length() + line.length() > CELL - 60) {
        return out + "\n... and " + (lines.size() - i) + " more on the list of findings";
      }
      out.append(line);
    }
    return out.toString();
  }

  /** A text as a formula quotes it. */
  public static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }

  /** A sheet's name as a formula quotes it. */
  public static String sheet(String name) {
    return "'" + name.replace("'", "''") + "'";
  }

  /** A text as a criterion of SUMIFS that matches itself alone. */
  public static String criterion(String text) {
    return quoted("=" + plain(text));
  }

  /** A criterion of SUMIFS that matches every text begun by this one. */
  static String beginning(String text) {
    return quoted("=" + plain(text) + "*");
  }

  private static String plain(String text) {
    return text.replace("~", "~~").replace("*", "~*").replace("?", "~?");
  }
}
