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

  /** Heights that walls and gables have, in feet (house). */
  private static final double LEAST_HEIGHT_FT = 5;

  private static final double GREATEST_HEIGHT_FT = 40;

  /** Lengths that rooms and pieces of a building have, in metres (house). */
  private static final double LEAST_LENGTH_M = 0.5;

  private static final double GREATEST_LENGTH_M = 60;

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

  private static boolean isLikely(InputColumn column, Unit unit, double number) {
    if (column == InputColumn.HEIGHT) {
      double feet = unit.to(Unit.FOOT, number);
      return feet >= LEAST_HEIGHT_FT && feet <= GREATEST_HEIGHT_FT;
    }
    double metres = unit.to(Unit.METRE, number);
    return metres >= LEAST_LENGTH_M && metres <= GREATEST_LENGTH_M;
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
