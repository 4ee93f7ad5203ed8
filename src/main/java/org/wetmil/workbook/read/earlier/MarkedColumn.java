package org.wetmil.workbook.read.earlier;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.workbook.read.grid.OwnMarks;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.RawCell;

/**
 * A filled column of one table, as an earlier fill marked it.
 *
 * @param slot which table of the sheet it stands with, from 1
 */
public record MarkedColumn(String sheet, FilledColumn column, int slot, CellRange range) {

  /** The columns of one sheet. */
  public static List<MarkedColumn> of(List<OwnMarks.Filled> marks, String sheet) {
    return marks.stream()
        .filter(mark -> mark.sheet().equals(sheet))
        .flatMap(mark -> of(mark).stream())
        .toList();
  }

  private static Optional<MarkedColumn> of(OwnMarks.Filled mark) {
    for (FilledColumn column : FilledColumn.values()) {
      String word = column.name().toLowerCase(Locale.ROOT);
      String rest = mark.word().startsWith(word) ? mark.word().substring(word.length()) : "?";
      if (rest.isEmpty() || rest.matches("_\\d{1,4}")) {
        int slot = rest.isEmpty() ? 1 : Integer.parseInt(rest.substring(1));
        return Optional.of(new MarkedColumn(mark.sheet(), column, slot, mark.range()));
      }
    }
    return Optional.empty();
  }

  /** Of tables above one another, the one whose headings stand nearest above a cell. */
  static Optional<MarkedColumn> above(List<MarkedColumn> columns, RawCell cell) {
    MarkedColumn nearest = null;
    for (MarkedColumn column : columns) {
      boolean above =
          column.range().firstColumn() == cell.column() && column.range().firstRow() < cell.row();
      if (above && (nearest == null || nearest.range().firstRow() < column.range().firstRow())) {
        nearest = column;
      }
    }
    return Optional.ofNullable(nearest);
  }
}
