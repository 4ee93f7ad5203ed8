package org.wetmil.estimate.compare;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Names;
import org.wetmil.catalogue.Origin;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;

/**
 * Whether two cells say the same. In one unit numbers must be equal; in two units they agree where
 * they round to each other at the last digit that either shows.
 */
final class Same {
  private static final double ROUNDING = 1e-9;

  /** No more than this share passes for a rounding, however few digits are shown (house). */
  private static final double MOST = 0.005;

  private static final Pattern PLAIN = Pattern.compile("\\D*\\d+(?:[.,](\\d+))?\\D*");

  private Same() {}

  static boolean same(InputColumn column, InputValue a, InputValue b) {
    if (a.isBlank() || b.isBlank()) {
      return a.isBlank() == b.isBlank();
    }
    if (a.hasNumber() && b.hasNumber()) {
      double slack =
          a.unit() == b.unit()
              ? 0
              : step(column.quantity(), a.raw(), a.unit())
                  + step(column.quantity(), b.raw(), b.unit());
      return near(a.low(), b.low(), slack) && near(a.high(), b.high(), slack);
    }
    return Names.key(a.raw()).equals(Names.key(b.raw()));
  }

  static boolean same(Entry a, Entry b) {
    if (Double.isNaN(a.number()) || Double.isNaN(b.number())) {
      return Names.key(a.text()).equals(Names.key(b.text()));
    }
    double slack =
        unit(a) == unit(b)
            ? 0
            : step(a.quantity(), a.text(), unit(a)) + step(b.quantity(), b.text(), unit(b));
    return near(a.number(), b.number(), slack);
  }

  private static Unit unit(Entry entry) {
    return entry.origin() instanceof Origin.Cell cell ? cell.unit() : entry.quantity().base();
  }

  private static boolean near(double a, double b, double slack) {
    double size = Math.max(Math.abs(a), Math.abs(b));
    return Math.abs(a - b) <= Math.max(ROUNDING * size, Math.min(slack, MOST * size));
  }

  /** Half of the last digit shown, in the kept unit; of feet and inches a thirty-second inch. */
  private static double step(Quantity quantity, String raw, Unit unit) {
    Matcher plain = PLAIN.matcher(raw.strip());
    if (!plain.matches()) {
      return 1 / 32.0 / 12;
    }
    int decimals = plain.group(1) == null ? 0 : plain.group(1).length();
    return Math.abs(
        unit.to(quantity.base(), 0.5 * Math.pow(10, -decimals)) - unit.to(quantity.base(), 0));
  }
}
