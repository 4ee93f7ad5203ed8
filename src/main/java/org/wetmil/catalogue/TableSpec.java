package org.wetmil.catalogue;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A table's name and declared columns; the first column names the row. */
public final class TableSpec {
  private final String name;
  private final List<Field> fields;
  private final Map<String, Integer> positions = new HashMap<>();
  private final boolean byRow;

  TableSpec(String name, List<Field> fields) {
    this.name = name;
    this.fields = List.copyOf(fields);
    for (int i = 0; i < fields.size(); i++) {
      positions.put(fields.get(i).heading(), i);
    }
    this.byRow = fields.stream().anyMatch(field -> field.quantity() == null);
  }

  public String name() {
    return name;
  }

  public List<Field> fields() {
    return fields;
  }

  /** Position of a declared heading. */
  public int index(String heading) {
    Integer position = positions.get(heading);
    if (position == null) {
      throw new IllegalArgumentException("table " + name + " has no column " + heading);
    }
    return position;
  }

  public boolean has(String heading) {
    return positions.containsKey(heading);
  }

  /** Whether rows carry one value with a quantity of its own, as settings and rates do. */
  public boolean isByRow() {
    return byRow;
  }
}
