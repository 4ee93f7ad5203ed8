package org.wetmil.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Figures that must not contradict each other, from least to greatest. Where stated cells break the
 * order, all that were stated of the group go back to what they were before, so that what is left
 * fits together.
 */
final class Consistency {
  /** Columns of one row; pairs of these are in order. */
  private static final Map<Tables, List<List<List<String>>>> COLUMNS =
      Map.of(
          Tables.COATINGS,
          List.of(
              List.of(
                  List.of("Orifice least", "Orifice from", "Orifice to"),
                  List.of("Orifice least", "Orifice joinery from", "Orifice to")),
              List.of(List.of("Wet film min", "Wet film target", "Wet film max")),
              List.of(List.of("Least pressure", "Usual pressure"))),
          Tables.STOCK_TIPS,
          List.of(List.of(List.of("Orifice from", "Orifice to"))));

  private static final List<List<Setting>> SETTINGS =
      List.of(
          List.of(Setting.BROAD_SLOWEST, Setting.BROAD_EASY, Setting.BROAD_FASTEST),
          List.of(Setting.JOINERY_SLOWEST, Setting.JOINERY_EASY, Setting.JOINERY_FASTEST),
          List.of(Setting.LEAST_PRESSURE, Setting.GREATEST_PRESSURE),
          List.of(Setting.LEAST_DISTANCE, Setting.GREATEST_DISTANCE),
          List.of(Setting.HEIGHT_STEP_1, Setting.HEIGHT_STEP_2, Setting.HEIGHT_STEP_3),
          List.of(Setting.WORN, Setting.REPLACE));

  private final CellEntry cells;

  Consistency(CellEntry cells) {
    this.cells = cells;
  }

  /** Puts groups of columns that contradict each other back to the entries below. */
  void columns(
      Tables which, TableSpec spec, StatedRow stated, List<Entry> entries, List<Entry> below) {
    for (List<List<String>> group : COLUMNS.getOrDefault(which, List.of())) {
      group.stream()
          .filter(order -> isBroken(order.stream().map(h -> entries.get(spec.index(h))).toList()))
          .findFirst()
          .ifPresent(
              order -> {
                problem(stated, order);
                group.stream()
                    .flatMap(List::stream)
                    .map(spec::index)
                    .forEach(i -> entries.set(i, below.get(i)));
              });
    }
  }

  /** Leaves out the stated settings of groups that contradict each other. */
  List<Row> settings(Table table, List<Row> stated, Map<Row, StatedRow> cellsOf) {
    Table merged = table.with(stated);
    List<Row> kept = new ArrayList<>(stated);
    for (List<Setting> order : SETTINGS) {
      List<Entry> entries = order.stream().map(s -> merged.get(s.title()).get("Value")).toList();
      if (isBroken(entries)) {
        List<String> titles = order.stream().map(Setting::title).toList();
        for (Row row : stated) {
          if (titles.contains(row.name())) {
            StatedRow at = cellsOf.get(row);
            cells.problem(at, at.cells().get("Value"), inOrder(titles));
            kept.remove(row);
          }
        }
      }
    }
    return kept;
  }

  private void problem(StatedRow stated, List<String> order) {
    order.stream()
        .map(stated.cells()::get)
        .filter(cell -> cell != null && !cell.raw().isBlank())
        .findFirst()
        .ifPresent(cell -> cells.problem(stated, cell, inOrder(order)));
  }

  private static String inOrder(List<String> names) {
    return "a value in the order " + String.join(", ", names) + ", least first";
  }

  private static boolean isBroken(List<Entry> entries) {
    for (int i = 1; i < entries.size(); i++) {
      if (entries.get(i - 1).number() > entries.get(i).number()) {
        return true;
      }
    }
    return false;
  }
}
