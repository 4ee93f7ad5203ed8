package org.wetmil.workbook.read.grid;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.RawCell;

/** The cells of a sheet that hold something. Rows and columns count from 0. */
public final class Grid {
  /** A merge of more cells is decoration, such as a frame around the page. */
  private static final int GREATEST_MERGE = 10_000;

  private final String sheet;
  private final NavigableMap<Integer, GridRow> rows = new TreeMap<>();
  private final Map<Long, CellRange> mergedAt = new HashMap<>();
  private final CellText texts;

  Grid(String sheet, Collection<GridRow> rows, List<CellRange> merged, CellText texts) {
    this.sheet = sheet;
    this.texts = texts;
    rows.forEach(row -> this.rows.put(row.row(), row));
    int end =
        rows.stream()
            .flatMap(row -> row.cells().stream())
            .mapToInt(RawCell::column)
            .max()
            .orElse(-1);
    for (CellRange range : merged) {
      long cells =
          (long) (range.lastRow() - range.firstRow() + 1)
              * (range.lastColumn() - range.firstColumn() + 1);
      if (cells > GREATEST_MERGE) {
        continue;
      }
      // where nothing stands nobody looks
      for (GridRow row : rows(range.firstRow(), range.lastRow())) {
        int last = Math.min(end, range.lastColumn());
        for (int column = range.firstColumn(); column <= last; column++) {
          mergedAt.put(key(row.row(), column), range);
        }
      }
    }
  }

  public String sheet() {
    return sheet;
  }

  public CellText texts() {
    return texts;
  }

  /** The rows that hold something, from the top. */
  public Collection<GridRow> rows() {
    return rows.values();
  }

  /** The rows between two, both included, that hold something. */
  public Collection<GridRow> rows(int first, int last) {
    return first > last ? List.of() : rows.subMap(first, true, last, true).values();
  }

  /** The last row that holds something; -1 when none does. */
  public int lastRow() {
    return rows.isEmpty() ? -1 : rows.lastKey();
  }

  public boolean isHidden(int row) {
    GridRow at = rows.get(row);
    return at != null && at.hidden();
  }

  /** The cell at a place; a blank one when nothing is there. */
  public RawCell at(int row, int column) {
    GridRow at = rows.get(row);
    if (at != null) {
      int low = 0;
      int high = at.cells().size() - 1;
      while (low <= high) {
        int middle = (low + high) >>> 1;
        RawCell cell = at.cells().get(middle);
        if (cell.column() == column) {
          return cell;
        }
        if (cell.column() < column) {
          low = middle + 1;
        } else {
          high = middle - 1;
        }
      }
    }
    return new RawCell(row, column, CellKind.BLANK, "", null, 0);
  }

  /** The cell that is seen at a place: of merged cells, the first. */
  public RawCell seenAt(int row, int column) {
    CellRange merged = mergedAt.get(key(row, column));
    return merged == null ? at(row, column) : at(merged.firstRow(), merged.firstColumn());
  }

  /** Whether a place is covered by merged cells that begin at another one. */
  public boolean isCovered(int row, int column) {
    CellRange merged = mergedAt.get(key(row, column));
    return merged != null && (merged.firstRow() != row || merged.firstColumn() != column);
  }

  /** The text shown at a place, trimmed. */
  public String text(int row, int column) {
    return texts.shown(at(row, column)).strip();
  }

  private static long key(int row, int column) {
    return ((long) row << 20) | column;
  }
}
