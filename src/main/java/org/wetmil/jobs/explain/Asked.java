package org.wetmil.jobs.explain;

import java.util.Optional;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.SheetReference;

/**
 * The cell that somebody asks about.
 *
 * @param sheet as typed; empty when none was named
 * @param row from 1
 * @param column from 0; empty when a whole row is asked about
 */
public record Asked(String sheet, int row, Optional<Integer> column) {

  /**
   * Reads a reference as a spreadsheet writes it, or the number of a row.
   *
   * @throws IllegalArgumentException with a sentence for the user
   */
  public static Asked of(String text) {
    int mark = text.lastIndexOf('!');
    String sheet = mark < 0 ? "" : SheetReference.unquoted(text.substring(0, mark).strip());
    String cell = text.substring(mark + 1).strip().replace("$", "");
    if (cell.matches("\\d{1,7}")) {
      int row = Integer.parseInt(cell);
      if (row >= 1 && row <= CellAddress.MAX_ROWS) {
        return new Asked(sheet, row, Optional.empty());
      }
    }
    return CellAddress.find(cell)
        .map(at -> new Asked(sheet, at.row() + 1, Optional.of(at.column())))
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "\""
                        + text
                        + "\" is no cell; write it as in H12, Bid!H12 or 'Bid sheet'!H12, or name"
                        + " a row as in 12"));
  }

  @Override
  public String toString() {
    String cell =
        column.map(at -> new CellAddress(row - 1, at).toString()).orElseGet(() -> "row " + row);
    return sheet.isEmpty() ? cell : sheet + "!" + cell;
  }
}
