package org.wetmil.measure;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.quantity.Unit;

/** Numbers typed as text: {@code 1,234.5}, {@code 9 m²}, {@code 4318 SF}, {@code 36 %}. */
public final class NumberText {
  private static final Pattern NUMBER =
      Pattern.compile("([-+]?) ?(" + Digits.PATTERN + ") ?(\\D.*)?");
  private static final String EXPECTED =
      "a number, alone or with a unit: 1250, 9 m², 4318 SF, 36 %";

  private NumberText() {}

  /**
   * Reads a number, with or without a unit behind it.
   *
   * <p>{@code 1,23} is 1.23, and {@code 1.234} is 1.234. {@code 1,234} is 1234. In a column of
   * decimal commas the last two change places: {@code 1.234} is 1234, {@code 1,234} is 1.234. A
   * number in parentheses is refused: it may be a negative amount or a remark.
   *
   * @param raw the text of the cell; null is not known
   * @param columnMark the decimal mark that the rest of the column shows
   * @return the value with its unit, of any dimension; not known; or refused
   */
  public static Typed read(String raw, DecimalMark columnMark) {
    String text = Plain.text(raw);
    if (Plain.isNotKnown(text)) {
      return new Typed.NotKnown();
    }
    Matcher number = NUMBER.matcher(text);
    if (Plain.isTooLong(text) || !number.matches()) {
      return new Typed.Refused(raw, EXPECTED);
    }
    OptionalDouble size = Digits.read(number.group(2), columnMark);
    String word = number.group(3);
    Optional<Unit> unit = word == null ? Optional.empty() : Plain.unit(word);
    if (size.isEmpty() || (word != null && unit.isEmpty())) {
      return new Typed.Refused(raw, EXPECTED);
    }
    double value = number.group(1).equals("-") ? -size.getAsDouble() : size.getAsDouble();
    return new Typed.Value(value, unit);
  }
}
