package org.wetmil.workbook.read.words;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Units in headings, unit rows, unit columns, titles and number formats. */
public final class UnitWords {
  private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0]+");
  private static final Pattern FEET_MARKS = Pattern.compile("[’′´`]");
  private static final Pattern INCH_MARKS = Pattern.compile("[”″]");

  private static final Map<String, Unit> OTHER =
      Words.list("unit-words.csv", 3).stream()
          .collect(Collectors.toMap(row -> plain(row.get(0)), row -> Unit.valueOf(row.get(1))));

  /** Words that announce what units a sheet is in, in its title lines. */
  private static final Pattern ANNOUNCED =
      Pattern.compile(
          "(?iu)\\b(?:dimensions?|measurements?|units?|sizes?|lengths?|areas?|all in"
              + "|ma(?:ß|ss)e|einheit(?:en)?|abmessungen|medidas|unidades|dimensiones)\\b"
              + "[^:=]{0,30}?(?:\\bare\\b|\\bin\\b|\\ben\\b|:|=|\\()\\s*(.+)");

  /** Of the sections of a number format, the first; a semicolon in quotes parts none. */
  private static final Pattern SECTION = Pattern.compile("(?:[^\";]|\"[^\"]*(?:\"|$))*+");

  private static final Pattern LITERAL = Pattern.compile("\"([^\"]+)\"|\\\\(.)");
  private static final Pattern BRACKETED = Pattern.compile("^[(\\[{]\\s*(.*?)\\s*[)\\]}]$");

  private UnitWords() {}

  /** The unit that a word or phrase is, brackets around it or not. */
  public static Optional<Unit> find(String words) {
    Matcher bracketed = BRACKETED.matcher(words.strip());
    String plain = plain(bracketed.matches() ? bracketed.group(1) : words);
    if (plain.startsWith("in ")) {
      plain = plain.substring(3);
    }
    Optional<Unit> unit = Unit.find(plain);
    if (unit.isEmpty() && plain.endsWith(".")) {
      unit = Unit.find(plain.substring(0, plain.length() - 1));
    }
    return unit.isPresent() ? unit : Optional.ofNullable(OTHER.get(plain));
  }

  /** The unit that a heading of a bid can mean; others, such as L for litre, are mere letters. */
  public static Optional<Unit> findForBid(String words) {
    return find(words)
        .filter(
            unit ->
                unit == Unit.PERCENT
                    || List.of(Dimension.LENGTH, Dimension.AREA, Dimension.PRESSURE)
                        .contains(unit.dimension()));
  }

  /** The unit of lengths or areas that a title line announces: "All dimensions in mm". */
  public static Optional<Unit> announced(String title) {
    Matcher matcher = ANNOUNCED.matcher(title.replace('\u00a0', ' '));
    if (!matcher.find()) {
      return Optional.empty();
    }
    String said = matcher.group(1);
    for (String part : said.split("[\\s,;()]+", -1)) {
      Optional<Unit> unit =
          findForBid(part)
              .filter(each -> each.dimension() != Dimension.PRESSURE && each != Unit.PERCENT)
              .or(() -> UnitSystem.find(part).map(UnitWords::lengthOf));
      if (unit.isPresent()) {
        return unit;
      }
    }
    return Optional.empty();
  }

  /** The unit that a number format writes behind each number, as in {@code 0.0" m²"}. */
  public static Optional<Unit> inFormat(String code) {
    if (code.indexOf('"') < 0 && code.indexOf('\\') < 0) {
      return Optional.empty();
    }
    Matcher positive = SECTION.matcher(code);
    positive.lookingAt();
    String literals =
        LITERAL
            .matcher(positive.group())
            .results()
            .map(each -> each.group(1) == null ? each.group(2) : each.group(1))
            .collect(Collectors.joining());
    return literals.isBlank() ? Optional.empty() : findForBid(literals);
  }

  /** Whether a unit belongs to the metric family. */
  public static boolean isMetric(Unit unit) {
    return switch (unit) {
      case METRE, CENTIMETRE, MILLIMETRE, SQUARE_METRE -> true;
      default -> false;
    };
  }

  private static Unit lengthOf(UnitSystem system) {
    return system == UnitSystem.US ? Unit.FOOT : Unit.METRE;
  }

  private static String plain(String words) {
    String spaced = SPACES.matcher(words).replaceAll(" ");
    String feet = FEET_MARKS.matcher(spaced).replaceAll("'");
    return INCH_MARKS.matcher(feet).replaceAll("\"").strip().toLowerCase(Locale.ROOT);
  }
}
