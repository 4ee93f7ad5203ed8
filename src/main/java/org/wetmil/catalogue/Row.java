package org.wetmil.catalogue;

import java.util.List;

/** One row of a table: its name and an entry under every declared heading. */
public record Row(TableSpec spec, String name, List<Entry> entries) {
  public Row {
    entries = List.copyOf(entries);
  }

  /** Rows are looked up once for each line; their names tell them apart well enough. */
  @Override
  public int hashCode() {
    return name.hashCode();
  }

  /** The entry under a heading; the heading must be declared. */
  public Entry get(String heading) {
    return entries.get(spec.index(heading));
  }

  public double number(String heading) {
    return get(heading).number();
  }

  public String text(String heading) {
    return get(heading).text();
  }

  public boolean isYes(String heading) {
    return get(heading).isYes();
  }
}
