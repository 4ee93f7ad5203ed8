package org.wetmil.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.Setup;
import org.wetmil.estimate.Trial;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.TipCode;

/**
 * What gives the gun back its pressure behind a hose. A higher pressure and a finer tip both change
 * the flow, and with it the loss, so each is tried on the line before it is advised.
 */
final class HoseAdvice {
  /** What two ways of computing one pressure may differ by. */
  private static final double ROUNDING = 1e-9;

  /** Lines that are alike get the same advice; a sheet may have many. */
  private final Map<Object, String> known = new HashMap<>();

  /**
   * @param setup the tip that the hose leaves too little
   * @return the end of a sentence, without its full stop
   */
  String of(Line line, Setup setup) {
    Object key =
        List.of(
            line.system(),
            line.coating().name(),
            line.surface().name(),
            line.sprayer().name(),
            line.work().thinnerShare(),
            setup,
            line.filled().stroke(),
            line.filled().coats().targetMil());
    return known.computeIfAbsent(key, any -> find(line, setup));
  }

  private static String find(Line line, Setup setup) {
    List<String> ways = new ArrayList<>();
    pressure(line, setup)
        .ifPresent(psi -> ways.add("set " + line.say(Quantity.PRESSURE, psi) + " at the pump"));
    finer(line, setup)
        .ifPresent(
            other ->
                ways.add(
                    "take %s, which keeps %s"
                        .formatted(
                            other.tip().code(),
                            line.say(Quantity.PRESSURE, other.gun().gunPsi()))));
    return ways.isEmpty()
        ? "take a wider or shorter hose, since neither pressure nor a finer tip will do"
        : Say.or(ways);
  }

  /** The pressure to set for the least at the gun, in steps of a gauge; empty when none will do. */
  private static OptionalDouble pressure(Line line, Setup setup) {
    Trial trial = new Trial(line.catalogue(), line.filled());
    double least = line.coating().leastPsi();
    Setup wanted = trial.tip(setup.tip(), least, true);
    double step =
        line.system() == UnitSystem.US
            ? CheckLimits.GAUGE_STEP_PSI.value()
            : Quantity.PRESSURE
                .unit(line.system())
                .to(Quantity.PRESSURE.base(), CheckLimits.GAUGE_STEP_BAR.value());
    double set = Math.ceil(wanted.gun().pumpPsi() / step - ROUNDING) * step;
    double most = line.setting(Setting.GREATEST_PRESSURE);
    double rating = line.sprayer().greatestPsi();
    boolean can = keeps(line, wanted) && set <= most * (1 + ROUNDING) && !(set > rating);
    return can && keeps(line, trial.tip(setup.tip(), set, false))
        ? OptionalDouble.of(set)
        : OptionalDouble.empty();
  }

  /** The next finer orifice of the same fan that keeps the pressure and lays a film inside. */
  private static Optional<Setup> finer(Line line, Setup setup) {
    Trial trial = new Trial(line.catalogue(), line.filled());
    return trial.tips().stream()
        .filter(tip -> tip.fanDigit() == setup.tip().fanDigit())
        .filter(tip -> tip.orificeThou() < setup.tip().orificeThou())
        .filter(tip -> tip.orificeThou() >= line.coating().leastOrificeThou())
        .sorted(Comparator.comparingInt(TipCode::orificeThou).reversed())
        .map(trial::tip)
        .filter(other -> other.inside() && keeps(line, other))
        .findFirst();
  }

  /** Whether the gun has the coating's least pressure behind the hose. */
  static boolean keeps(Line line, Setup setup) {
    return setup.gun().gunPsi() >= line.coating().leastPsi() * (1 - ROUNDING);
  }
}
