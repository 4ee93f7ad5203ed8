package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.PRESSURE;

import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Setting;
import org.wetmil.quantity.Quantity;

/** Pressure against airless spraying, the coating and the machine. */
final class PressureChecks {
  static final List<Check> ALL =
      List.of(
          new Check(
              "pressure-outside",
              Severity.WARNING,
              "The pressure is outside what airless spraying takes",
              "Below it a coating does not break up; above it paint and tips are wasted.",
              Kind.PUBLISHED,
              "MIL-HDBK-1110 (UFC 3-190-06) 7.5.4.2: 1000 to 3000 psi",
              "Check the figure and its unit; the coating's usual pressure is taken.",
              Rule.ofLine(PressureChecks::outside)));

  private PressureChecks() {}

  private static Optional<Fault> outside(Line line) {
    double stated = line.number(PRESSURE);
    double least = line.setting(Setting.LEAST_PRESSURE);
    double most = line.setting(Setting.GREATEST_PRESSURE);
    if (Double.isNaN(stated) || (stated >= least && stated <= most)) {
      return Optional.empty();
    }
    Say.Pair said = line.pair(Quantity.PRESSURE, stated, stated < least ? least : most);
    String limit = line.range(Quantity.PRESSURE, least, most);
    String taken =
        line.isSetUp()
            ? ", so " + line.say(Quantity.PRESSURE, line.filled().setPsi()) + " is set"
            : "";
    return line.found(
        PRESSURE,
        said.measured(),
        limit,
        "%s is outside the %s of airless spraying%s; check the figure and its unit."
            .formatted(said.measured(), limit, taken));
  }
}
