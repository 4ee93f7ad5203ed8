package org.wetmil.workbook.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.audit.change.Suggestion;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.copy.NewWorkbook;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** Writes suggested figures as the sheets that a bid states its tables on. */
public final class TablesWriter {
  private static final int WIDTH = 20;

  private TablesWriter() {}

  /**
   * Writes the workbook, whole or not at all.
   *
   * @param suggestions those put on by hand are passed over
   * @param inputs files that must stay as they are
   * @param overwrite whether an older file may be replaced
   * @return how many figures it holds; when none, no file is written
   */
  public static int write(
      List<Suggestion> suggestions,
      UnitSystem system,
      List<Path> inputs,
      Path output,
      boolean overwrite) {
    Map<String, List<Suggestion>> tables = new TreeMap<>();
    suggestions.stream()
        .filter(suggestion -> !suggestion.isByHand())
        .forEach(
            suggestion ->
                tables
                    .computeIfAbsent(suggestion.table(), table -> new ArrayList<>())
                    .add(suggestion));
    if (tables.isEmpty()) {
      return 0;
    }
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Look look = new Look(workbook);
      tables.forEach((table, rows) -> sheet(workbook.createSheet(table), look, rows, system));
      NewWorkbook.write(workbook, inputs, output, overwrite);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return tables.values().stream().mapToInt(List::size).sum();
  }

  private static void sheet(
      XSSFSheet sheet, Look look, List<Suggestion> suggestions, UnitSystem system) {
    boolean coatings = suggestions.stream().anyMatch(one -> !one.coating().isEmpty());
    boolean surfaces = suggestions.stream().anyMatch(one -> !one.surface().isEmpty());
    Set<String> columns = new LinkedHashSet<>();
    suggestions.forEach(one -> columns.add(heading(one, system)));
    Map<List<String>, Map<String, Suggestion>> byRow = new LinkedHashMap<>();
    suggestions.forEach(
        one ->
            byRow
                .computeIfAbsent(List.of(one.coating(), one.surface()), row -> new TreeMap<>())
                .put(heading(one, system), one));
    Rows rows = new Rows(sheet).row();
    if (coatings) {
      rows.text("Coating", look.asked());
    }
    if (surfaces) {
      rows.text("Surface", look.asked());
    }
    columns.forEach(column -> rows.text(column, look.asked()));
    for (int i = 0; i < 2 + columns.size(); i++) {
      Pages.width(sheet, i, WIDTH);
    }
    byRow.forEach(
        (names, figures) -> {
          rows.row();
          if (coatings) {
            rows.text(names.get(0), look.text(false));
          }
          if (surfaces) {
            rows.text(names.get(1), look.text(false));
          }
          for (String column : columns) {
            Suggestion figure = figures.get(column);
            rows.number(
                figure == null ? Double.NaN : figure.quantity().shown(figure.suggested(), system),
                look.number(3));
          }
        });
    sheet.createFreezePane(0, 1);
  }

  private static String heading(Suggestion suggestion, UnitSystem system) {
    String unit = suggestion.quantity().unit(system).symbol();
    return unit.isEmpty() ? suggestion.column() : suggestion.column() + " (" + unit + ")";
  }
}
