package org.wetmil.catalogue;

/**
 * Painted area against flat area.
 *
 * @param factor painted area of one face, or of all faces, against the flat area of one
 * @param allOver whether all faces are in the factor
 */
public record Shape(Row row, String name, double factor, boolean allOver) {

  static Shape of(Row row) {
    return new Shape(row, row.name(), row.number("Factor"), row.text("Counts").equals("all over"));
  }
}
