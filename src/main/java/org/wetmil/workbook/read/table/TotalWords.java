package org.wetmil.workbook.read.table;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** Tells the totals of a table from its lines. */
public final class TotalWords {
  private static final String TOTAL =
      "(?:totals?|sub[\\s-]?totals?|sum|sums|summe|zwischensumme|gesamt|gesamtsumme|insgesamt"
          + "|suma|totales|subtotales)";

  /** "Total", "Total area", "Total for level 2"; a room may still be named Total Fitness. */
  private static final Pattern BEGINS =
      Pattern.compile(
          "(?iu)^(?:grand\\s+)?"
              + TOTAL
              + "\\b[\\s:=]*(?:(?:of|for|area|walls?|ceilings?|trim|doors?|paint|sf|ft2|ft²|m2|m²|net"
              + "|gross|job|project|floor|level|section|room|page|this|all|hours|labou?r|general"
              + "|fläche|geschoss|planta|superficie)\\b.*)?$");

  /** "Lobby total", "Level 1 subtotal:". */
  private static final Pattern ENDS = Pattern.compile("(?iu)^.*\\b" + TOTAL + "\\s*[:=]?$");

  /** "Subtotal Lobby": no room has such a name. */
  private static final Pattern PARTIAL =
      Pattern.compile("(?iu)^(?:sub[\\s-]?totals?|zwischensumme|subtotales)\\b.*$");

  private static final Pattern MAYBE = Pattern.compile("(?i)total|sum|gesamt");

  private static final Pattern SUM_OF_RANGE =
      Pattern.compile(
          "(?i)\\b(?:SUM|SUBTOTAL|AGGREGATE)\\([^()]*?\\$?[A-Z]{1,3}\\$?(\\d{1,7}):\\$?[A-Z]{1,3}\\$?(\\d{1,7})\\b");

  private TotalWords() {}

  public static boolean isLabel(String text) {
    // Most texts of a long sheet have none of these letters, and need no pattern.
    return MAYBE.matcher(text).find() && isLabelled(text);
  }

  private static boolean isLabelled(String text) {
    return BEGINS.matcher(text).matches()
        || ENDS.matcher(text).matches()
        || PARTIAL.matcher(text).matches();
  }

  /** Whether all numbers of a row are formulas, of which one adds up rows above. */
  static boolean addsUp(int row, List<RawCell> cells) {
    boolean any = false;
    for (RawCell cell : cells) {
      boolean number = cell.kind() == CellKind.NUMBER || cell.kind() == CellKind.ERROR;
      if (number && cell.formula() == null) {
        return false;
      }
      if (cell.formula() != null && !cell.formula().isEmpty()) {
        if (!isSumAbove(row, cell.formula())) {
          return false;
        }
        any = true;
      }
    }
    return any;
  }

  private static boolean isSumAbove(int row, String formula) {
    Matcher matcher = SUM_OF_RANGE.matcher(formula);
    boolean above = false;
    while (matcher.find()) {
      int first = Integer.parseInt(matcher.group(1));
      int last = Integer.parseInt(matcher.group(2));
      above |= first <= last && last <= row;
    }
    return above;
  }
}
