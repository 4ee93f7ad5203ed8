package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.LENGTH;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Surface;
import org.wetmil.estimate.InputColumn;

/**
 * Sizes of pieces that do not count. A height alone is that of the work, above the floor, and
 * counts as such.
 */
final class UnusedSizes {
  private UnusedSizes() {}

  static Optional<Fault> ofPieces(Line line) {
    Surface surface = line.surface();
    // a size that is there and cannot be taken is said where it stands
    boolean faulty = line.cell(WIDTH).isFault() || line.cell(HEIGHT).isFault();
    if (surface == null || line.has(AREA) || faulty) {
      return Optional.empty();
    }
    boolean bySize = surface.measuredBy() == MeasuredBy.COUNT_X_SIZE;
    boolean byUnit = surface.measuredBy() == MeasuredBy.COUNT_X_UNIT;
    boolean whole = bySize && line.has(WIDTH) && line.has(HEIGHT);
    return (bySize || byUnit) && !whole
        ? Stream.of(WIDTH, LENGTH)
            .filter(line::has)
            .findFirst()
            .map(column -> unused(line, column, bySize))
        : Optional.empty();
  }

  private static Fault unused(Line line, InputColumn column, boolean bySize) {
    String measured = line.say(column.quantity(), line.number(column));
    return line.fault(
        column,
        measured,
        "",
        "Pieces of %s count with their usual area, so the %s of %s is not used; state %sArea."
            .formatted(
                line.surface().name(),
                column.heading().toLowerCase(Locale.ROOT),
                measured,
                bySize ? "Width and Height, or " : "the "));
  }
}
