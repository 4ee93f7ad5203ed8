package org.wetmil.estimate;

import org.wetmil.catalogue.Row;
import org.wetmil.formula.Place;

/** A figure of the tables, which Basis shows: a row and one of its headings. */
public record EntryPlace(String table, String row, String heading) implements Place {
  public static EntryPlace of(Row row, String heading) {
    return new EntryPlace(row.spec().name(), row.name(), heading);
  }
}
