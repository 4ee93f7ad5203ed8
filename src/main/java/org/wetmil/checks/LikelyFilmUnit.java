package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.SPECIFIED_FILM;

import java.util.Optional;
import org.wetmil.estimate.CoatPlan;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Unit;
import org.wetmil.trade.Film;

/**
 * The unit that a specified film was likely meant in: micrometres where mils take more coats than a
 * surface gets, mils where micrometres are thinner than one coat can be. A mil is 25.4 µm, so that
 * what is far off in one is usual in the other.
 */
final class LikelyFilmUnit {
  private LikelyFilmUnit() {}

  /** The unit and what to type then, as the end of a sentence; empty where the film may be true. */
  static Optional<String> of(Line line) {
    InputValue cell = line.cell(SPECIFIED_FILM);
    double mil = cell.number();
    if (cell.unit() == Unit.MIL && !isUsual(line, mil)) {
      return said(line, Unit.MICROMETRE, mil, "micrometres", "um");
    }
    if (cell.unit() == Unit.MICROMETRE && mil < leastMil(line)) {
      return said(line, Unit.MIL, Unit.MIL.to(Unit.MICROMETRE, mil), "mils", "mil");
    }
    return Optional.empty();
  }

  private static Optional<String> said(
      Line line, Unit unit, double typed, String word, String symbol) {
    double mil = unit.to(Unit.MIL, typed);
    return isUsual(line, mil) && mil >= leastMil(line)
        ? Optional.of("%s; if so, type %s %s".formatted(word, Say.number(typed, 1), symbol))
        : Optional.empty();
  }

  private static boolean isUsual(Line line, double mil) {
    return CoatPlan.wanted(line.work(), line.catalogue(), mil) <= CheckLimits.MANY_COATS.value();
  }

  /** The thinnest film that one coat closes with. */
  private static double leastMil(Line line) {
    return Film.dryMil(
        line.coating().wetMinMil(), line.coating().volumeSolids(), line.work().thinnerShare());
  }
}
