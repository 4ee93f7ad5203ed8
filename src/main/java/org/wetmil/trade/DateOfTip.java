package org.wetmil.trade;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** The tip code that a spreadsheet has made a date of: 517 typed as 5-17 shows as 17-May. */
final class DateOfTip {
  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
  private static final String NAME = "(" + String.join("|", MONTHS) + ")\\p{L}*\\.?";

  private static final Pattern DAY_MONTH =
      Pattern.compile("(\\d{1,2})[-/. ]+" + NAME + "([-/. ].*)?", Pattern.CASE_INSENSITIVE);
  private static final Pattern MONTH_DAY =
      Pattern.compile(NAME + "[-/. ]+(\\d{1,2})([-/., ].*)?", Pattern.CASE_INSENSITIVE);
  private static final Pattern YEAR_FIRST =
      Pattern.compile("\\d{4}[-/.](\\d{1,2})[-/.](\\d{1,2}).*");
  private static final Pattern YEAR_LAST =
      Pattern.compile("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4}|\\d{2})( .*)?");

  /** No tip is finer, and few fans are wider (house): what is outside was typed the other way. */
  private static final int FINEST_THOU = 7;

  private static final int WIDEST_DIGIT = 9;

  private DateOfTip() {}

  /** The code, as the month and the day or the day and the month; empty when neither makes one. */
  static Optional<TipCode> typed(String date) {
    String plain = date.strip();
    Matcher dayMonth = DAY_MONTH.matcher(plain);
    if (dayMonth.matches()) {
      return of(month(dayMonth.group(2)), number(dayMonth.group(1)));
    }
    Matcher monthDay = MONTH_DAY.matcher(plain);
    if (monthDay.matches()) {
      return of(month(monthDay.group(1)), number(monthDay.group(2)));
    }
    return Stream.of(YEAR_FIRST.matcher(plain), YEAR_LAST.matcher(plain))
        .filter(Matcher::matches)
        .findFirst()
        .flatMap(matcher -> of(number(matcher.group(1)), number(matcher.group(2))));
  }

  private static Optional<TipCode> of(int first, int second) {
    return Stream.of(new int[] {first, second}, new int[] {second, first})
        .filter(pair -> pair[0] >= 1 && pair[0] <= WIDEST_DIGIT && pair[1] >= FINEST_THOU)
        .map(pair -> new TipCode(pair[0], pair[1]))
        .findFirst();
  }

  private static int month(String name) {
    return 1 + MONTHS.indexOf(name.toLowerCase(Locale.ROOT));
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
