package org.wetmil.trade;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.quantity.Require;

/**
 * A tip code: a fan digit followed by the orifice in thousandths of an inch (practice).
 *
 * <p>517 is fan digit 5 and an orifice of 0.017 in. A code of four digits has a fan number of two
 * (from memory): 1219 is fan 12, orifice 0.019 in.
 *
 * @param fanDigit half the width of the fan in inches at 12 in, 1..24
 * @param orificeThou diameter of the orifice in thousandths of an inch, 1..99
 */
public record TipCode(int fanDigit, int orificeThou) {
  /** A fan of 48 in; a wider one is taken as a slip of the keys, 5170 for 517 (house). */
  public static final int WIDEST_FAN_DIGIT = 24;

  /** What is longer is a remark, of which a sentence quotes only the beginning. */
  private static final int LONGEST = 40;

  private static final Pattern DASHES = Pattern.compile("[\\u2010-\\u2015\\u2212]");
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00A0\\u2007\\u202F]+");
  private static final Pattern CODE = Pattern.compile("(\\d{1,2}) ?- ?(\\d{2})|(\\d+)(?:[.,]0+)?");
  private static final Pattern SEVERAL = Pattern.compile("\\d{3,4}(\\D+\\d{3,4})+");
  private static final Pattern INCHES = Pattern.compile("0?[.,]0?\\d{2}( ?(in|\"))?");

  /** Fan and orifice with another mark than a hyphen between them: 5/17, 5.17, 5 17. */
  private static final Pattern PARTED = Pattern.compile("(\\d{1,2}) ?[/.:,_ ] ?(\\d{2})");

  private static final String MONTH =
      "(?i:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\\p{L}*\\.?";
  private static final Pattern DATE =
      Pattern.compile(
          "\\d{1,4}[-/.]\\d{1,2}[-/.]\\d{1,4}( .*)?" // 5/17/2024, 2024-05-17 00:00
              + ("|\\d{1,2}[-/. ]*" + MONTH + "([-/. ]*\\d{2,4})?") // 17-May-24
              + ("|" + MONTH + "[-/. ]*\\d{1,4}")); // May-17

  private static final Refused EMPTY = refuse("", Reason.EMPTY);

  public TipCode {
    if (fanDigit < 1 || fanDigit > WIDEST_FAN_DIGIT || orificeThou < 1 || orificeThou > 99) {
      throw new IllegalArgumentException("no such tip: fan " + fanDigit + ", " + orificeThou);
    }
  }

  /** The code as marked on a tip, "517" or "1219". */
  public String code() {
    return Integer.toString(100 * fanDigit + orificeThou);
  }

  /**
   * Width of the fan: 2 x digit x distance / 12 (practice; the angle of a fan does not change with
   * the distance).
   *
   * @param distanceIn distance from tip to surface in inches, above 0
   * @return width in inches
   */
  public double fanIn(double distanceIn) {
    Require.positive("distanceIn", distanceIn);
    return Constants.FAN_IN_PER_DIGIT.value()
        * fanDigit
        * distanceIn
        / Constants.STANDARD_DISTANCE_IN.value();
  }

  /** What reading a cell as a tip code gave. */
  public sealed interface Result permits Read, Refused {}

  /** The cell holds a tip code. */
  public record Read(TipCode tip) implements Result {}

  /**
   * The cell holds no tip code.
   *
   * @param raw the text as it stands in the cell
   * @param reason why not
   * @param sentence what was found and what to do, to be shown to the user
   */
  public record Refused(String raw, Reason reason, String sentence) implements Result {}

  /** Why a text is no tip code. */
  public enum Reason {
    EMPTY("The tip is empty"),
    DATE("%s is a date, which a spreadsheet makes of a code with a hyphen"),
    PARTED("%s reads as a date, a fraction or two numbers"),
    SEVERAL("%s names several tips"),
    INCHES("%s is an orifice in inches, not a tip code"),
    NO_FAN("%s has no fan digit before the orifice"),
    NO_ORIFICE("%s has orifice 00"),
    FAN_TOO_WIDE("%s would have a fan wider than " + 2 * WIDEST_FAN_DIGIT + " in"),
    WRONG_LENGTH("%s does not have three or four digits"),
    NOT_A_CODE("%s is not a tip code");

    private final String found;

    Reason(String found) {
      this.found = found;
    }

    private String sentence(String raw) {
      String advice =
          this == DATE
              ? "; format the cell as text and type the code without one, such as 517."
              : "; type one code, such as 517.";
      return String.format(Locale.ROOT, found, raw) + advice;
    }
  }

  /**
   * Reads a tip code as it may stand in a cell: 517, "517", 517.0, " 5-17 ".
   *
   * @param raw the text of the cell, or the number in it written plainly; null is empty
   * @return the code, or why the text is none
   */
  public static Result read(String raw) {
    if (raw == null || raw.isEmpty()) {
      return EMPTY;
    }
    String text = plain(raw);
    if (text.isEmpty()) {
      return refuse(raw, Reason.EMPTY);
    }
    if (text.length() > LONGEST) {
      return refuse(raw, Reason.NOT_A_CODE);
    }
    Matcher code = CODE.matcher(text);
    if (code.matches()) {
      return code.group(3) == null
          ? fromDigits(raw, code.group(1), code.group(2))
          : fromDigits(raw, code.group(3));
    }
    if (SEVERAL.matcher(text).matches()) {
      return refuse(raw, Reason.SEVERAL);
    }
    if (INCHES.matcher(text).matches()) {
      return refuse(raw, Reason.INCHES);
    }
    Matcher parted = PARTED.matcher(text);
    if (parted.matches()
        && fromDigits(raw, parted.group(1), parted.group(2)) instanceof Read meant) {
      String found = String.format(Locale.ROOT, Reason.PARTED.found, text);
      return new Refused(raw, Reason.PARTED, found + "; type " + meant.tip().code() + ".");
    }
    return DATE.matcher(text).matches() ? refuseDate(raw) : refuse(raw, Reason.NOT_A_CODE);
  }

  /**
   * The refusal for a cell that the spreadsheet stores as a date, whatever it shows.
   *
   * @param raw the text that the cell shows
   */
  public static Refused refuseDate(String raw) {
    return DateOfTip.typed(raw)
        .map(
            tip ->
                new Refused(
                    raw,
                    Reason.DATE,
                    "%s is a date, which a spreadsheet makes of %d-%02d; format the cell as text and type %s."
                        .formatted(raw.strip(), tip.fanDigit(), tip.orificeThou(), tip.code())))
        .orElseGet(() -> refuse(raw, Reason.DATE));
  }

  private static Result fromDigits(String raw, String digits) {
    int length = digits.length();
    if (length < 3 || length > 4) {
      return refuse(raw, Reason.WRONG_LENGTH);
    }
    return fromDigits(raw, digits.substring(0, length - 2), digits.substring(length - 2));
  }

  private static Result fromDigits(String raw, String fan, String orifice) {
    if (fan.startsWith("0")) {
      return refuse(raw, Reason.NO_FAN);
    }
    if (orifice.equals("00")) {
      return refuse(raw, Reason.NO_ORIFICE);
    }
    int fanDigit = Integer.parseInt(fan);
    return fanDigit > WIDEST_FAN_DIGIT
        ? refuse(raw, Reason.FAN_TOO_WIDE)
        : new Read(new TipCode(fanDigit, Integer.parseInt(orifice)));
  }

  private static Refused refuse(String raw, Reason reason) {
    String whole = raw == null ? "" : raw;
    String text = whole.strip();
    boolean isLong = text.length() > LONGEST;
    return new Refused(
        whole, reason, reason.sentence(isLong ? text.substring(0, LONGEST) + "..." : text));
  }

  /** Dashes to hyphens, every kind of space to one plain space, none at the ends. */
  private static String plain(String raw) {
    String hyphened = DASHES.matcher(raw).replaceAll("-");
    return SPACES.matcher(hyphened).replaceAll(" ").strip();
  }
}
