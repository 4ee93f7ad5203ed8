package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.GIRTH;

import java.util.Optional;
import org.wetmil.catalogue.Surface;
import org.wetmil.quantity.Quantity;

/** Sizes far too small for what they are of: a girth in feet or metres, a count under Area. */
final class SmallSizes {
  private SmallSizes() {}

  static Optional<Fault> girth(Line line) {
    double least = CheckLimits.LEAST_GIRTH.value();
    if (line.surface() == null || !(line.number(GIRTH) > 0 && line.number(GIRTH) < least)) {
      return Optional.empty();
    }
    String unit = " " + Quantity.GIRTH.unit(line.system()).symbol();
    String measured = Say.number(Quantity.GIRTH.shown(line.number(GIRTH), line.system()), 2) + unit;
    String limit = Say.number(Quantity.GIRTH.shown(least, line.system()), 2) + unit;
    return line.found(
        GIRTH,
        measured,
        limit,
        "A girth of %s is under the %s that the least bead has; check it and its unit."
            .formatted(measured, limit));
  }

  static Optional<Fault> area(Line line) {
    Surface surface = line.surface();
    if (surface == null || Double.isNaN(surface.unitFt2()) || line.has(COUNT)) {
      return Optional.empty();
    }
    double oneFt2 = surface.unitFt2() * surface.faces() * surface.factor();
    double areaFt2 = line.number(AREA);
    if (!(areaFt2 > 0 && areaFt2 < oneFt2 * CheckLimits.SMALL_PIECE.value())) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.AREA, areaFt2);
    String limit = line.say(Quantity.AREA, oneFt2);
    return line.found(
        AREA,
        measured,
        limit,
        "%s is far under the %s that one piece of %s usually has all over; a count goes under Count."
            .formatted(measured, limit, surface.name()));
  }
}
