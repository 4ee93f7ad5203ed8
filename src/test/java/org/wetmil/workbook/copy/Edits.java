package org.wetmil.workbook.copy;

/** Edits of sheets for tests. */
final class Edits {
  private Edits() {}

  /** Adds cells and drops none. */
  static SheetEdit adding(String sheet, RowAdditions additions) {
    return new SheetEdit(sheet, additions, (row, column) -> false);
  }
}
