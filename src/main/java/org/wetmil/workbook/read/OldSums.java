package org.wetmil.workbook.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.grid.GridReader;
import org.wetmil.workbook.read.grid.GridRow;
import org.wetmil.workbook.read.grid.MissingResults;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.SheetPart;

/**
 * Mistakes of arithmetic in the estimator's own cells: totals that do not add up, numbers next to a
 * total that it leaves out, and formulas overwritten by a number.
 */
public final class OldSums {
  private static final Pattern SUM =
      Pattern.compile("SUM\\(\\$?([A-Z]{1,3})\\$?(\\d{1,7}):\\$?([A-Z]{1,3})\\$?(\\d{1,7})\\)");

  /** Rounding of stored results, relative (house rule). */
  private static final double ROUNDING = 1e-6;

  /** Fewest formulas in a column, and least share, that make a number among them odd (house). */
  private static final int FEWEST = 5;

  private static final double MOST = 0.8;

  private final Grid grid;
  private final List<Mistake> mistakes = new ArrayList<>();

  private OldSums(Grid grid) {
    this.grid = grid;
  }

  /** A mistake and where it stands. */
  public record Mistake(String sheet, String address, String kind, String message) {}

  /** Looks through all sheets but those that an earlier fill added. */
  public static List<Mistake> of(ReadableCopy copy) {
    List<Mistake> found = new ArrayList<>();
    try (PackageReader workbook = copy.open();
        MissingResults missing = new MissingResults(workbook.zip()::whole, 0)) {
      OwnMarks marks = OwnMarks.of(workbook);
      GridReader grids = new GridReader(workbook, marks, missing);
      for (SheetPart sheet : workbook.sheets()) {
        if (!marks.sheets().contains(sheet.name())) {
          OldSums sums = new OldSums(grids.whole(sheet));
          sums.look();
          found.addAll(sums.mistakes);
        }
      }
    }
    return found;
  }

  private void look() {
    Map<Integer, List<RawCell>> columns = new TreeMap<>();
    for (GridRow row : grid.rows()) {
      for (RawCell cell : row.cells()) {
        columns.computeIfAbsent(cell.column(), any -> new ArrayList<>()).add(cell);
        if (cell.formula() != null) {
          sum(cell);
        }
      }
    }
    columns.values().forEach(this::overwritten);
  }

  private void sum(RawCell total) {
    Matcher matcher = SUM.matcher(total.formula().toUpperCase(Locale.ROOT));
    if (!matcher.matches() || total.kind() != CellKind.NUMBER) {
      return;
    }
    String reference = matcher.group().substring(4, matcher.group().length() - 1);
    CellRange range = CellRange.parse(reference).orElse(null);
    if (range == null || range.firstColumn() != range.lastColumn()) {
      return;
    }
    double sum = 0;
    for (GridRow row : grid.rows(range.firstRow(), range.lastRow())) {
      double number = number(row.row(), range.firstColumn());
      sum += Double.isNaN(number) ? 0 : number;
    }
    double stored = Double.parseDouble(total.text());
    if (Math.abs(stored - sum) > ROUNDING * Math.max(1, Math.abs(sum))) {
      say(
          total,
          "total does not add up",
          String.format(
              Locale.ROOT, "It shows %.2f; its cells %s come to %.2f.", stored, reference, sum));
    }
    leftOut(total, range, reference);
  }

  /** Numbers between the cells of a total and the total itself, or right above the first. */
  private void leftOut(RawCell total, CellRange range, String reference) {
    if (total.column() != range.firstColumn() || total.row() <= range.lastRow()) {
      return;
    }
    for (int row = range.lastRow() + 1; row < total.row(); row++) {
      leftOut(total, row, reference);
    }
    leftOut(total, range.firstRow() - 1, reference);
  }

  private void leftOut(RawCell total, int row, String reference) {
    RawCell cell = row < 0 ? null : grid.at(row, total.column());
    boolean isTotal =
        cell != null
            && cell.formula() != null
            && cell.formula().toUpperCase(Locale.ROOT).contains("SUM(");
    if (cell != null && !isTotal && !Double.isNaN(number(row, total.column()))) {
      say(
          total,
          "line left out of a total",
          String.format(
              Locale.ROOT,
              "It adds up %s and leaves out %s, which holds %.2f.",
              reference,
              address(cell),
              number(row, total.column())));
    }
  }

  private void overwritten(List<RawCell> column) {
    List<RawCell> numbers = column.stream().filter(cell -> cell.kind() == CellKind.NUMBER).toList();
    List<RawCell> formulas = numbers.stream().filter(cell -> cell.formula() != null).toList();
    if (formulas.size() < FEWEST || formulas.size() < MOST * numbers.size()) {
      return;
    }
    int first = formulas.get(0).row();
    int last = formulas.get(formulas.size() - 1).row();
    numbers.stream()
        .filter(cell -> cell.formula() == null && cell.row() > first && cell.row() < last)
        .forEach(
            cell ->
                say(
                    cell,
                    "formula overwritten",
                    "The cells above and below are formulas, this one is the number "
                        + cell.text()
                        + "."));
  }

  private double number(int row, int column) {
    RawCell cell = grid.at(row, column);
    return cell.kind() == CellKind.NUMBER ? Double.parseDouble(cell.text()) : Double.NaN;
  }

  private void say(RawCell cell, String kind, String message) {
    mistakes.add(new Mistake(grid.sheet(), address(cell), kind, message));
  }

  private static String address(RawCell cell) {
    return CellAddress.letters(cell.column()) + (cell.row() + 1);
  }
}
