package org.wetmil.workbook.read;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.estimate.InputColumn;

public record TableLayout(
    int headingRow,
    int firstRow,
    int lastRow,
    Map<InputColumn, Integer> columns,
    int firstColumn,
    int lastColumn,
    List<Integer> lineRows,
    int firstFreeColumn,
    Optional<String> excelTable) {}
