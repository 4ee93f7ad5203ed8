package org.wetmil.workbook.copy;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Rows that are made while the file is written, so that none is held: for lists as long as the bid.
 *
 * @param rows how many there will be
 * @param columns how many they take
 * @param body makes the cells, row by row and from left to right
 */
public record RowsLater(int rows, int columns, Consumer<Cells> body) implements NewRows {

  @Override
  public void give(RowTaker to) {
    Passing passing = new Passing(to);
    body.accept(passing);
    passing.pass();
    if (passing.row != rows - 1) {
      throw new IllegalStateException("row " + passing.row + " is the last of " + rows);
    }
  }

  /** Holds one row, which goes on when the next begins. */
  private static final class Passing implements Cells {
    private final RowTaker to;
    private final List<AddedCell> cells = new ArrayList<>();
    private int row = -1;
    private float points;

    private Passing(RowTaker to) {
      this.to = to;
    }

    @Override
    public void put(int at, AddedCell cell) {
      row(at);
      cells.add(cell);
    }

    @Override
    public void height(int at, float height) {
      row(at);
      points = height;
    }

    @Override
    public void row(int at) {
      if (at < row) {
        throw new IllegalStateException("row " + at + " was passed on already");
      }
      if (at > row) {
        pass();
        row = at;
      }
    }

    @Override
    public void style(int at, int column, int style) {
      throw new UnsupportedOperationException("cells are passed on, not kept");
    }

    @Override
    public CellContent get(int at, int column) {
      throw new UnsupportedOperationException("cells are passed on, not kept");
    }

    private void pass() {
      if (row >= 0) {
        to.row(row, points, cells);
      }
      cells.clear();
      points = 0;
    }
  }
}
