package org.wetmil.workbook.template;

import java.util.List;
import java.util.stream.Stream;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Headings with the unit that their column is to be written in. */
final class Headings {
  /** Points; room for three lines. */
  static final float HEIGHT = 48;

  private static final int TEXT_WIDTH = 15;
  private static final int NUMBER_WIDTH = 9;

  private Headings() {}

  static String of(String heading, Quantity quantity, UnitSystem system) {
    String symbol = symbol(quantity, system);
    return symbol.isEmpty() ? heading : heading + " (" + symbol + ")";
  }

  /** The unit that an estimator writes; shares are written in per cent. */
  static Unit unit(Quantity quantity, UnitSystem system) {
    return quantity == Quantity.SHARE ? Unit.PERCENT : quantity.unit(system);
  }

  /**
   * Characters wide enough for the longest word of a heading and for what usually stands below.
   *
   * @param words the words that stand below; none when any may
   */
  static int width(String heading, Quantity quantity, List<String> words) {
    int below = quantity == Quantity.TEXT ? TEXT_WIDTH : NUMBER_WIDTH;
    return Math.max(
        longest(Stream.of(heading.split(" "))) + 3,
        words.isEmpty() ? below : longest(words.stream()) + 4);
  }

  private static int longest(Stream<String> words) {
    return words.mapToInt(String::length).max().orElse(0);
  }

  /** Its symbol; empty for words and plain numbers. */
  static String symbol(Quantity quantity, UnitSystem system) {
    return unit(quantity, system).symbol();
  }
}
