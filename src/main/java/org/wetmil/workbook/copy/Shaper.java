package org.wetmil.workbook.copy;

import java.util.List;

/**
 * Changes whatever a workbook has besides the cells of its original sheets, and says which of those
 * cells change.
 */
@FunctionalInterface
public interface Shaper {
  /**
   * Shapes a workbook whose worksheets have no rows: styles, notes, conditional formats, widths,
   * names, properties, new sheets with their {@link Cells}, and charts. It may remove a sheet; it
   * must not rename one, and must not give rows to an original one: that is what the edits are for.
   *
   * @return at most one edit for each original sheet that is still there
   */
  List<SheetEdit> shape(LeanWorkbook workbook);

  /** Whether a name of the workbook is kept off the user's list of names. */
  default boolean hides(String name) {
    return false;
  }

  /** Called when the result is whole and not yet in place; what is thrown here keeps it away. */
  default void beforeItIsPublished() {}
}
