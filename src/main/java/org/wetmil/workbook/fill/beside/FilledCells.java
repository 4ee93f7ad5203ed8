package org.wetmil.workbook.fill.beside;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.read.ReadWorkbook;
import org.wetmil.workbook.read.SheetLayout;
import org.wetmil.workbook.read.TableLayout;
import org.wetmil.workbook.read.earlier.MarkedColumn;
import org.wetmil.workbook.stream.CellAddress;

/**
 * The cells of bid lines: those that were read, and those that a fill wrote or would write. In a
 * workbook that was filled, columns count as they stand there now.
 */
public final class FilledCells {
  private final ReadWorkbook read;
  private final List<SheetPlan> plans = new ArrayList<>();

  /**
   * A line with the columns that its cells stand in, from 0.
   *
   * @param table the table that it was read from
   * @param filled where its filled figures stand
   */
  public record Place(FilledLine line, TableLayout table, Map<FilledColumn, Integer> filled) {

    /** The filled column that a column of the sheet is. */
    public Optional<FilledColumn> filledAt(int column) {
      return filled.entrySet().stream()
          .filter(each -> each.getValue() == column)
          .map(Map.Entry::getKey)
          .findFirst();
    }

    /** The input that a column of the sheet is. */
    public Optional<InputColumn> inputAt(int column) {
      return table.columns().entrySet().stream()
          .filter(each -> each.getValue() == column)
          .map(Map.Entry::getKey)
          .findFirst();
    }

    public String room() {
      return line.line().text(InputColumn.ROOM);
    }

    public String surface() {
      return line.line().text(InputColumn.SURFACE);
    }

    /** The leftmost cell of the line. */
    public String firstCell() {
      return new CellAddress(line.line().row() - 1, table.firstColumn()).toString();
    }

    /** The cells that an input was read from, in order. */
    public List<CellAddress> cells(InputColumn column) {
      return table.cells(line.line().row() - 1, column);
    }

    /** Whether a column of the sheet belongs to the line. */
    public boolean has(int column) {
      boolean inTable = column >= table.firstColumn() && column <= table.lastColumn();
      return inTable || filledAt(column).isPresent();
    }

    /** The cell of a filled figure; empty when the bid does not show it. */
    public Optional<String> cell(FilledColumn column) {
      return Optional.ofNullable(filled.get(column))
          .map(at -> new CellAddress(line.line().row() - 1, at).toString());
    }
  }

  public FilledCells(ReadWorkbook read, FilledBid filled) {
    this.read = read;
    List<FilledColumn> shown = FilledColumn.shown(filled.bid().catalogue());
    for (FilledBid.FilledSheet sheet : filled.sheets()) {
      SheetLayout layout =
          read.layouts().stream()
              .filter(each -> each.sheet().equals(sheet.sheet().name()))
              .findFirst()
              .orElseThrow();
      plans.add(new SheetPlan(layout, sheet, shown));
    }
  }

  /** The lines in a row, from 1: one, none, or one of each table side by side. */
  public List<Place> at(String sheet, int row) {
    List<Place> places = new ArrayList<>();
    for (SheetPlan plan : plans) {
      if (plan.sheet().equals(sheet)) {
        List<SheetPlan.Block> beside = plan.blocks().stream().filter(at(row - 1)).toList();
        for (SheetPlan.Placed placed : plan.at(row - 1)) {
          SheetPlan.Block block = placed.block();
          Map<FilledColumn, Integer> marked = marked(sheet, row - 1, beside.indexOf(block));
          places.add(
              new Place(
                  placed.line(),
                  block.table(),
                  read.filledBefore() && !marked.isEmpty() ? marked : planned(block)));
        }
      }
    }
    return places;
  }

  private static Map<FilledColumn, Integer> planned(SheetPlan.Block block) {
    Map<FilledColumn, Integer> columns = new EnumMap<>(FilledColumn.class);
    block.columns().forEach(column -> columns.put(column, block.column(column)));
    return columns;
  }

  private static Predicate<SheetPlan.Block> at(int row) {
    return block -> block.table().headingRow() < row && row <= block.table().lastRow();
  }

  /**
   * Tables side by side take the slots of the earlier fill in order.
   *
   * @param nth which of the tables in the row
   */
  private Map<FilledColumn, Integer> marked(String sheet, int row, int nth) {
    List<MarkedColumn> above =
        read.filledColumns().stream()
            .filter(each -> each.sheet().equals(sheet) && each.range().firstRow() < row)
            .toList();
    List<MarkedColumn> inRow =
        above.stream().filter(each -> row <= each.range().lastRow()).toList();
    // a line added below what was filled stands under the columns of the table nearest above
    List<MarkedColumn> marked = inRow.isEmpty() ? above : inRow;
    List<Integer> slots = marked.stream().map(MarkedColumn::slot).distinct().sorted().toList();
    Map<FilledColumn, Integer> columns = new EnumMap<>(FilledColumn.class);
    for (MarkedColumn each : marked) {
      if (inRow.isEmpty() || (nth < slots.size() && each.slot() == slots.get(nth))) {
        columns.put(each.column(), each.range().firstColumn());
      }
    }
    return columns;
  }
}
