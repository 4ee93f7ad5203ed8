package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Narrowest;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** Sizes that make no sense in the unit they were read in, and do in a smaller one. */
final class UnitSlips {
  private UnitSlips() {}

  /** Of a ceiling, too: there the height says how high the work is, and makes it slower. */
  static Optional<Fault> heightUnit(Line line) {
    double high = line.number(HEIGHT);
    boolean fence = LikelyUnit.isFence(line.surface());
    double limit =
        fence
            ? CheckLimits.GREATEST_LIKELY_FENCE.value()
            : line.setting(Setting.GREATEST_WALL_HEIGHT);
    if (line.surface() == null || (line.system() != UnitSystem.US && !fence)) {
      return Optional.empty();
    }
    Unit likely = LikelyUnit.of(line, HEIGHT).orElse(null);
    if (!(high > limit) || likely == null) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.LENGTH, high);
    String most = line.say(Quantity.LENGTH, limit);
    return line.found(
        HEIGHT,
        measured,
        most,
        "A height of %s is over %s and looks like %s%s."
            .formatted(
                measured,
                most,
                meant(line, HEIGHT, likely),
                isLikelyAll(line, likely) ? ", and check the other sizes" : ""));
  }

  /** Whether the other sizes make sense in that unit, too: of rooms no closet, of pieces any. */
  private static boolean isLikelyAll(Line line, Unit unit) {
    double leastFt =
        line.surface().measuredBy() == MeasuredBy.COUNT_X_SIZE
            ? 0
            : CheckLimits.LEAST_LIKELY_HEIGHT.value();
    return (line.has(LENGTH) || line.has(WIDTH))
        && Stream.of(LENGTH, WIDTH)
            .filter(line::has)
            .map(line::cell)
            .allMatch(
                cell ->
                    cell.unit() != unit && unit.to(Unit.FOOT, LikelyUnit.typed(cell)) >= leastFt);
  }

  /** The unit that was likely meant, and what to type then. */
  private static String meant(Line line, InputColumn column, Unit likely) {
    return LikelyUnit.word(likely) + "; if so, type " + typed(line, column, likely);
  }

  /** The number of the cell with another unit. */
  static String typed(Line line, InputColumn column, Unit unit) {
    return Say.number(LikelyUnit.typed(line.cell(column)), 1) + " " + unit.symbol();
  }

  static Stream<Fault> lengthUnit(Line line) {
    return line.system() == UnitSystem.METRIC
        ? Stream.of(LENGTH, WIDTH, HEIGHT).flatMap(column -> lengthUnit(line, column).stream())
        : Stream.empty();
  }

  private static Optional<Fault> lengthUnit(Line line, InputColumn column) {
    if (!(Quantity.LENGTH.shown(line.number(column), UnitSystem.METRIC)
        > CheckLimits.LONG_IN_METRES.value())) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.LENGTH, line.number(column));
    String limit = Say.number(CheckLimits.LONG_IN_METRES.value(), 0) + " m";
    return LikelyUnit.of(line, column)
        .map(
            likely ->
                line.fault(
                    column,
                    measured,
                    limit,
                    "%s is over %s and looks like %s."
                        .formatted(measured, limit, meant(line, column, likely))));
  }

  /** Soffits are so narrow that the unit is the smaller one; in millimetres it is a length. */
  static Optional<Fault> soffit(Line line) {
    double limit = CheckLimits.WIDE_SOFFIT.value();
    if (line.surface() == null
        || line.surface().narrowest() != Narrowest.Of.WIDTH
        || line.has(AREA)
        || !(line.number(WIDTH) > limit)
        || lengthUnit(line).findAny().isPresent()) {
      return Optional.empty();
    }
    Unit unit = line.system() == UnitSystem.US ? Unit.INCH : Unit.CENTIMETRE;
    double meantFt = unit.to(Unit.FOOT, LikelyUnit.typed(line.cell(WIDTH)));
    if (meantFt < CheckLimits.NARROW_SOFFIT.value() || meantFt > limit) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.LENGTH, line.number(WIDTH));
    String most = line.say(Quantity.LENGTH, limit);
    return line.found(
        WIDTH,
        measured,
        most,
        "A width of %s is over %s and looks like %s."
            .formatted(measured, most, meant(line, WIDTH, unit)));
  }
}
