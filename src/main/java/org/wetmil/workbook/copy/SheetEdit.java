package org.wetmil.workbook.copy;

import java.util.List;
import java.util.Objects;

/**
 * What changes among the cells of one original sheet.
 *
 * @param sheet its name
 * @param additions the cells to add
 * @param dropped the cells to leave out, which an earlier fill added
 */
public record SheetEdit(String sheet, RowAdditions additions, CellTest dropped) {
  public SheetEdit {
    Objects.requireNonNull(sheet);
    Objects.requireNonNull(additions);
    Objects.requireNonNull(dropped);
  }

  /** Says yes or no to a cell, row and column counted from 0. */
  @FunctionalInterface
  public interface CellTest {
    boolean test(int row, int column);
  }

  /** Drops cells and adds none. */
  public static SheetEdit dropping(String sheet, CellTest dropped) {
    return new SheetEdit(sheet, row -> List.of(), dropped);
  }
}
