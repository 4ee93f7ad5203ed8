package org.wetmil.measure;

import java.util.Collection;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Which mark a column of typed numbers has before its decimals. */
public enum DecimalMark {
  POINT,
  COMMA,
  /** Nothing in the column tells. */
  UNKNOWN;

  private static final Pattern DIGITS = Pattern.compile("\\d[\\d.,]*\\d");

  /**
   * The mark that the texts of one column show.
   *
   * @param texts the column as typed, in any order
   * @return the mark of those numbers that can be read in one way only, such as {@code 1,5};
   *     unknown when there are none or they disagree
   */
  public static DecimalMark seenIn(Collection<String> texts) {
    Set<DecimalMark> seen =
        texts.stream()
            .flatMap(text -> DIGITS.matcher(text).results().map(MatchResult::group))
            .map(Digits::shownMark)
            .filter(mark -> mark != UNKNOWN)
            .collect(Collectors.toSet());
    return seen.size() == 1 ? seen.iterator().next() : UNKNOWN;
  }
}
