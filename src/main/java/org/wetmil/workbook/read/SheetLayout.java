package org.wetmil.workbook.read;

import java.util.List;
import java.util.Set;
import org.wetmil.quantity.UnitSystem;

public record SheetLayout(
    String sheet, UnitSystem system, List<TableLayout> tables, Set<Integer> ourColumns) {}
