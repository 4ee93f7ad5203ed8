package org.wetmil.estimate;

import java.util.Optional;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Row;
import org.wetmil.catalogue.Tables;
import org.wetmil.formula.Place;

/** A figure of the tables, which Basis shows: a row and one of its headings. */
public record EntryPlace(String table, String row, String heading) implements Place {
  public static EntryPlace of(Row row, String heading) {
    return new EntryPlace(row.spec().name(), row.name(), heading);
  }

  /** Written out, since the one of a record is slow where code is compiled once, as in a fill. */
  @Override
  public boolean equals(Object other) {
    return other instanceof EntryPlace place
        && heading.equals(place.heading)
        && row.equals(place.row)
        && table.equals(place.table);
  }

  @Override
  public int hashCode() {
    return (31 * table.hashCode() + row.hashCode()) * 31 + heading.hashCode();
  }

  /** The row of the tables that it is a figure of; empty when they do not state it. */
  public Optional<Row> row(Catalogue catalogue) {
    return Tables.find(table)
        .flatMap(which -> catalogue.table(which).find(row))
        .filter(found -> found.spec().has(heading) && found.get(heading).isStated());
  }
}
