package org.wetmil.workbook.copy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Cells of a new sheet, held until the file is written. */
final class HeldCells implements Cells, NewRows {
  private static final class Line {
    private final List<AddedCell> cells = new ArrayList<>();
    private float points;
  }

  private final List<Line> lines = new ArrayList<>();
  private int columns;

  @Override
  public void put(int row, AddedCell cell) {
    List<AddedCell> cells = line(row).cells;
    columns = Math.max(columns, cell.column() + 1);
    if (cells.isEmpty() || cells.get(cells.size() - 1).column() < cell.column()) {
      cells.add(cell);
      return;
    }
    cells.removeIf(old -> old.column() == cell.column());
    cells.add(cell);
    cells.sort(Comparator.comparingInt(AddedCell::column));
  }

  @Override
  public void height(int row, float points) {
    line(row).points = points;
  }

  @Override
  public void row(int row) {
    line(row);
  }

  @Override
  public void style(int row, int column, int style) {
    CellContent content = get(row, column);
    put(row, new AddedCell(column, style, content == null ? new CellContent.Blank() : content));
  }

  @Override
  public CellContent get(int row, int column) {
    if (row >= lines.size() || lines.get(row) == null) {
      return null;
    }
    return lines.get(row).cells.stream()
        .filter(cell -> cell.column() == column)
        .map(AddedCell::content)
        .findFirst()
        .orElse(null);
  }

  private Line line(int row) {
    while (lines.size() <= row) {
      lines.add(null);
    }
    Line line = lines.get(row);
    if (line == null) {
      line = new Line();
      lines.set(row, line);
    }
    return line;
  }

  @Override
  public int rows() {
    return lines.size();
  }

  @Override
  public int columns() {
    return columns;
  }

  @Override
  public void give(RowTaker to) {
    for (int row = 0; row < lines.size(); row++) {
      Line line = lines.get(row);
      if (line != null) {
        to.row(row, line.points, line.cells);
      }
    }
  }
}
