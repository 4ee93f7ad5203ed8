package org.wetmil.workbook.read;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.estimate.InputColumn;

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
 * @param firstFreeColumn first column to the right of the table where, and to the right of which,
 *     nobody has written anything in its rows
 * @param excelTable name of the Excel table that it is, if it is one
 */
public record TableLayout(
    int headingRow,
    int firstRow,
    int lastRow,
    Map<InputColumn, Integer> columns,
    int firstColumn,
    int lastColumn,
    List<Integer> lineRows,
    int firstFreeColumn,
    Optional<String> excelTable) {
  public TableLayout {
    columns = Collections.unmodifiableMap(new EnumMap<>(columns));
    lineRows = List.copyOf(lineRows);
  }
}
