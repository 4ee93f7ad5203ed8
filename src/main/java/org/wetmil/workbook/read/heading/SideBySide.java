package org.wetmil.workbook.read.heading;

import java.util.ArrayList;
import java.util.Collections;
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
    Set<InputColumn> named = EnumSet.noneOf(InputColumn.class);
    List<Heading> unknown = new ArrayList<>();
    for (List<Heading> run : runs(headings)) {
      for (List<Heading> part : parts(run)) {
        if (part.stream().noneMatch(Heading::isKnown)) {
          unknown.addAll(part);
          continue;
        }
        Set<InputColumn> names = names(part);
        boolean goesOn = !tables.isEmpty() && Collections.disjoint(names, named);
        if (goesOn) {
          tables.get(tables.size() - 1).addAll(unknown);
        } else {
          tables.add(new ArrayList<>());
          named.clear();
        }
        tables.get(tables.size() - 1).addAll(part);
        named.addAll(names);
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
    List<Set<InputColumn>> onwards = onwards(run);
    List<List<Heading>> parts = new ArrayList<>();
    int first = 0;
    Set<InputColumn> before = names(run.subList(0, 1));
    for (int i = 1; i < run.size(); i++) {
      Heading heading = run.get(i);
      boolean begins =
          heading.isCertain() && heading.candidates().equals(run.get(first).candidates());
      if (begins && shared(before, onwards.get(i)) >= NAMES_THAT_REPEAT) {
        parts.add(run.subList(first, i));
        first = i;
        before.clear();
      }
      addName(before, heading);
    }
    parts.add(run.subList(first, run.size()));
    return parts;
  }

  /** For each heading the names from it to the end. */
  private static List<Set<InputColumn>> onwards(List<Heading> run) {
    List<Set<InputColumn>> onwards = new ArrayList<>(Collections.nCopies(run.size(), null));
    Set<InputColumn> names = EnumSet.noneOf(InputColumn.class);
    for (int i = run.size() - 1; i >= 0; i--) {
      addName(names, run.get(i));
      onwards.set(i, EnumSet.copyOf(names));
    }
    return onwards;
  }

  private static int shared(Set<InputColumn> one, Set<InputColumn> other) {
    Set<InputColumn> shared = EnumSet.copyOf(one);
    shared.retainAll(other);
    return shared.size();
  }

  private static Set<InputColumn> names(List<Heading> headings) {
    Set<InputColumn> names = EnumSet.noneOf(InputColumn.class);
    headings.forEach(each -> addName(names, each));
    return names;
  }

  private static void addName(Set<InputColumn> names, Heading heading) {
    if (heading.isCertain()) {
      names.addAll(heading.candidates());
    }
  }
}
