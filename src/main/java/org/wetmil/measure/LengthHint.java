package org.wetmil.measure;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How to write a length that was typed in a form that can mean more than one thing. */
public final class LengthHint {
  /**
   * Feet and inches without the marks that tell them (12 ft2 is an area): 14-6, 14:6, 14 6, 14ft6,
   * 14'6'.
   */
  private static final Pattern PARTED =
      Pattern.compile(
          "(\\d{1,4}) ?(?:[-:;+_ '\"]|(?:ft|feet|f)\\.?(?!2$))"
              + " ?(\\d{1,2}(?:[ -]\\d{1,2}/\\d{1,2})?) ?[\"']?",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern INCHES = Pattern.compile("(\\d{1,2}).*");

  /** A number with a remark around it: ~14, approx. 14 ft, 14 +/-, (14), 14'?. */
  private static final Pattern REMARKED =
      Pattern.compile(
          "(?:about|approx\\.?|ca\\.?|c\\.|circa|app\\.?|[~≈<>=(*?±])*\\s*"
              + "(\\d[\\d.,]*(?:\\s?(?:ft|'|in|\"|m|cm|mm))?)"
              + "\\s*(?:\\+/-|\\+-|ish|approx\\.?|[~+)*?±])*",
          Pattern.CASE_INSENSITIVE);

  private static final int IN_PER_FT = 12;

  private LengthHint() {}

  /**
   * What to type instead; empty when nothing certain can be said.
   *
   * @param raw the text of the cell, which is no length
   */
  public static Optional<String> of(String raw) {
    String text = Plain.text(raw);
    if (Plain.isTooLong(text)) {
      return Optional.empty();
    }
    Matcher parted = PARTED.matcher(text);
    if (parted.matches()) {
      Matcher inches = INCHES.matcher(parted.group(2));
      boolean whole = inches.matches() && Integer.parseInt(inches.group(1)) < IN_PER_FT;
      String size = parted.group(2).replace('-', ' ').replaceFirst("^0(?=\\d)", "");
      return Optional.of(
          whole
              ? "one length: %s feet %s inches is typed %s' %s\""
                  .formatted(parted.group(1), size, parted.group(1), size)
              : "one length, not two: the one to count with");
    }
    Matcher remarked = REMARKED.matcher(text);
    return remarked.matches() && !remarked.group(1).equals(text)
        ? Optional.of("the length alone: " + remarked.group(1))
        : Optional.empty();
  }
}
