package org.wetmil.checks;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/** Writes figures into sentences: in the units of a sheet, with digits that mean something. */
final class Say {
  private static final int MOST_DECIMALS = 9;

  private Say() {}

  /** A kept figure with its unit, as in {@code 4.5 mil}. */
  static String of(Quantity quantity, double base, UnitSystem system) {
    return withUnit(quantity, base, system, decimals(quantity, system));
  }

  /** A figure that stands in formulas: to a thousandth where fewer digits would hide a part. */
  static String held(Quantity quantity, double base, UnitSystem system) {
    int decimals = decimals(quantity, system);
    double shown = quantity.shown(base, system);
    boolean whole = Math.abs(shown - Double.parseDouble(number(shown, decimals))) < 5e-4;
    return withUnit(quantity, base, system, whole ? decimals : Math.max(3, decimals));
  }

  /** A figure and its limit, with as many digits as it takes to tell them apart. */
  static Pair pair(Quantity quantity, double base, double limit, UnitSystem system) {
    int decimals = decimals(quantity, system);
    Pair pair;
    do {
      pair =
          new Pair(
              withUnit(quantity, base, system, decimals),
              withUnit(quantity, limit, system, decimals));
      decimals++;
    } while (pair.measured().equals(pair.limit()) && decimals <= MOST_DECIMALS);
    return pair;
  }

  record Pair(String measured, String limit) {}

  /** Two limits with one unit, as in {@code 18 to 36 in/s}. */
  static String range(Quantity quantity, double low, double high, UnitSystem system) {
    String least = of(quantity, low, system);
    String unit = quantity.unit(system).symbol();
    return least.substring(0, least.length() - unit.length()).strip()
        + " to "
        + of(quantity, high, system);
  }

  /** A share as a percentage. */
  static String percent(double share) {
    return number(share * 100, 1) + " %";
  }

  /** A number without a unit, its trailing zeros left out. */
  static String number(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  /** Words as in {@code length, width and height}. */
  static String and(List<String> words) {
    return joined(words, " and ");
  }

  /** Words as in {@code latex, lacquer or stain}. */
  static String or(List<String> words) {
    return joined(words, " or ");
  }

  private static String joined(List<String> words, String last) {
    int end = words.size() - 1;
    return end < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, end)) + last + words.get(end);
  }

  private static String withUnit(Quantity quantity, double base, UnitSystem system, int decimals) {
    String unit = quantity.unit(system).symbol();
    double shown = quantity.shown(base, system);
    // films are read against a gauge in tenths of a mil, so their tenth is always said
    boolean keepsTenth = quantity == Quantity.FILM && system == UnitSystem.US;
    String number =
        keepsTenth
            ? BigDecimal.valueOf(shown).setScale(decimals, RoundingMode.HALF_UP).toPlainString()
            : number(shown, decimals);
    return (number + " " + unit).strip();
  }

  private static int decimals(Quantity quantity, UnitSystem system) {
    boolean us = system == UnitSystem.US;
    return switch (quantity) {
      case LENGTH -> us ? 1 : 2;
      case GIRTH, FAN_WIDTH -> us ? 1 : 0;
      case ORIFICE -> us ? 0 : 2;
      case FILM, GUN_SPEED -> us ? 1 : 0;
      case AREA, TEMPERATURE, TIME -> 1;
      case PRESSURE, CONCENTRATION -> 0;
      case SPREAD -> us ? 0 : 1;
      case VOLUME, FLOW, DENSITY, VISCOSITY, SHARE, NUMBER -> 2;
      case AREA_RATE, LENGTH_RATE, TEXT -> 0;
    };
  }
}
