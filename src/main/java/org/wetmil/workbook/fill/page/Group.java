package org.wetmil.workbook.fill.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.quantity.UnitSystem;

/**
 * Lines that belong together, such as those of a room: only lines that count.
 *
 * @param keys the spellings of what they have in common, which differ in more than case
 */
record Group(Set<String> keys, List<FilledLine> lines) {

  /**
   * Parts the lines that count, in the order in which they come.
   *
   * @param same what lines of one group have in common
   * @param key how the list of hours spells it
   */
  static List<Group> of(
      FilledBid filled, Function<FilledLine, ?> same, Function<FilledLine, String> key) {
    Map<Object, Group> groups = new LinkedHashMap<>();
    filled
        .lines()
        .filter(FilledLine::isCounted)
        .forEach(
            line -> {
              Group group =
                  groups.computeIfAbsent(
                      same.apply(line),
                      each -> new Group(new LinkedHashSet<>(), new ArrayList<>()));
              group.keys().add(key.apply(line).toLowerCase(Locale.ROOT));
              group.lines().add(line);
            });
    return List.copyOf(groups.values());
  }

  FilledLine first() {
    return lines.get(0);
  }

  /** A figure over its lines, in the units of a family. */
  double total(FilledColumn column, UnitSystem system) {
    double base = lines.stream().mapToDouble(line -> line.base(column)).sum();
    return column.quantity().shown(base, system);
  }
}
