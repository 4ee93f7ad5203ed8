package org.wetmil.workbook.reconcile;

import java.util.regex.Pattern;

/** Names of jobs and coatings as the sheets carry them, fit to be criteria of SUMIFS. */
final class Keys {
  /** With every character escaped it stays under the 255 that a text in a formula may have. */
  private static final int LONGEST = 120;

  private static final Pattern NUMBER = Pattern.compile("[-+\\d.,:/ %$€]*(?:[eE][-+]?\\d+)?");

  private Keys() {}

  static String job(String name) {
    String key = plain(name);
    // a criterion that reads as a number would look for a number
    return NUMBER.matcher(key).matches() ? "Job " + key : key;
  }

  static String plain(String name) {
    String key = name.strip().replaceAll("[\\s\\u00a0]+", " ");
    return key.length() <= LONGEST ? key : key.substring(0, LONGEST).strip();
  }
}
