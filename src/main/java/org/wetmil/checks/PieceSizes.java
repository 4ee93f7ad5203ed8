package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.AREA;
import static org.wetmil.estimate.InputColumn.COUNT;
import static org.wetmil.estimate.InputColumn.HEIGHT;
import static org.wetmil.estimate.InputColumn.WIDTH;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.catalogue.Surface;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/**
 * Pieces such as doors and cabinet fronts whose sizes make them far larger than such pieces are. A
 * single long one may be a run of cabinets or a folding wall; several that would be usual with the
 * longer side in a smaller unit are not.
 */
final class PieceSizes {
  private static final List<Unit> US = List.of(Unit.INCH);
  private static final List<Unit> METRIC = List.of(Unit.CENTIMETRE, Unit.MILLIMETRE);

  private PieceSizes() {}

  /** A unit that some of the sizes may be meant in, and the usual pieces that one then makes. */
  private record Meant(List<InputColumn> sizes, Unit unit, double times) {
    double off() {
      return Math.abs(Math.log(times));
    }
  }

  static Optional<Fault> tooLarge(Line line) {
    Surface surface = line.surface();
    if (surface == null
        || surface.measuredBy() != MeasuredBy.COUNT_X_SIZE
        || line.has(AREA)
        || !(line.number(WIDTH) > 0 && line.number(HEIGHT) > 0)
        || UnitSlips.heightUnit(line).isPresent()) {
      return Optional.empty();
    }
    double usualFt2 = surface.unitFt2();
    double pieceFt2 = line.number(WIDTH) * line.number(HEIGHT);
    Optional<Meant> meant = meant(line, usualFt2);
    boolean several = line.number(COUNT) > 1 && meant.filter(PieceSizes::isOneUsual).isPresent();
    double most = (several ? CheckLimits.LONG_PIECE : CheckLimits.LARGE_PIECE).value();
    if (!(pieceFt2 > most * usualFt2)) {
      return Optional.empty();
    }
    String measured = line.say(Quantity.AREA, pieceFt2);
    return line.found(
        WIDTH,
        measured,
        line.say(Quantity.AREA, most * usualFt2),
        "A piece of %s is over %s times the %s that one of %s usually has; check the sizes%s."
            .formatted(
                measured,
                Say.number(most, 0),
                line.say(Quantity.AREA, usualFt2),
                surface.name(),
                meant.map(each -> said(line, each)).orElse("")));
  }

  /** Whether one side alone in a smaller unit makes a piece that is about as usual. */
  private static boolean isOneUsual(Meant meant) {
    return meant.sizes().size() == 1
        && meant.off() <= Math.log(CheckLimits.LONG_PIECE_SIDES.value());
  }

  /** The smaller unit of both sides, or of the far longer one, that makes the most usual piece. */
  private static Optional<Meant> meant(Line line, double usualFt2) {
    double wide = line.number(WIDTH);
    double high = line.number(HEIGHT);
    double ratio = Math.max(wide, high) / Math.min(wide, high);
    List<InputColumn> longer = List.of(wide > high ? WIDTH : HEIGHT);
    return (line.system() == UnitSystem.US ? US : METRIC)
        .stream()
            .flatMap(
                unit ->
                    Stream.concat(
                        Stream.of(meant(line, List.of(WIDTH, HEIGHT), unit, usualFt2)),
                        ratio > CheckLimits.LONG_PIECE_SIDES.value()
                            ? Stream.of(meant(line, longer, unit, usualFt2))
                            : Stream.empty()))
            .filter(each -> each.off() <= Math.log(CheckLimits.LARGE_PIECE.value()))
            .min(Comparator.comparingDouble(Meant::off));
  }

  private static Meant meant(Line line, List<InputColumn> sizes, Unit unit, double usualFt2) {
    double ft2 =
        Stream.of(WIDTH, HEIGHT)
            .mapToDouble(
                column ->
                    sizes.contains(column)
                        ? unit.to(Unit.FOOT, LikelyUnit.typed(line.cell(column)))
                        : line.number(column))
            .reduce(1, (one, other) -> one * other);
    return new Meant(sizes, unit, ft2 / usualFt2);
  }

  private static String said(Line line, Meant meant) {
    List<String> typed =
        meant.sizes().stream()
            .map(column -> Say.number(LikelyUnit.typed(line.cell(column)), 1))
            .map(number -> number + " " + meant.unit().symbol())
            .toList();
    return ", %s like %s; if so, type %s"
        .formatted(
            typed.size() > 1
                ? "which look"
                : "since the " + meant.sizes().get(0).heading().toLowerCase(Locale.ROOT) + " looks",
            LikelyUnit.word(meant.unit()),
            Say.and(typed));
  }
}
