package org.wetmil.measure;

import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Digits with marks for thousands and decimals, without sign or unit.
 *
 * <p>Of two kinds of mark the last is decimal and the other groups thousands. A mark that appears
 * more than once groups. One mark alone is decimal, unless exactly three digits follow it and one
 * to three that do not start with 0 precede it: then it depends on the column, and where the column
 * does not tell, a comma groups and a point is decimal. A space can only group.
 */
final class Digits {
  /** What a number may look like inside a pattern; a space only before a group of three. */
  static final String PATTERN = "[.,]?\\d(?:[\\d.,]| (?=\\d{3}(?!\\d)))*(?<=\\d)";

  private static final Pattern PLAIN = Pattern.compile("\\d+(\\.\\d+)?|\\.\\d+");

  private Digits() {}

  /** The number, or empty when the marks do not make sense. */
  static OptionalDouble read(String digits, DecimalMark columnMark) {
    boolean commaIsDecimal = decimalMark(digits, columnMark) == DecimalMark.COMMA;
    char decimal = commaIsDecimal ? ',' : '.';
    char group = commaIsDecimal ? '.' : ',';

    int at = digits.lastIndexOf(decimal);
    String whole = at < 0 ? digits : digits.substring(0, at);
    String decimals = at < 0 ? "" : "." + digits.substring(at + 1);
    if (isGrouped(whole, group)) {
      whole = whole.replace(String.valueOf(group), "");
    } else if (isGrouped(whole, ' ')) {
      whole = whole.replace(" ", "");
    }

    String plain = whole + decimals;
    return PLAIN.matcher(plain).matches()
        ? OptionalDouble.of(Double.parseDouble(plain))
        : OptionalDouble.empty();
  }

  /** The decimal mark of digits that can be read in one way only, else unknown. */
  static DecimalMark shownMark(String digits) {
    int comma = digits.lastIndexOf(',');
    int point = digits.lastIndexOf('.');
    if (comma >= 0 && point >= 0) {
      return comma > point ? DecimalMark.COMMA : DecimalMark.POINT;
    }
    char mark = comma >= 0 ? ',' : '.';
    boolean isAloneAndDecimal =
        digits.indexOf(mark) >= 0
            && digits.indexOf(mark) == digits.lastIndexOf(mark)
            && !isGrouped(digits, mark);
    if (!isAloneAndDecimal) {
      return DecimalMark.UNKNOWN;
    }
    return mark == ',' ? DecimalMark.COMMA : DecimalMark.POINT;
  }

  private static DecimalMark decimalMark(String digits, DecimalMark columnMark) {
    DecimalMark shown = shownMark(digits);
    if (shown != DecimalMark.UNKNOWN) {
      return shown;
    }
    boolean groupsWithPoints = digits.indexOf('.') != digits.lastIndexOf('.');
    boolean groupsWithCommas = digits.indexOf(',') != digits.lastIndexOf(',');
    if (groupsWithPoints || groupsWithCommas) {
      return groupsWithPoints ? DecimalMark.COMMA : DecimalMark.POINT;
    }
    return columnMark;
  }

  private static boolean isGrouped(String whole, char mark) {
    return whole.matches("[1-9]\\d{0,2}(" + Pattern.quote(String.valueOf(mark)) + "\\d{3})+");
  }
}
