package org.wetmil.jobs;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.wetmil.quantity.Count;
import org.wetmil.workbook.read.SheetLayout;
import org.wetmil.workbook.read.TableLayout;
import org.wetmil.workbook.stream.CellAddress;

/** Says where the tables of a bid were found and what was taken from which column. */
final class HowRead {
  private HowRead() {}

  static List<String> sentences(List<SheetLayout> layouts) {
    List<String> sentences = new ArrayList<>();
    for (SheetLayout layout : layouts) {
      for (TableLayout table : layout.tables()) {
        sentences.add(
            "%s: headings in row %d, %s in rows %d to %d, %s units; %s"
                .formatted(
                    layout.sheet(),
                    table.headingRow() + 1,
                    Count.of(table.lineRows().size(), "line"),
                    table.firstRow() + 1,
                    table.lastRow() + 1,
                    layout.system().word(),
                    columns(table)));
      }
    }
    return sentences;
  }

  private static String columns(TableLayout table) {
    return table.columns().entrySet().stream()
        .map(each -> each.getKey().heading() + " from " + CellAddress.letters(each.getValue()))
        .collect(Collectors.joining(", "));
  }
}
