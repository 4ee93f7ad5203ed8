package org.wetmil.workbook.read;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.read.table.RowKind;
import org.wetmil.workbook.stream.CellAddress;

/**
 * Where one table of a bid stands. Rows and columns count from 0.
 *
 * @param headingRow the row of its headings; the lowest that names columns, of several
 * @param firstRow first row under the headings and their units
 * @param lastRow last row that belongs to the table
 * @param columns the column that holds each input; of two room columns, the first
 * @param firstColumn its leftmost column
 * @param lastColumn its rightmost column
 * @param lineRows rows that are bid lines, ascending
 * @param otherRows rows that hold something and are no bid lines, with what they are
 * @param firstFreeColumn first column to the right of the table where, and to the right of which,
 *     nobody has written anything in its rows
 * @param excelTable name of the Excel table that it is, if it is one
 * @param elsewhere by row, inputs in words that do not stand in the row's own cell alone: the cells
 *     that make them up, in order; none where no formula can follow what is shown
 */
public record TableLayout(
    int headingRow,
    int firstRow,
    int lastRow,
    Map<InputColumn, Integer> columns,
    int firstColumn,
    int lastColumn,
    List<Integer> lineRows,
    Map<Integer, RowKind> otherRows,
    int firstFreeColumn,
    Optional<String> excelTable,
    Map<Integer, Map<InputColumn, List<CellAddress>>> elsewhere) {
  public TableLayout {
    elsewhere = Map.copyOf(elsewhere);
    columns = Collections.unmodifiableMap(new EnumMap<>(columns));
    lineRows = List.copyOf(lineRows);
    otherRows = Map.copyOf(otherRows);
  }

  /** The cells that an input in words of a row stands in, in order. */
  public List<CellAddress> cells(int row, InputColumn column) {
    List<CellAddress> there = elsewhere.getOrDefault(row, Map.of()).get(column);
    if (there != null) {
      return there;
    }
    return columns.containsKey(column)
        ? List.of(new CellAddress(row, columns.get(column)))
        : List.of();
  }
}
