package org.wetmil.workbook.read;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.wetmil.quantity.UnitSystem;

/**
 * Where the tables of a bid sheet stand.
 *
 * @param system units of the sheet
 * @param tables from top to bottom and left to right
 * @param ourColumns columns, from 0, that an earlier fill wrote
 */
public record SheetLayout(
    String sheet, UnitSystem system, List<TableLayout> tables, Set<Integer> ourColumns) {
  public SheetLayout {
    tables = List.copyOf(tables);
    ourColumns = Collections.unmodifiableSet(new TreeSet<>(ourColumns));
  }
}
