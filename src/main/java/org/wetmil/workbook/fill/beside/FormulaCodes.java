package org.wetmil.workbook.fill.beside;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.wetmil.estimate.EntryPlace;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.formula.Place;
import org.wetmil.workbook.read.earlier.FormulaShapes;

/**
 * The codes of all formulas that a fill writes beside the lines, by which the next fill tells one
 * that somebody put in their place.
 */
public final class FormulaCodes {
  /** Codes have up to 7 characters, and a cell holds 32,767. */
  private static final int MOST = 4000;

  private final BasisBook book;
  private final Map<FilledColumn, Set<String>> shapes = new EnumMap<>(FilledColumn.class);

  private final Map<FilledColumn, Set<Long>> seen = new EnumMap<>(FilledColumn.class);

  private FormulaCodes(BasisBook book) {
    this.book = book;
    Stream.of(FilledColumn.values()).forEach(column -> seen.put(column, new HashSet<>()));
  }

  /** By column, how many shapes its formulas have and their codes in one line. */
  public static Map<FilledColumn, Codes> of(List<SheetPlan> plans, BasisBook book) {
    FormulaCodes codes = new FormulaCodes(book);
    plans.forEach(plan -> plan.lines().forEach(codes::add));
    Map<FilledColumn, Codes> all = new EnumMap<>(FilledColumn.class);
    codes.shapes.forEach((column, shapes) -> all.put(column, Codes.of(shapes)));
    return all;
  }

  public record Codes(int count, String text) {
    private static Codes of(Set<String> shapes) {
      Set<String> codes = new TreeSet<>();
      shapes.forEach(shape -> codes.add(FormulaShapes.code(shape)));
      return new Codes(
          codes.size(), codes.size() > MOST ? FormulaShapes.TOO_MANY : String.join(" ", codes));
    }
  }

  private void add(FilledLine line) {
    line.figures()
        .forEach(
            (column, figure) -> {
              if (figure instanceof Figure.Live live
                  && Double.isFinite(live.value())
                  && seen.get(column).add(live.formula().likeness())) {
                shapes
                    .computeIfAbsent(column, any -> new HashSet<>())
                    .add(live.formula().print(this::role));
              }
            });
  }

  private String role(Place place) {
    if (place instanceof FilledColumn column) {
      return FormulaShapes.role(column);
    }
    return book.name(place)
        .orElseGet(
            () ->
                place instanceof EntryPlace entry
                    ? FormulaShapes.role(entry.table(), entry.heading())
                    : FormulaShapes.CELL);
  }
}
