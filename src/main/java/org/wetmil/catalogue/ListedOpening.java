package org.wetmil.catalogue;

import org.wetmil.measure.Opening;

/**
 * One row of the Openings sheet; sizes not stated are NaN.
 *
 * @param count how many, 1 where not stated
 * @param revealIn depth painted with this face, 0 where not stated
 */
public record ListedOpening(
    Row row,
    String room,
    String surface,
    String kind,
    double widthFt,
    double heightFt,
    double count,
    double revealIn,
    String id,
    Opening.OtherFace otherFace) {

  static ListedOpening of(Row row) {
    return new ListedOpening(
        row,
        row.text("Room"),
        row.text("Surface"),
        row.text("Kind"),
        row.number("Width"),
        row.number("Height"),
        or(row.number("Count"), 1),
        or(row.number("Reveal"), 0),
        row.text("Id"),
        Opening.OtherFace.of(row.text("Other face")));
  }

  private static double or(double value, double otherwise) {
    return Double.isNaN(value) ? otherwise : value;
  }
}
