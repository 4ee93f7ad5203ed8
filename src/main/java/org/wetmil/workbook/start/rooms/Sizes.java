package org.wetmil.workbook.start.rooms;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.LengthText;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.words.SizeText;
import org.wetmil.workbook.read.words.UnitWords;

/** Sizes as room lists write them. Nothing, 0, n/a and what is no size are all not known: NaN. */
public final class Sizes {
  /** Two lengths within a text: Single-Flush:0762 x 2032mm. */
  private static final String ONE =
      "\\d++(?:[.,]++\\d++)*+(?:\\s*+-?\\s*+\\d++/\\d++)?+(?:\\s*+(?:mm|cm|m|in|ft|\"|'))?";

  /** Possessive, since a long text that is none would be tried in every way. */
  private static final Pattern WITHIN =
      Pattern.compile("(?i)(?<![\\w.]|\\d,)(" + ONE + "\\s*+[x×]\\s*+" + ONE + ")(?!\\w|\\.\\w)");

  /** Feet; a door or window outside of this is in another unit. */
  private static final double LEAST_OPENING_FT = 0.6;

  private static final double GREATEST_OPENING_FT = 40;

  private Sizes() {}

  /** A length in feet, of which the unit in the text wins. */
  public static double lengthFt(String text, Unit unit) {
    return positive(LengthText.read(text, DecimalMark.UNKNOWN), unit, Unit.FOOT);
  }

  /** An area in ft², of which the unit in the text wins. */
  public static double areaFt2(String text, Unit unit) {
    return positive(NumberText.read(text, DecimalMark.UNKNOWN), unit, Unit.SQUARE_FOOT);
  }

  /** A number above 0 without a unit. */
  public static double number(String text) {
    return NumberText.read(text, DecimalMark.UNKNOWN) instanceof Typed.Value value
            && value.value() > 0
        ? value.value()
        : Double.NaN;
  }

  /** Whether a text is a number, with a unit or without. */
  public static boolean isNumber(String text) {
    return NumberText.read(text, DecimalMark.UNKNOWN) instanceof Typed.Value
        || LengthText.read(text, DecimalMark.UNKNOWN) instanceof Typed.Value;
  }

  /** Whether a text says a size of nothing, or that it is open, as a dash or n/a. */
  static boolean isOpen(String text) {
    Typed typed = NumberText.read(text, DecimalMark.UNKNOWN);
    return typed instanceof Typed.NotKnown
        || (typed instanceof Typed.Value zero && zero.value() == 0);
  }

  private static double positive(Typed typed, Unit unit, Unit target) {
    if (!(typed instanceof Typed.Value value) || value.value() <= 0) {
      return Double.NaN;
    }
    Unit in = value.unit().orElse(unit);
    return in.dimension() == target.dimension() ? in.to(target, value.value()) : Double.NaN;
  }

  /** Width and height in feet that stand within a text; empty when none that a door can have. */
  public static Optional<double[]> within(String text, Unit unit) {
    Matcher matcher = WITHIN.matcher(text);
    while (matcher.find()) {
      Optional<double[]> size =
          SizeText.read(matcher.group(1).toLowerCase(Locale.ROOT), DecimalMark.UNKNOWN)
              .map(parts -> new double[] {feet(parts.get(0), unit), feet(parts.get(1), unit)})
              .filter(parts -> isOpening(parts[0]) && isOpening(parts[1]));
      if (size.isPresent()) {
        return size;
      }
    }
    return Optional.empty();
  }

  /** Whether a door or window can be so wide or high. */
  public static boolean isOpening(double feet) {
    return feet >= LEAST_OPENING_FT && feet <= GREATEST_OPENING_FT;
  }

  private static double feet(Typed.Value value, Unit unit) {
    return value.unit().orElse(unit).to(Unit.FOOT, value.value());
  }

  /** A unit as data sheets write it: square meters, squaremeters, SQUARE_METRE, MILLI METRE. */
  public static Optional<Unit> unit(String word, Dimension dimension) {
    String plain =
        word.toLowerCase(Locale.ROOT)
            .replace('_', ' ')
            .replaceAll("^square\\s*", "square ")
            .replaceAll("^(milli|centi)\\s+", "$1")
            .strip();
    return List.of(plain, plain.replaceAll("s$", "")).stream()
        .flatMap(each -> UnitWords.find(each).stream())
        .filter(unit -> unit.dimension() == dimension)
        .findFirst();
  }
}
