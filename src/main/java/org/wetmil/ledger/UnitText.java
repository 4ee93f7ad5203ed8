package org.wetmil.ledger;

import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.quantity.Unit;

/**
 * How much one unit of a line holds: gal, qt, pt, L, mL, or a container whose size stands beside it
 * or in what was bought.
 */
final class UnitText {
  private static final Pattern SIZE =
      Pattern.compile(
          "(?<![\\p{L}\\d.,/])(?:(\\d{1,3}) ?[x×] ?)?(\\d{1,4}(?:[.,]\\d{1,3})?)(?:/(\\d))? ?-? ?(\\p{L}+)");

  private UnitText() {}

  /**
   * US gallons in one unit of a line.
   *
   * @param unit the unit as written beside the quantity; empty when there is none
   * @param bought item and description, where a container's size is looked for
   * @return empty when it is no volume, or a container of a size not stated or not clear
   */
  static OptionalDouble gallons(String unit, String bought) {
    OptionalDouble plain = volume(unit, 1);
    if (plain.isPresent()) {
      return plain;
    }
    Matcher size = SIZE.matcher(unit);
    if (size.find()) {
      OptionalDouble found = size(size);
      String rest = unit.substring(0, size.start()) + " " + unit.substring(size.end());
      return isContainerText(rest) ? found : OptionalDouble.empty();
    }
    return isContainerText(unit) ? only(bought) : OptionalDouble.empty();
  }

  /** The one volume that a text states; empty when it states none, or several. */
  private static OptionalDouble only(String text) {
    Set<Double> sizes = new HashSet<>();
    Matcher size = SIZE.matcher(text);
    while (size.find()) {
      size(size).ifPresent(sizes::add);
    }
    return sizes.size() == 1 ? OptionalDouble.of(sizes.iterator().next()) : OptionalDouble.empty();
  }

  private static OptionalDouble size(Matcher size) {
    double number = Double.parseDouble(size.group(2).replace(',', '.'));
    if (size.group(3) != null) {
      number /= Double.parseDouble(size.group(3));
    }
    if (size.group(1) != null) {
      number *= Double.parseDouble(size.group(1));
    }
    return number > 0 && Double.isFinite(number)
        ? volume(size.group(4), number)
        : OptionalDouble.empty();
  }

  private static OptionalDouble volume(String word, double number) {
    return LedgerWords.unit(word)
        .map(unit -> OptionalDouble.of(unit.to(Unit.GALLON, number)))
        .orElse(OptionalDouble.empty());
  }

  /** Whether every word of a text names a container or joins two others; true of nothing. */
  private static boolean isContainerText(String text) {
    String key = LedgerWords.key(text);
    if (key.isEmpty()) {
      return true;
    }
    for (String word : key.split(" ")) {
      if (!LedgerWords.isContainer(word) && !LedgerWords.isFiller(word)) {
        return false;
      }
    }
    return true;
  }
}
