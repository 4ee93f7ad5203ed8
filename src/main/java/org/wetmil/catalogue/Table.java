package org.wetmil.catalogue;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Rows by name, in the order they were stated; names match whole, in any case and number. */
public final class Table {
  private final TableSpec spec;
  private final Map<String, Row> rows;

  Table(TableSpec spec, Collection<Row> rows) {
    this.spec = spec;
    Map<String, Row> byName = new LinkedHashMap<>();
    rows.forEach(row -> byName.put(Names.key(row.name()), row));
    this.rows = Collections.unmodifiableMap(byName);
  }

  public TableSpec spec() {
    return spec;
  }

  public List<Row> rows() {
    return List.copyOf(rows.values());
  }

  public Optional<Row> find(String name) {
    return Optional.ofNullable(rows.get(Names.key(name)));
  }

  /** A row that is known to be there. */
  public Row get(String name) {
    return find(name)
        .orElseThrow(() -> new IllegalArgumentException(spec.name() + " has no row " + name));
  }

  /** A copy in which some rows are replaced or added. */
  Table with(Collection<Row> changed) {
    Map<String, Row> merged = new LinkedHashMap<>(rows);
    changed.forEach(row -> merged.put(Names.key(row.name()), row));
    return new Table(spec, merged.values());
  }
}
