package org.wetmil.jobs.audit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;

/** The class of height of a line, by the steps at which its hours grow. */
final class HeightClass {
  private final List<Double> stepsFt;
  private final UnitSystem system;

  HeightClass(Catalogue catalogue, UnitSystem system) {
    this.stepsFt =
        List.of(
            catalogue.number(Setting.HEIGHT_STEP_1),
            catalogue.number(Setting.HEIGHT_STEP_2),
            catalogue.number(Setting.HEIGHT_STEP_3));
    this.system = system;
  }

  /** In words, such as "over 14 to 20 ft"; empty when the height is not known. */
  String of(double heightFt) {
    if (Double.isNaN(heightFt)) {
      return "";
    }
    String unit = " " + Quantity.LENGTH.unit(system).symbol();
    String above = "";
    for (double step : stepsFt) {
      if (heightFt <= step) {
        return (above.isEmpty() ? "up to " : above + " to ") + shown(step) + unit;
      }
      above = "over " + shown(step);
    }
    return above + unit;
  }

  private String shown(double ft) {
    return BigDecimal.valueOf(Quantity.LENGTH.shown(ft, system))
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
