package org.wetmil.checks;

import java.util.List;
import java.util.Optional;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/** The unit that a length was meant in, where the one it was read in makes no sense. */
final class LikelyUnit {
  private static final List<Unit> US = List.of(Unit.INCH, Unit.MILLIMETRE);
  private static final List<Unit> METRIC = List.of(Unit.MILLIMETRE, Unit.CENTIMETRE);

  private LikelyUnit() {}

  /** The first unit in which the number of the cell is a likely size of its kind. */
  static Optional<Unit> of(InputColumn column, InputValue cell, UnitSystem system) {
    if (Double.isNaN(cell.number())) {
      return Optional.empty();
    }
    double number = typed(cell);
    return (system == UnitSystem.US ? US : METRIC)
        .stream()
            .filter(unit -> unit != cell.unit())
            .filter(unit -> isLikely(column, unit, number))
            .findFirst();
  }

  /** The number as it stands in the cell. */
  static double typed(InputValue cell) {
    return Unit.FOOT.to(cell.unit(), cell.number());
  }

  /** Whether a number is a likely size of its kind in a unit. */
  static boolean isLikely(InputColumn column, Unit unit, double number) {
    if (column == InputColumn.HEIGHT) {
      double feet = unit.to(Unit.FOOT, number);
      return feet >= CheckLimits.LEAST_LIKELY_HEIGHT.value()
          && feet <= CheckLimits.GREATEST_LIKELY_HEIGHT.value();
    }
    double metres = unit.to(Unit.METRE, number);
    return metres >= CheckLimits.LEAST_LIKELY_LENGTH.value()
        && metres <= CheckLimits.GREATEST_LIKELY_LENGTH.value();
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
