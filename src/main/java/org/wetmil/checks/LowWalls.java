package org.wetmil.checks;

import static org.wetmil.estimate.InputColumn.HEIGHT;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.wetmil.catalogue.MeasuredBy;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;

/**
 * Walls so low in feet that metres were likely meant. A kneewall is as low in truth, and one of
 * them tells nothing; so a sheet is judged as a whole, by the walls that go around its rooms, and
 * only where most of them are so low. Walls measured by length, as fences and parapets, do not
 * count, nor does a height that is typed with its unit.
 */
final class LowWalls {
  private LowWalls() {}

  /** One fault for a sheet, at its first such height. */
  static Stream<Fault> inMetres(FilledBid bid) {
    Map<String, List<Line>> sheets =
        Line.all(bid)
            .filter(LowWalls::isWall)
            .collect(
                Collectors.groupingBy(
                    line -> line.filled().line().sheet(), LinkedHashMap::new, Collectors.toList()));
    return sheets.values().stream().flatMap(walls -> fault(walls).stream());
  }

  private static boolean isWall(Line line) {
    return line.system() == UnitSystem.US
        && line.surface() != null
        && line.surface().measuredBy() == MeasuredBy.PERIMETER_X_HEIGHT
        && line.number(HEIGHT) > 0;
  }

  private static Optional<Fault> fault(List<Line> walls) {
    List<Line> low = walls.stream().filter(LowWalls::isLow).toList();
    if (2 * low.size() <= walls.size()) {
      return Optional.empty();
    }
    Line first = low.get(0);
    double least = CheckLimits.LEAST_LIKELY_HEIGHT.value();
    Say.Pair said = first.pair(Quantity.LENGTH, first.number(HEIGHT), least);
    return first.found(
        HEIGHT,
        said.measured(),
        said.limit(),
        "Of %s with a height, %d would be under %s, here %s, which looks like metres; if so, write"
                .formatted(
                    Count.of(walls.size(), "line") + " of walls",
                    low.size(),
                    said.limit(),
                    said.measured())
            + " Height (m) as the heading, or type m with the numbers; true low walls may stay.");
  }

  private static boolean isLow(Line line) {
    InputValue cell = line.cell(HEIGHT);
    return cell.unit() == Unit.FOOT
        && cell.number() < CheckLimits.LEAST_LIKELY_HEIGHT.value()
        && LikelyUnit.isLikely(HEIGHT, line.surface(), Unit.METRE, LikelyUnit.typed(cell))
        && cell.raw().chars().noneMatch(sign -> Character.isLetter(sign) || sign == '\'');
  }
}
