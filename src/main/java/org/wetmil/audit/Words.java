package org.wetmil.audit;

import java.util.Locale;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.ratio.Concentration;
import org.wetmil.audit.stats.Interval;
import org.wetmil.quantity.UnitSystem;

/** Ratios and amounts in plain words; a figure is rounded here and nowhere before. */
final class Words {
  private Words() {}

  /** A ratio as "12 % over", "5 % under" or "on the estimate". */
  static String over(double ratio) {
    long percent = percent(ratio);
    if (percent == 0) {
      return "on the estimate";
    }
    return Math.abs(percent) + (percent > 0 ? " % over" : " % under");
  }

  /** "likely 7 to 17 %" on one side, else both ends in full. */
  static String likely(Interval ratios) {
    if (!ratios.isKnown()) {
      return "too few bids to say how sure";
    }
    long low = percent(ratios.low());
    long high = percent(ratios.high());
    if (low >= 0 && high > 0) {
      return "likely " + low + " to " + high + " %";
    }
    if (low < 0 && high <= 0) {
      return "likely " + -high + " to " + -low + " %";
    }
    return "likely between " + over(ratios.low()) + " and " + over(ratios.high());
  }

  /** ", nearly all on block walls". */
  static String where(Concentration where) {
    return (where.isNearlyAll() ? ", nearly all " : ", mostly ")
        + switch (where.by()) {
          case COATING -> "in " + where.group();
          case HEIGHT -> "at heights " + where.group();
          case CREW -> "by the crew " + where.group();
          default -> "on " + where.group();
        };
  }

  /** A mean miss of natural logs as the percentage of a typical one. */
  static String miss(double log) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * (Math.exp(log) - 1));
  }

  static String amount(Measure measure, double kept, UnitSystem system) {
    return String.format(
        Locale.ROOT,
        "%.0f %s",
        measure.quantity().shown(kept, system),
        measure.quantity().unit(system).symbol());
  }

  static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static long percent(double ratio) {
    return Math.round(100 * (ratio - 1));
  }
}
