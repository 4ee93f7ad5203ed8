package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.Optional;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Surface;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/**
 * Pieces such as doors and cabinet fronts whose sizes make them far larger than such pieces are.
 */
final class PieceSizes {
  private PieceSizes() {}

  static Optional<Fault> tooLarge(Line line) {
    Surface surface = line.surface();
    if (surface == null
        || surface.measuredBy() != MeasuredBy.COUNT_X_SIZE
        || line.has(AREA)
        || AreaChecks.heightUnit(line).isPresent()) {
      return Optional.empty();
    }
    double usualFt2 = surface.unitFt2();
    double limitFt2 = CheckLimits.LARGE_PIECE.value() * usualFt2;
    double pieceFt2 = line.number(WIDTH) * line.number(HEIGHT);
    if (!(pieceFt2 > limitFt2)) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.AREA, pieceFt2);
    String limit = line.say(Quantity.AREA, limitFt2);
    return line.found(
        WIDTH,
        measured,
        limit,
        "A piece of %s is over %s times the %s that one of %s usually has; check the sizes%s."
            .formatted(
                measured,
                Say.number(CheckLimits.LARGE_PIECE.value(), 0),
                line.say(Quantity.AREA, usualFt2),
                surface.name(),
                likely(line, usualFt2)));
  }

  /** What to type when a smaller unit makes a piece that is not too large. */
  private static String likely(Line line, double usualFt2) {
    Unit unit = line.system() == UnitSystem.US ? Unit.INCH : Unit.CENTIMETRE;
    double wide = LikelyUnit.typed(line.cell(WIDTH));
    double high = LikelyUnit.typed(line.cell(HEIGHT));
    double times = unit.to(Unit.FOOT, wide) * unit.to(Unit.FOOT, high) / usualFt2;
    boolean fits =
        times <= CheckLimits.LARGE_PIECE.value() && times >= 1 / CheckLimits.LARGE_PIECE.value();
    return fits
        ? ", which look like %s; if so, type %s %s and %s %s"
            .formatted(
                LikelyUnit.word(unit),
                Say.number(wide, 1),
                unit.symbol(),
                Say.number(high, 1),
                unit.symbol())
        : "";
  }
}
