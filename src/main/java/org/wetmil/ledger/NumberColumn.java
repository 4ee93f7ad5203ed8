package org.wetmil.ledger;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads the numbers of a column by one decimal mark, which the whole column decides. See first,
 * read then.
 */
final class NumberColumn {
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0\\u2007\\u202F]+");
  private static final Pattern DASHES = Pattern.compile("[\u2012-\u2015\u2212]");
  private static final Pattern NOT_DIGIT = Pattern.compile("\\D");
  private static final Pattern COMMA_GROUPS = Pattern.compile("\\d{1,3}([,' ]\\d{3})+");
  private static final Pattern POINT_GROUPS = Pattern.compile("\\d{1,3}([.' ]\\d{3})+");
  private static final Pattern EITHER_WAY = Pattern.compile("[1-9]\\d{0,2}[.,]\\d{3}");
  private static final Pattern CODE_FIRST = Pattern.compile("([A-Z]{3}) ?(?=[-+(\\d.,])(.+)");
  private static final Pattern CODE_LAST = Pattern.compile("(.*[\\d).,-]) ?([A-Z]{3})");
  private static final Pattern WORD_LAST = Pattern.compile("([^\\p{L}]*+)(\\p{L}.*)");
  private static final Pattern DIGIT = Pattern.compile("\\d");
  private static final Map<String, String> SYMBOLS =
      Map.of("US$", "USD", "$", "$", "€", "EUR", "£", "GBP");

  private static final Set<String> CODES =
      Currency.getAvailableCurrencies().stream()
          .map(Currency::getCurrencyCode)
          .collect(Collectors.toUnmodifiableSet());

  private int points;
  private int commas;
  private boolean ambiguous;

  /**
   * A text taken apart.
   *
   * @param digits digits and marks alone
   * @param currency code or symbol; empty when there is none
   * @param word what stands behind the number, such as a unit; empty when there is nothing
   */
  private record Parts(boolean negative, String digits, String currency, String word) {}

  /** A number with what stood beside it. */
  record Value(BigDecimal number, String currency, String word) {}

  /** Takes note of what a text shows about the column's decimal mark. */
  void see(String text) {
    String digits = parts(text).digits();
    int point = digits.lastIndexOf('.');
    int comma = digits.lastIndexOf(',');
    if (point >= 0 && comma >= 0) {
      count(point > comma);
      return;
    }
    if (point < 0 && comma < 0) {
      return;
    }
    char mark = point >= 0 ? '.' : ',';
    int at = Math.max(point, comma);
    if (digits.indexOf(mark) != at) {
      count(mark == ','); // several of one kind can only group
    } else if (EITHER_WAY.matcher(digits).matches()) {
      ambiguous = true;
    } else {
      count(mark == '.');
    }
  }

  private void count(boolean point) {
    points += point ? 1 : 0;
    commas += point ? 0 : 1;
  }

  /** The mark that most texts show; empty when none shows any. */
  Optional<LedgerLayout.Mark> shown() {
    if (points == commas) {
      return Optional.empty();
    }
    return Optional.of(points > commas ? LedgerLayout.Mark.POINT : LedgerLayout.Mark.COMMA);
  }

  /** Whether some text, such as 1.234, is read one way or the other by the column's mark. */
  boolean isAmbiguous() {
    return ambiguous;
  }

  /** Adds what another column of the same ledger showed. */
  void add(NumberColumn other) {
    points += other.points;
    commas += other.commas;
  }

  /** Reads a number: 1,234.50 or 1.234,50 by the mark, (12.00), -12, 12-, $ or € on either side. */
  static Optional<Value> read(String text, LedgerLayout.Mark mark) {
    Parts parts = parts(text);
    String decimal = mark == LedgerLayout.Mark.POINT ? "." : ",";
    Pattern grouped = mark == LedgerLayout.Mark.POINT ? COMMA_GROUPS : POINT_GROUPS;
    String digits = parts.digits();
    int at = digits.lastIndexOf(decimal);
    String whole = at < 0 ? digits : digits.substring(0, at);
    String decimals = at < 0 ? "" : digits.substring(at + 1);
    if (grouped.matcher(whole).matches()) {
      whole = NOT_DIGIT.matcher(whole).replaceAll("");
    }
    if (NOT_DIGIT.matcher(whole + decimals).find() || (whole + decimals).isEmpty()) {
      return Optional.empty();
    }
    BigDecimal number = new BigDecimal((whole.isEmpty() ? "0" : whole) + "." + decimals + "0");
    number = number.setScale(decimals.length());
    return Optional.of(
        new Value(parts.negative() ? number.negate() : number, parts.currency(), parts.word()));
  }

  private static Parts parts(String text) {
    String rest = DASHES.matcher(SPACES.matcher(text).replaceAll(" ")).replaceAll("-");
    rest = rest.replace('\u2019', '\'').strip();
    boolean negative = false;
    String currency = "";
    String before;
    do {
      before = rest;
      if (rest.startsWith("(") && rest.endsWith(")")) {
        negative = true;
        rest = rest.substring(1, rest.length() - 1).strip();
      }
      if (rest.startsWith("-") || rest.endsWith("-")) {
        negative = true;
        rest = rest.startsWith("-") ? rest.substring(1) : rest.substring(0, rest.length() - 1);
      } else if (rest.startsWith("+")) {
        rest = rest.substring(1);
      }
      rest = rest.strip();
      for (String symbol : new String[] {"US$", "$", "€", "£"}) {
        if (rest.startsWith(symbol) || rest.endsWith(symbol)) {
          currency = SYMBOLS.get(symbol);
          rest =
              rest.startsWith(symbol)
                  ? rest.substring(symbol.length())
                  : rest.substring(0, rest.length() - symbol.length());
          rest = rest.strip();
        }
      }
      Matcher first = CODE_FIRST.matcher(rest);
      Matcher last = CODE_LAST.matcher(rest);
      if (first.matches() && isCurrency(first.group(1))) {
        currency = first.group(1);
        rest = first.group(2).strip();
      } else if (last.matches() && isCurrency(last.group(2))) {
        currency = last.group(2);
        rest = last.group(1).strip();
      }
    } while (!rest.equals(before));
    Matcher word = WORD_LAST.matcher(rest);
    return word.matches() && DIGIT.matcher(word.group(1)).find()
        ? new Parts(negative, word.group(1).strip(), currency, word.group(2))
        : new Parts(negative, rest, currency, "");
  }

  static boolean isCurrency(String code) {
    return CODES.contains(code);
  }

  /** The currency that a text names beside its number; empty when it names none. */
  static String currency(String text) {
    return parts(text).currency();
  }
}
