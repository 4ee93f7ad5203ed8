package org.wetmil.checks;

import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Surface;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** The unit that a length was meant in, where the one it was read in makes no sense. */
final class LikelyUnit {
  private static final List<Unit> US = List.of(Unit.INCH, Unit.MILLIMETRE);
  private static final List<Unit> METRIC = List.of(Unit.MILLIMETRE, Unit.CENTIMETRE);

  private LikelyUnit() {}

  /** The first unit in which a size of a line is a likely one of its surface. */
  static Optional<Unit> of(Line line, InputColumn column) {
    return of(column, line.surface(), line.cell(column), line.system());
  }

  /**
   * The first unit in which the number of the cell is a likely size of its kind.
   *
   * @param surface null when it is not known
   */
  static Optional<Unit> of(
      InputColumn column, Surface surface, InputValue cell, UnitSystem system) {
    if (Double.isNaN(cell.number())) {
      return Optional.empty();
    }
    double number = typed(cell);
    return (system == UnitSystem.US ? US : METRIC)
        .stream()
            .filter(unit -> unit != cell.unit())
            .filter(unit -> isLikely(column, surface, unit, number))
            .findFirst();
  }

  /** The number as it stands in the cell. */
  static double typed(InputValue cell) {
    return Unit.FOOT.to(cell.unit(), cell.number());
  }

  /** Whether a number is a likely size of its kind in a unit. */
  static boolean isLikely(InputColumn column, Surface surface, Unit unit, double number) {
    if (column != InputColumn.HEIGHT || isPiece(surface)) {
      double metres = unit.to(Unit.METRE, number);
      return metres >= CheckLimits.LEAST_LIKELY_LENGTH.value()
          && metres <= CheckLimits.GREATEST_LIKELY_LENGTH.value();
    }
    double least = CheckLimits.LEAST_LIKELY_HEIGHT.value();
    double most = CheckLimits.GREATEST_LIKELY_HEIGHT.value();
    if (isFence(surface)) {
      least = CheckLimits.LEAST_LIKELY_FENCE.value();
      most = CheckLimits.GREATEST_LIKELY_FENCE.value();
    } else if (surface != null && surface.ceiling()) {
      least = CheckLimits.LEAST_LIKELY_CEILING.value();
    }
    double feet = unit.to(Unit.FOOT, number);
    return feet >= least && feet <= most;
  }

  /** Whether both faces of its length are painted, as of a fence or railing. */
  static boolean isFence(Surface surface) {
    return surface != null
        && surface.measuredBy() == MeasuredBy.LENGTH_X_HEIGHT
        && surface.faces() > 1;
  }

  private static boolean isPiece(Surface surface) {
    return surface != null && surface.measuredBy() == MeasuredBy.COUNT_X_SIZE;
  }

  /** Its name in a sentence. */
  static String word(Unit unit) {
    return switch (unit) {
      case INCH -> "inches";
      case CENTIMETRE -> "centimetres";
      default -> "millimetres";
    };
  }
}
