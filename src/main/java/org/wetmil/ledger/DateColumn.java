package org.wetmil.ledger;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the dates of a column by one order of day and month, which the whole column decides. */
final class DateColumn {
  static final HouseFigure FIRST_YEAR =
      new HouseFigure("Year of two digits", "2000", "", "the century that it is of");

  private static final Pattern TIME = Pattern.compile("[ T]\\d{1,2}:\\d{2}.*$");
  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})");
  private static final Pattern DOTTED =
      Pattern.compile("(\\d{1,2})\\. ?(\\d{1,2})\\. ?(\\d{4}|\\d{2})");
  private static final Pattern SLASHED =
      Pattern.compile("(\\d{1,2})[-/](\\d{1,2})[-/](\\d{4}|\\d{2})");
  private static final Pattern DAY_WORD =
      Pattern.compile(
          "(\\d{1,2})(?:\\.| de|st|nd|rd|th)?[ -]*(\\p{L}+)\\.?,?(?: de)?[ -]*(\\d{4}|\\d{2})");
  private static final Pattern WORD_DAY =
      Pattern.compile("(\\p{L}+)\\.? (\\d{1,2})(?:st|nd|rd|th)?,? (\\d{4}|\\d{2})");

  /** Months by their first three letters, in English, German and Spanish. */
  private static final Map<String, Integer> MONTHS =
      Map.ofEntries(
          Map.entry("jan", 1),
          Map.entry("ene", 1),
          Map.entry("feb", 2),
          Map.entry("mar", 3),
          Map.entry("apr", 4),
          Map.entry("abr", 4),
          Map.entry("may", 5),
          Map.entry("mai", 5),
          Map.entry("jun", 6),
          Map.entry("jul", 7),
          Map.entry("aug", 8),
          Map.entry("ago", 8),
          Map.entry("sep", 9),
          Map.entry("oct", 10),
          Map.entry("okt", 10),
          Map.entry("nov", 11),
          Map.entry("dec", 12),
          Map.entry("dez", 12),
          Map.entry("dic", 12));

  private int monthFirst;
  private int dayFirst;
  private boolean ambiguous;

  /** Takes note of what a text shows about the column's order. */
  void see(String text) {
    Matcher slashed = SLASHED.matcher(bare(text));
    if (!slashed.matches()) {
      return;
    }
    int first = Integer.parseInt(slashed.group(1));
    int second = Integer.parseInt(slashed.group(2));
    if (first > 12 && second <= 12) {
      dayFirst++;
    } else if (second > 12 && first <= 12) {
      monthFirst++;
    } else if (first != second) {
      ambiguous = true;
    }
  }

  /** The order that most dates show; empty when none shows any. */
  Optional<DateOrder> shown() {
    if (monthFirst == dayFirst) {
      return Optional.empty();
    }
    return Optional.of(monthFirst > dayFirst ? DateOrder.MONTH_FIRST : DateOrder.DAY_FIRST);
  }

  /** Whether dates of both orders stand in the column. */
  boolean isMixed() {
    return monthFirst > 0 && dayFirst > 0;
  }

  /** Whether some date, such as 3/4/26, is read one way or the other by the column's order. */
  boolean isAmbiguous() {
    return ambiguous;
  }

  /**
   * Reads a date: 2026-03-04, 04.03.2026 and 4 Mar 2026 in one way only, 3/4/26 by the order. A
   * year of two digits is of this century (house).
   */
  static Optional<LocalDate> read(String text, DateOrder order) {
    String bare = bare(text);
    Matcher m = YEAR_FIRST.matcher(bare);
    if (m.matches()) {
      return date(m.group(1), m.group(2), m.group(3));
    }
    m = DOTTED.matcher(bare);
    if (m.matches()) {
      return date(m.group(3), m.group(2), m.group(1));
    }
    m = SLASHED.matcher(bare);
    if (m.matches()) {
      return order == DateOrder.MONTH_FIRST
          ? date(m.group(3), m.group(1), m.group(2))
          : date(m.group(3), m.group(2), m.group(1));
    }
    m = DAY_WORD.matcher(bare);
    if (m.matches()) {
      return date(m.group(3), month(m.group(2)), m.group(1));
    }
    m = WORD_DAY.matcher(bare);
    return m.matches() ? date(m.group(3), month(m.group(1)), m.group(2)) : Optional.empty();
  }

  private static String bare(String text) {
    return TIME.matcher(text.replace('\u00A0', ' ').strip()).replaceFirst("");
  }

  private static String month(String word) {
    String key = LedgerWords.key(word);
    return MONTHS.getOrDefault(key.substring(0, Math.min(3, key.length())), 0).toString();
  }

  private static Optional<LocalDate> date(String year, String month, String day) {
    int full = Integer.parseInt(year) + (year.length() == 2 ? FIRST_YEAR.value().intValue() : 0);
    try {
      return Optional.of(LocalDate.of(full, Integer.parseInt(month), Integer.parseInt(day)));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
