package org.wetmil.workbook.look;

import java.util.List;

/** Text that fits into cells and formulas. */
public final class Texts {
  private static final int CELL = 32_767;

  /** A text within a formula has at most 255 characters, those of a criterion included. */
  private static final int MOST_QUOTED = 250;

  private Texts() {}

  /** A text cut to what a cell holds. */
  public static String fitting(String text) {
    return text.length() <= CELL ? text : text.substring(0, CELL - 3) + "...";
  }

  /** Lines in one cell; those that do not fit are counted. */
  public static String lines(List<String> lines) {
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

  /**
   * A text as a criterion of SUMIFS that matches itself alone; of a text that is longer than a
   * formula can hold, whatever begins like it.
   */
  public static String criterion(String text) {
    String whole = plain(text);
    return whole.length() <= MOST_QUOTED ? quoted("=" + whole) : beginning(text);
  }

  /** A criterion of SUMIFS that matches whatever begins like a text. */
  public static String beginning(String text) {
    int end = Math.min(text.length(), MOST_QUOTED);
    while (plain(text.substring(0, end)).length() > MOST_QUOTED) {
      end--;
    }
    return quoted("=" + plain(text.substring(0, end)) + "*");
  }

  private static String plain(String text) {
    return text.replace("~", "~~").replace("*", "~*").replace("?", "~?");
  }
}
