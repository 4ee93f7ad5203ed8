package org.wetmil.measure;

import java.text.Normalizer;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Unit;

/**
 * Lengths as they are typed: {@code 12.5}, {@code 12' 6"}, {@code 3' - 5 29/32"}, {@code 12 ft 6
 * in}, {@code 3.81 m}, {@code 84"}.
 */
public final class LengthText {
  private static final String INCH_MARK = "(?:\"|in\\.?|inch|inches)";

  // After the word "ft" without a space only marked inches follow: 12 ft2 is an area.
  private static final Pattern FEET_INCHES =
      Pattern.compile(
          "(.+?) ?(?:'|(?:ft\\.?|feet|foot)(?:(?=[ ,-])|(?=.*"
              + INCH_MARK
              + "$)))"
              + (" ?[-,]? ?([\\d.].*?) ?" + INCH_MARK + "?"),
          Pattern.CASE_INSENSITIVE);
  private static final Pattern ONE_UNIT = Pattern.compile("([\\d.,][\\d.,/ -]*(?<=\\d)) ?(\\D.*)?");
  private static final Pattern WITH_FRACTION =
      Pattern.compile("(?:(" + Digits.PATTERN + ")(?: ?- ?| ))?(\\d{1,3}) ?/ ?(\\d{1,3})");
  private static final Pattern DIGITS = Pattern.compile(Digits.PATTERN);
  private static final Pattern FRACTION_SIGN = Pattern.compile("[\\u00BC-\\u00BE\\u2150-\\u215E]");

  private static final double IN_PER_FT = 12;
  private static final String EXPECTED =
      "a length such as 12.5, 12' 6\", 12 ft 6 in, 3.81 m or 3810 mm";
  private static final String EXPECTED_AFTER_FEET =
      "whole feet and then inches below 12: 12' 6\", 12' 6 1/2\"";

  private LengthText() {}

  /**
   * Reads a length, with or without a unit.
   *
   * <p>Decimals and thousands are told apart as in {@link NumberText#read}. Feet and inches give
   * feet; the mark of the inches may be missing: {@code 12' 6}. A fraction may stand alone, after
   * whole inches or before any unit: {@code 1/2"}, {@code 6 1/2"}, {@code 6-1/2}, {@code 6½"}.
   *
   * @param raw the text of the cell; null is not known
   * @param columnMark the decimal mark that the rest of the column shows
   * @return the length in the unit typed, or without one; not known; or refused
   */
  public static Typed read(String raw, DecimalMark columnMark) {
    String text = spelledOut(Plain.text(raw));
    if (Plain.isNotKnown(text)) {
      return new Typed.NotKnown();
    }
    if (Plain.isTooLong(text)) {
      return new Typed.Refused(raw, EXPECTED);
    }
    boolean isNegative = text.startsWith("-");
    String size = isNegative || text.startsWith("+") ? text.substring(1).strip() : text;

    Matcher feetInches = FEET_INCHES.matcher(size);
    if (feetInches.matches()) {
      OptionalDouble feet = number(feetInches.group(1), columnMark);
      OptionalDouble inches = number(feetInches.group(2), columnMark);
      if (feet.isEmpty() || inches.isEmpty()) {
        return refused(raw);
      }
      if (feet.getAsDouble() % 1 != 0 || inches.getAsDouble() >= IN_PER_FT) {
        return new Typed.Refused(raw, EXPECTED_AFTER_FEET);
      }
      double value = feet.getAsDouble() + inches.getAsDouble() / IN_PER_FT;
      return value(value, isNegative, Optional.of(Unit.FOOT));
    }

    Matcher oneUnit = ONE_UNIT.matcher(size);
    if (!oneUnit.matches()) {
      return refused(raw);
    }
    OptionalDouble number = number(oneUnit.group(1), columnMark);
    String word = oneUnit.group(2);
    Optional<Unit> unit = word == null ? Optional.empty() : Plain.unit(word);
    boolean isLength =
        word == null || unit.filter(u -> u.dimension() == Dimension.LENGTH).isPresent();
    return number.isPresent() && isLength
        ? value(number.getAsDouble(), isNegative, unit)
        : refused(raw);
  }

  private static Typed refused(String raw) {
    return new Typed.Refused(raw, LengthHint.of(raw).orElse(EXPECTED));
  }

  private static Typed value(double size, boolean isNegative, Optional<Unit> unit) {
    return new Typed.Value(isNegative ? -size : size, unit);
  }

  /** A number that may end in a proper fraction. */
  private static OptionalDouble number(String text, DecimalMark columnMark) {
    Matcher withFraction = WITH_FRACTION.matcher(text);
    if (!withFraction.matches()) {
      return DIGITS.matcher(text).matches()
          ? Digits.read(text, columnMark)
          : OptionalDouble.empty();
    }
    OptionalDouble whole =
        withFraction.group(1) == null
            ? OptionalDouble.of(0)
            : Digits.read(withFraction.group(1), columnMark);
    double above = Double.parseDouble(withFraction.group(2));
    double below = Double.parseDouble(withFraction.group(3));
    boolean isSound = whole.isPresent() && whole.getAsDouble() % 1 == 0 && above < below;
    return isSound
        ? OptionalDouble.of(whole.getAsDouble() + above / below)
        : OptionalDouble.empty();
  }

  /** Writes a single character such as a half as 1/2, apart from the digits before it. */
  private static String spelledOut(String text) {
    String apart =
        FRACTION_SIGN
            .matcher(text)
            .replaceAll(sign -> " " + Normalizer.normalize(sign.group(), Normalizer.Form.NFKC));
    return apart.replace('\u2044', '/').strip().replace("  ", " ");
  }
}
