package org.wetmil.workbook.fill.page;

import java.util.Collection;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.wetmil.workbook.look.Texts;

/** Formulas that add up columns of the list of hours over the lines that count. */
final class HoursSums {
  /** A text in a formula is at most 255 characters long, its quotes doubled. */
  private static final int LONGEST_KEY = 100;

  /** Spellings of one name that a formula adds up; beyond, the value stands alone. */
  private static final int MOST_KEYS = 20;

  private final String sheet;

  HoursSums(String sheet) {
    this.sheet = sheet;
  }

  /** The sum over all lines. */
  String all(HoursColumn column) {
    return "SUMIF(%s,1,%s)".formatted(HoursColumn.COUNTED.whole(sheet), column.whole(sheet));
  }

  /**
   * The sum over the lines that have one of some keys; null when there is no such formula.
   *
   * @param keys different from each other in more than case
   */
  String ofKeys(HoursColumn column, HoursColumn keyColumn, Collection<String> keys) {
    return sum(column, keyColumn, keys, Texts::criterion);
  }

  /** The sum over the lines whose keys begin with one of some parts. */
  String begunBy(HoursColumn column, HoursColumn keyColumn, Collection<String> parts) {
    return sum(column, keyColumn, parts, Texts::beginning);
  }

  static boolean isTooLong(String key) {
    return key.length() > LONGEST_KEY;
  }

  private String sum(
      HoursColumn column,
      HoursColumn keyColumn,
      Collection<String> keys,
      UnaryOperator<String> criterion) {
    if (keys.size() > MOST_KEYS || keys.stream().anyMatch(HoursSums::isTooLong)) {
      return null;
    }
    return keys.stream()
        .map(
            key ->
                "SUMIFS(%s,%s,1,%s,%s)"
                    .formatted(
                        column.whole(sheet),
                        HoursColumn.COUNTED.whole(sheet),
                        keyColumn.whole(sheet),
                        criterion.apply(key)))
        .collect(Collectors.joining("+"));
  }
}
