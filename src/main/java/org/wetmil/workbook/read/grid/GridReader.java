package org.wetmil.workbook.read.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.CellRange;
import org.wetmil.workbook.stream.PackageReader;
import org.wetmil.workbook.stream.RawCell;
import org.wetmil.workbook.stream.RawRow;
import org.wetmil.workbook.stream.SheetPart;

/** Takes sheets into memory, without what an earlier fill wrote. */
public final class GridReader {
  private final PackageReader workbook;
  private final OwnMarks marks;
  private final MissingResults missing;
  private final CellText texts;

  public GridReader(PackageReader workbook, OwnMarks marks, MissingResults missing) {
    this.workbook = workbook;
    this.marks = marks;
    this.missing = missing;
    this.texts = new CellText(workbook.formats(), workbook.date1904());
  }

  /** A whole sheet, with formulas computed that have no stored result. */
  public Grid whole(SheetPart sheet) {
    List<GridRow> rows = rows(sheet, Integer.MAX_VALUE);
    List<CellRange> merged = workbook.ranges(sheet).merged();
    return new Grid(sheet.name(), missing.computed(sheet.name(), rows), merged, texts);
  }

  /** The first rows of a sheet, to see what it may be. */
  public Grid top(SheetPart sheet, int count) {
    return new Grid(sheet.name(), rows(sheet, count), List.of(), texts);
  }

  private List<GridRow> rows(SheetPart sheet, int end) {
    List<GridRow> rows = new ArrayList<>();
    OurCells ours = new OurCells(sheet.name());
    workbook.rows(
        sheet,
        row -> {
          if (row.row() < end) {
            GridRow kept = kept(row, ours);
            if (!kept.cells().isEmpty()) {
              rows.add(kept);
            }
          }
          return row.row() < end;
        });
    return rows;
  }

  private static GridRow kept(RawRow row, OurCells ours) {
    List<RawCell> cells =
        row.cells().stream()
            .filter(cell -> !ours.holds(cell) && !isEmpty(cell))
            .sorted(Comparator.comparingInt(RawCell::column))
            .toList();
    return new GridRow(row.row(), row.hidden(), cells);
  }

  private static boolean isEmpty(RawCell cell) {
    boolean blank =
        cell.kind() == CellKind.BLANK
            || (cell.kind() == CellKind.TEXT && cell.text().replace('\u00a0', ' ').isBlank());
    return blank && cell.formula() == null;
  }

  /** The cells of an earlier fill; rows added since under its columns belong to them. */
  private final class OurCells {
    private final String sheet;
    private final boolean any;
    private final Set<Long> last = new HashSet<>();

    OurCells(String sheet) {
      this.sheet = sheet;
      this.any = marks.columns().containsKey(sheet);
    }

    boolean holds(RawCell cell) {
      if (!any) {
        return false;
      }
      boolean grown =
          cell.kind() != CellKind.BLANK && last.contains(key(cell.row() - 1, cell.column()));
      if (grown || marks.isOurs(sheet, cell.row(), cell.column())) {
        last.add(key(cell.row(), cell.column()));
        return true;
      }
      return false;
    }

    private long key(int row, int column) {
      return ((long) row << 20) | column;
    }
  }
}
