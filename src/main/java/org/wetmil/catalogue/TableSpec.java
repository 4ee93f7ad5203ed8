package org.wetmil.catalogue;

import java.util.List;

/** A table's name and declared columns; the first column names the row. */
public record TableSpec(String name, List<Field> fields) {
  public TableSpec {
    fields = List.copyOf(fields);
  }

  /** Position of a declared heading. */
  public int index(String heading) {
    for (int i = 0; i < fields.size(); i++) {
      if (fields.get(i).heading().equals(heading)) {
        return i;
      }
    }
    throw new IllegalArgumentException("table " + name + " has no column " + heading);
  }

  /** Whether rows carry one value with a quantity of its own, as settings and rates do. */
  public boolean isByRow() {
    return fields.stream().anyMatch(field -> field.quantity() == null);
  }
}
