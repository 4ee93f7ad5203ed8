package org.wetmil.measure;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Amounts as they are typed: {@code $34}, {@code 34.50 EUR}, {@code USD 1,250}, {@code £34/h}. */
public final class MoneyText {
  /** A sign or a code of three letters (ISO 4217) on either side; a wage may say that it is one. */
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?:\\p{Sc}|[A-Z]{3})? ?([-+]?[\\d.,]*[\\d.,' ]*\\d) ?(?:\\p{Sc}|[A-Z]{3})?"
              + " ?(?:(?:/|(?:per|an) ) ?(?:h|hr|hour))?");

  private MoneyText() {}

  /** The amount, without its currency; refused like any number that cannot be read. */
  public static Typed read(String raw, DecimalMark mark) {
    String text = Plain.text(raw);
    Matcher amount = AMOUNT.matcher(text);
    return !Plain.isTooLong(text) && amount.matches()
        ? NumberText.read(amount.group(1), mark)
        : NumberText.read(raw, mark);
  }
}
