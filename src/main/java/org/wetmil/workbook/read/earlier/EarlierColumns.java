package org.wetmil.workbook.read.earlier;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.EarlierCells;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.CellText;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.RawCell;

/**
 * The cells of the filled columns of a bid sheet that hold no formula, given back to their lines.
 */
public final class EarlierColumns {
  private final BidSheet sheet;
  private final Set<FilledColumn> passedOver;
  private final boolean kept;
  private final List<Column> columns = new ArrayList<>();
  private final Map<Integer, List<RawCell>> byRow = new HashMap<>();

  /**
   * A filled column of one table.
   *
   * @param slot which table of the sheet it stands with, from 1
   */
  private record Column(FilledColumn column, int slot, CellRange range, Unit unit) {}

  /**
   * @param cells those of the earlier fill that hold no formula
   * @param passedOver columns of which nobody can tell what was typed
   * @param kept whether what was typed over a formula stays
   */
  public EarlierColumns(
      BidSheet sheet,
      List<OwnMarks.Filled> marks,
      List<RawCell> cells,
      Set<FilledColumn> passedOver,
      boolean kept) {
    this.sheet = sheet;
    this.passedOver = passedOver;
    this.kept = kept;
    cells.forEach(cell -> byRow.computeIfAbsent(cell.row(), r -> new ArrayList<>()).add(cell));
    marks.stream()
        .filter(mark -> mark.sheet().equals(sheet.name()))
        .forEach(mark -> column(mark).ifPresent(columns::add));
  }

  /** The sheet with its lines' cells of the earlier fill. */
  public BidSheet attached() {
    if (columns.isEmpty()) {
      return sheet;
    }
    Map<Integer, Integer> linesInRow = new HashMap<>();
    sheet.lines().forEach(line -> linesInRow.merge(line.row(), 1, Integer::sum));
    Map<Integer, Integer> seen = new HashMap<>();
    List<BidLine> lines =
        sheet.lines().stream()
            .map(
                line -> {
                  int nth = seen.merge(line.row(), 1, Integer::sum) - 1;
                  return line.with(cells(line.row() - 1, nth, linesInRow.get(line.row())));
                })
            .toList();
    return new BidSheet(
        sheet.name(), sheet.system(), sheet.unitsStated(), sheet.columnUnits(), lines);
  }

  /** Tables side by side share rows: their lines take the blocks of columns in order. */
  private EarlierCells cells(int row, int nth, int lines) {
    Map<Integer, Map<Column, RawCell>> slots = new TreeMap<>();
    for (RawCell cell : byRow.getOrDefault(row, List.of())) {
      columnOf(cell)
          .ifPresent(
              column ->
                  slots.computeIfAbsent(column.slot(), s -> new HashMap<>()).put(column, cell));
    }
    return slots.size() == lines ? cells(List.copyOf(slots.values()).get(nth)) : EarlierCells.NONE;
  }

  private EarlierCells cells(Map<Column, RawCell> found) {
    Map<FilledColumn, Double> numbers = new EnumMap<>(FilledColumn.class);
    Map<FilledColumn, String> words = new EnumMap<>(FilledColumn.class);
    found.forEach(
        (column, cell) -> {
          double number = CellText.number(cell);
          if (Double.isFinite(number)) {
            Unit base = column.column().quantity().base();
            numbers.put(column.column(), column.unit().to(base, number));
          } else if (cell.kind() == CellKind.TEXT && !cell.text().isBlank()) {
            words.put(column.column(), cell.text().strip());
          }
        });
    return new EarlierCells(numbers, words, kept && isMarked(found));
  }

  /** Below what the earlier fill wrote there was no formula of ours to type over. */
  private static boolean isMarked(Map<Column, RawCell> found) {
    return found.entrySet().stream()
        .allMatch(each -> each.getValue().row() <= each.getKey().range().lastRow());
  }

  /** Of tables above one another, the one whose headings stand nearest above. */
  private Optional<Column> columnOf(RawCell cell) {
    Column nearest = null;
    for (Column column : columns) {
      boolean above =
          column.range().firstColumn() == cell.column() && column.range().firstRow() < cell.row();
      if (above && (nearest == null || nearest.range().firstRow() < column.range().firstRow())) {
        nearest = column;
      }
    }
    return Optional.ofNullable(nearest);
  }

  private Optional<Column> column(OwnMarks.Filled mark) {
    for (FilledColumn column : FilledColumn.values()) {
      String word = column.name().toLowerCase(Locale.ROOT);
      String rest = mark.word().startsWith(word) ? mark.word().substring(word.length()) : "?";
      if ((rest.isEmpty() || rest.matches("_\\d{1,4}")) && !passedOver.contains(column)) {
        int slot = rest.isEmpty() ? 1 : Integer.parseInt(rest.substring(1));
        return Optional.of(new Column(column, slot, mark.range(), unit(column, mark.range())));
      }
    }
    return Optional.empty();
  }

  /** The unit that the heading of the earlier fill states. */
  private Unit unit(FilledColumn column, CellRange range) {
    String heading =
        byRow.getOrDefault(range.firstRow(), List.of()).stream()
            .filter(cell -> cell.column() == range.firstColumn())
            .map(RawCell::text)
            .findFirst()
            .orElse("");
    UnitSystem system =
        Stream.of(UnitSystem.values())
            .filter(each -> heading.startsWith(column.heading(each)))
            .findFirst()
            .orElse(sheet.system());
    return column.quantity().unit(system);
  }
}
