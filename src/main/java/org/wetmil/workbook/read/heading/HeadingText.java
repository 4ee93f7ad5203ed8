package org.wetmil.workbook.read.heading;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.words.UnitWords;

/**
 * A heading taken apart: {@code Length (m)}, {@code Height, ft}, {@code Wall area SF}.
 *
 * @param text as written, on one line
 * @param names what may be the name, likeliest first
 * @param unit the unit that stands with it
 * @param bare whether it is a unit and nothing else
 */
public record HeadingText(String text, List<String> names, Optional<Unit> unit, boolean bare) {
  /** A longer text is a sentence; to look for units in one would take long and find none. */
  private static final int LONGEST = 200;

  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");
  private static final Pattern BRACKETS = Pattern.compile("(.*?)[(\\[{]([^)\\]}]*)[)\\]}]?(.*)");
  private static final Pattern TAIL =
      Pattern.compile("(.*?[^\\s,/:-])(?:\\s*[,/:-]\\s*|\\s+)((?:\\S+\\s)?\\S+)");
  private static final Pattern LAST_WORD = Pattern.compile("(.*\\S)\\s+(\\S+)");
  private static final Pattern IN_AT_END = Pattern.compile("(?i)\\s+(?:in|en)$");

  /** A heading of a bid. Units outside brackets are only those that a bid's columns have. */
  public static HeadingText of(String raw) {
    String text = SPACES.matcher(raw).replaceAll(" ").strip();
    if (text.length() > LONGEST) {
      return new HeadingText(text, List.of(text), Optional.empty(), false);
    }
    Optional<Unit> whole = UnitWords.findForBid(text);
    if (whole.isPresent()) {
      return new HeadingText(text, List.of(text), whole, true);
    }
    Matcher brackets = BRACKETS.matcher(text);
    if (brackets.matches()) {
      return bracketed(text, brackets);
    }
    if (text.startsWith("%") || text.endsWith("%")) {
      String name = text.replace("%", "").strip();
      return new HeadingText(text, List.of(text, name), Optional.of(Unit.PERCENT), false);
    }
    for (Pattern pattern : List.of(TAIL, LAST_WORD)) {
      Matcher tail = pattern.matcher(text);
      if (tail.matches()) {
        Optional<Unit> unit = UnitWords.findForBid(tail.group(2));
        if (unit.isPresent()) {
          String name = IN_AT_END.matcher(tail.group(1)).replaceFirst("");
          return new HeadingText(text, List.of(text, name), unit, false);
        }
      }
    }
    return new HeadingText(text, List.of(text), Optional.empty(), false);
  }

  private static HeadingText bracketed(String text, Matcher brackets) {
    String inside = brackets.group(2).strip();
    String outside = (brackets.group(1).strip() + " " + brackets.group(3).strip()).strip();
    Optional<Unit> unit =
        Stream.concat(Stream.of(inside), Stream.of(inside.split("\\s*[,;]\\s*|\\s+in\\s+|^in\\s+")))
            .flatMap(each -> UnitWords.find(each).stream())
            .findFirst();
    // "Height ft (clear)": the unit may also stand before the brackets
    HeadingText rest = outside.isEmpty() ? null : of(outside);
    if (rest == null) {
      return new HeadingText(text, List.of(inside), unit, unit.isPresent());
    }
    List<String> names =
        Stream.concat(
                unit.isPresent() ? Stream.of(outside) : Stream.of(text, outside),
                rest.names().stream())
            .distinct()
            .toList();
    return new HeadingText(text, names, unit.or(rest::unit), false);
  }
}
