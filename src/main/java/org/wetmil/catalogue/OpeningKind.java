package org.wetmil.catalogue;

import java.util.Locale;
import org.wetmil.measure.Opening;

/** A kind of opening with its usual size; a size that is not usual is NaN. */
public record OpeningKind(
    Row row, String name, Opening.Role role, double widthFt, double heightFt, boolean sill) {

  static OpeningKind of(Row row) {
    return new OpeningKind(
        row,
        row.name(),
        Opening.Role.valueOf(row.text("Role").toUpperCase(Locale.ROOT)),
        row.number("Width"),
        row.number("Height"),
        row.isYes("Sill"));
  }
}
