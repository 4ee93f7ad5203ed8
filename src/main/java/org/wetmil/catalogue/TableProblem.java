package org.wetmil.catalogue;

/**
 * A cell of the estimator's own tables that cannot be used; the built-in value stays.
 *
 * @param name the row that the cell is in, by its name; empty when it is about the name itself
 */
public record TableProblem(
    String table, String name, String sheet, String address, String raw, String expected) {

  /** About a cell whose row has no name. */
  public TableProblem(String table, String sheet, String address, String raw, String expected) {
    this(table, "", sheet, address, raw, expected);
  }
}
