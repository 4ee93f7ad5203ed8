package org.wetmil.workbook.reconcile;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Names of jobs and coatings as the sheets carry them, fit to be criteria of SUMIFS. */
final class Keys {
  /** With every character escaped it stays under the 255 that a text in a formula may have. */
  private static final int LONGEST = 120;

  /** What some program may read as a number, a time or a day: 12, 1e3, 5 %, 4 pm, 3/4, May 2026. */
  private static final Pattern NUMBER =
      Pattern.compile(
          "N*|N*\\dN*(?:e|a|p|am|pm)N*|(?=.*\\d)N*M\\p{L}*N*"
              .replace("N", "[-+\\d.,:/ %$\u20ac()]")
              .replace(
                  "M",
                  "(?:jan|ene|feb|mar|m\u00e4r|apr|abr|may|mai|jun|jul|aug|ago|sep|oct|okt|nov|dec|dez"
                      + "|dic)"),
          Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);

  private static final Set<String> TRUTH =
      Set.of("true", "false", "wahr", "falsch", "verdadero", "falso");

  private Keys() {}

  static String job(String name) {
    return asText("Job", plain(name));
  }

  static String coating(String name) {
    return asText("Coating", plain(name));
  }

  /** A criterion that reads as a number would look for a number. */
  private static String asText(String word, String key) {
    boolean other = NUMBER.matcher(key).matches() || TRUTH.contains(key.toLowerCase(Locale.ROOT));
    return other && !key.isEmpty() ? word + " " + key : key;
  }

  static String plain(String name) {
    String key = name.strip().replaceAll("[\\s\\u00a0]+", " ");
    return key.length() <= LONGEST ? key : key.substring(0, LONGEST).strip();
  }
}
