package org.wetmil.workbook.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.BidSheet;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Remark;
import org.wetmil.quantity.Count;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.table.BidTable;
import org.wetmil.workbook.read.table.FreeColumns;
import org.wetmil.workbook.read.table.LineReader;
import org.wetmil.workbook.read.table.RowKind;
import org.wetmil.workbook.read.table.SectionTitles;
import org.wetmil.workbook.read.table.SheetUnits;
import org.wetmil.workbook.read.table.TableRows;
import org.wetmil.workbook.stream.CellAddress;

/** Reads the bid lines of one sheet. */
final class BidSheetReader {
  private final Grid grid;
  private final Catalogue catalogue;
  private final List<Remark> remarks;
  private final List<TableLayout> layouts = new ArrayList<>();
  private final List<BidLine> lines = new ArrayList<>();
  private final Map<InputColumn, Unit> columnUnits = new EnumMap<>(InputColumn.class);
  private final Map<RowKind, Integer> rows = new EnumMap<>(RowKind.class);

  /** What a sheet gives. */
  record Result(BidSheet sheet, SheetLayout layout, Map<RowKind, Integer> rows) {}

  BidSheetReader(Grid grid, Catalogue catalogue, List<Remark> remarks) {
    this.grid = grid;
    this.catalogue = catalogue;
    this.remarks = remarks;
  }

  Result read(List<BidTable> tables, Optional<UnitSystem> settings, Set<Integer> ourColumns) {
    SheetUnits units = SheetUnits.of(grid, tables, settings, remarks);
    int shown = FilledColumn.shown(catalogue).size();
    FreeColumns columns = new FreeColumns(grid, tables, shown, ourColumns, remarks);
    for (BidTable table : tables) {
      Map<Integer, RowKind> kinds = new TableRows(grid, table, catalogue).sorted();
      LineReader read = readTable(table, kinds, units, ourColumns);
      int last = lastRow(table, read.rows());
      int free = columns.first(table, last);
      layouts.add(layout(table, last, read, kinds, free));
    }
    remarkHidden();
    BidSheet sheet = new BidSheet(grid.sheet(), units.system(), units.stated(), columnUnits, lines);
    return new Result(
        sheet, new SheetLayout(grid.sheet(), units.system(), layouts, ourColumns), rows);
  }

  /** An Excel table goes on to its end; any other ends with its last line. */
  private static int lastRow(BidTable table, List<Integer> lineRows) {
    if (table.excelTable().isPresent()) {
      return table.lastRow();
    }
    return lineRows.isEmpty() ? table.firstRow() : lineRows.get(lineRows.size() - 1);
  }

  private LineReader readTable(
      BidTable table, Map<Integer, RowKind> kinds, SheetUnits units, Set<Integer> ourColumns) {
    TableRows.count(kinds).forEach((kind, count) -> rows.merge(kind, count, Integer::sum));
    List<Integer> lineRows = rowsOf(kinds, RowKind.LINE);
    remarkBelow(rowsOf(kinds, RowKind.BELOW), table);
    new UnreadColumns(grid, table, lineRows, ourColumns).remark().ifPresent(remarks::add);
    SectionTitles titles = new SectionTitles(grid, table, catalogue, kinds);
    remarks.addAll(titles.remarks());
    LineReader reader = new LineReader(grid, table, units, catalogue, lineRows, titles.byLine());
    lineRows.forEach(row -> lines.add(reader.read(row)));
    reader.columnUnits().forEach(columnUnits::putIfAbsent);
    return reader;
  }

  private static List<Integer> rowsOf(Map<Integer, RowKind> kinds, RowKind kind) {
    return kinds.entrySet().stream()
        .filter(each -> each.getValue() == kind)
        .map(Map.Entry::getKey)
        .toList();
  }

  private static TableLayout layout(
      BidTable table, int lastRow, LineReader read, Map<Integer, RowKind> kinds, int free) {
    Map<Integer, RowKind> others = new HashMap<>(kinds);
    others.values().removeIf(kind -> kind == RowKind.LINE);
    Map<InputColumn, Integer> columns = new EnumMap<>(InputColumn.class);
    table.columns().forEach((column, heading) -> columns.put(column, heading.column()));
    return new TableLayout(
        table.block().headingRow(),
        table.firstRow(),
        lastRow,
        columns,
        table.firstColumn(),
        table.lastColumn(),
        read.rows(),
        others,
        free,
        table.excelTable(),
        read.elsewhere());
  }

  private void remarkBelow(List<Integer> below, BidTable table) {
    if (!below.isEmpty()) {
      int row = below.get(0);
      remarks.add(
          new Remark(
              "row-left-out",
              grid.sheet(),
              new CellAddress(row, table.firstColumn()).toString(),
              grid.text(row, table.firstColumn()),
              ("%s not read: below the table, from row %s on. What is part of the bid, move up to"
                      + " its lines.")
                  .formatted(Count.of(below.size(), "row is", "rows are"), row + 1)));
    }
  }

  private void remarkHidden() {
    List<Integer> hidden =
        lines.stream().map(line -> line.row() - 1).filter(grid::isHidden).toList();
    if (!hidden.isEmpty()) {
      remarks.add(
          new Remark(
              "rows-hidden",
              grid.sheet(),
              new CellAddress(hidden.get(0), 0).toString(),
              "",
              "%s read and counted like the others."
                  .formatted(
                      Count.of(
                          hidden.size(),
                          "hidden or filtered row is",
                          "hidden or filtered rows are"))));
    }
  }
}
