package org.wetmil.workbook.fill.beside;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.quantity.UnitSystem;

/** Headings of filled columns; in an Excel table, where each must be one of a kind, made so. */
public final class ColumnHeadings {
  private final UnitSystem system;
  private final Map<SheetPlan.Block, Map<FilledColumn, String>> own = new HashMap<>();

  public ColumnHeadings(UnitSystem system) {
    this.system = system;
  }

  String of(SheetPlan.Block block, FilledColumn column) {
    return own.getOrDefault(block, Map.of()).getOrDefault(column, column.heading(system));
  }

  /** Keeps the headings of a block apart from those that its table has already. */
  void keepApart(SheetPlan.Block block, Set<String> taken) {
    Set<String> used = new HashSet<>();
    taken.forEach(heading -> used.add(heading.toLowerCase(Locale.ROOT)));
    Map<FilledColumn, String> headings = new HashMap<>();
    for (FilledColumn column : block.columns()) {
      String heading = column.heading(system);
      for (int i = 2; !used.add(heading.toLowerCase(Locale.ROOT)); i++) {
        heading = column.heading(system) + " " + i;
      }
      headings.put(column, heading);
    }
    own.put(block, headings);
  }
}
