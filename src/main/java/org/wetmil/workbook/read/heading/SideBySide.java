package org.wetmil.workbook.read.heading;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.read.grid.Grid;

/**
 * Parts the headings of a row into those of tables that stand side by side.
 *
 * <p>A blank column ends a table unless known headings of the same table go on behind it, which
 * then name nothing that the table already has.
 */
final class SideBySide {
  /** Names that must come again before they are another table rather than a slip. */
  private static final int NAMES_THAT_REPEAT = 3;

  private final Grid grid;
  private final int firstRow;
  private final int lastRow;

  SideBySide(Grid grid, int firstRow, int lastRow) {
    this.grid = grid;
    this.firstRow = firstRow;
    this.lastRow = lastRow;
  }

  List<List<Heading>> split(List<Heading> headings) {
    List<List<Heading>> tables = new ArrayList<>();
    List<Heading> unknown = new ArrayList<>();
    for (List<Heading> run : runs(headings)) {
      for (List<Heading> part : parts(run)) {
        if (part.stream().noneMatch(Heading::isKnown)) {
          unknown.addAll(part);
          continue;
        }
        if (tables.isEmpty() || !goesOn(tables.get(tables.size() - 1), part)) {
          tables.add(new ArrayList<>());
        } else {
          tables.get(tables.size() - 1).addAll(unknown);
        }
        tables.get(tables.size() - 1).addAll(part);
        unknown.clear();
      }
    }
    return tables;
  }

  /** Headings without a blank column between them; a merged heading fills its columns. */
  private List<List<Heading>> runs(List<Heading> headings) {
    List<List<Heading>> runs = new ArrayList<>();
    for (Heading heading : headings) {
      boolean apart =
          runs.isEmpty() || !isFilled(last(runs.get(runs.size() - 1)), heading.column());
      if (apart) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(heading);
    }
    return runs;
  }

  private static int last(List<Heading> run) {
    return run.get(run.size() - 1).column();
  }

  private boolean isFilled(int after, int before) {
    for (int column = after + 1; column < before; column++) {
      boolean covered = false;
      for (int row = firstRow; row <= lastRow; row++) {
        covered |= grid.isCovered(row, column);
      }
      if (!covered) {
        return false;
      }
    }
    return true;
  }

  /** One run may hold two tables without a gap: then the names of the first come again. */
  private static List<List<Heading>> parts(List<Heading> run) {
    for (int i = 1; i < run.size(); i++) {
      Set<InputColumn> before = names(run.subList(0, i));
      Set<InputColumn> after = names(run.subList(i, run.size()));
      Heading heading = run.get(i);
      boolean begins = heading.isCertain() && heading.candidates().equals(run.get(0).candidates());
      after.retainAll(before);
      if (begins && after.size() >= NAMES_THAT_REPEAT) {
        List<List<Heading>> parts = new ArrayList<>();
        parts.add(run.subList(0, i));
        parts.addAll(parts(run.subList(i, run.size())));
        return parts;
      }
    }
    return List.of(run);
  }

  private static boolean goesOn(List<Heading> table, List<Heading> next) {
    Set<InputColumn> again = names(next);
    again.retainAll(names(table));
    return again.isEmpty();
  }

  private static Set<InputColumn> names(List<Heading> headings) {
    Set<InputColumn> names = EnumSet.noneOf(InputColumn.class);
    headings.stream().filter(Heading::isCertain).forEach(each -> names.addAll(each.candidates()));
    return names;
  }
}
