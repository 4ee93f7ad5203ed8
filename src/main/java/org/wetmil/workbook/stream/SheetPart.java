package org.wetmil.workbook.stream;

/**
 * A worksheet of a workbook.
 *
 * @param name as the user reads it on the tab
 * @param part name of the part within the package
 * @param visibility whether the user can see the tab
 */
public record SheetPart(String name, String part, Visibility visibility) {
  /** Whether a sheet's tab is shown. */
  public enum Visibility {
    VISIBLE,
    HIDDEN,
    /** Only a macro or a developer can bring it back. */
    VERY_HIDDEN
  }
}
