package org.wetmil.workbook.fill.beside;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTable;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumn;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.CTTableColumns;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledColumn;

/** Lets an Excel table that holds a bid grow to take in the filled columns beside it. */
public final class BidTables {
  /** Comparing the formulas of all rows costs time; a longer table goes without. */
  private static final int MOST_COMPARED = 2_000;

  private BidTables() {}

  public static void grow(
      XSSFSheet sheet, SheetPlan plan, ColumnHeadings headings, BasisBook basis) {
    for (SheetPlan.Block block : plan.blocks()) {
      Optional<XSSFTable> table =
          block
              .table()
              .excelTable()
              .flatMap(
                  name ->
                      sheet.getTables().stream()
                          .filter(one -> name.equals(one.getCTTable().getDisplayName()))
                          .findFirst());
      table.ifPresent(one -> grow(one.getCTTable(), plan, block, headings, basis));
    }
  }

  private static void grow(
      CTTable table,
      SheetPlan plan,
      SheetPlan.Block block,
      ColumnHeadings headings,
      BasisBook basis) {
    CellRangeAddress range = CellRangeAddress.valueOf(table.getRef());
    CTTableColumns columns = table.getTableColumns();
    dropOurs(columns, range, plan.layout().ourColumns());
    if (block.firstColumn() != range.getLastColumn() + 1) {
      return; // somebody's cells stand between: the reader said that the columns moved
    }
    Set<String> taken = new LinkedHashSet<>();
    long id = 0;
    for (CTTableColumn column : columns.getTableColumnList()) {
      taken.add(column.getName());
      id = Math.max(id, column.getId());
    }
    headings.keepApart(block, taken);
    for (FilledColumn column : block.columns()) {
      CTTableColumn added = columns.addNewTableColumn();
      added.setId(++id);
      added.setName(headings.of(block, column));
      same(plan, block, column, basis)
          .ifPresent(formula -> added.addNewCalculatedColumnFormula().setStringValue(formula));
    }
    columns.setCount(columns.sizeOfTableColumnArray());
    range.setLastColumn(range.getLastColumn() + block.columns().size());
    table.setRef(range.formatAsString());
    if (table.isSetAutoFilter()) {
      CellRangeAddress filter = CellRangeAddress.valueOf(table.getAutoFilter().getRef());
      filter.setLastColumn(range.getLastColumn());
      table.getAutoFilter().setRef(filter.formatAsString());
    }
  }

  /** Takes away the columns of an earlier fill. */
  private static void dropOurs(CTTableColumns columns, CellRangeAddress range, Set<Integer> ours) {
    for (int i = columns.sizeOfTableColumnArray() - 1; i >= 0; i--) {
      if (ours.contains(range.getFirstColumn() + i)) {
        columns.removeTableColumn(i);
        range.setLastColumn(range.getLastColumn() - 1);
      }
    }
  }

  /** The formula that all rows of a column share, as the first row writes it. */
  private static Optional<String> same(
      SheetPlan plan, SheetPlan.Block block, FilledColumn column, BasisBook basis) {
    List<SheetPlan.Placed> placed = plan.placed();
    if (placed.size() > MOST_COMPARED) {
      return Optional.empty();
    }
    CellNames names = new CellNames(block, basis).at(block.table().firstRow() + 1);
    Set<String> formulas = new LinkedHashSet<>();
    List<Figure> figures = new ArrayList<>();
    for (SheetPlan.Placed one : placed) {
      if (one.block() == block && one.line().isFilled()) {
        figures.add(one.line().figures().get(column));
      }
    }
    for (Figure figure : figures) {
      if (figure instanceof Figure.Typed) {
        continue;
      }
      if (!(figure instanceof Figure.Live live)) {
        return Optional.empty();
      }
      formulas.add(live.formula().print(names));
    }
    return formulas.size() == 1 ? formulas.stream().findFirst() : Optional.empty();
  }
}
