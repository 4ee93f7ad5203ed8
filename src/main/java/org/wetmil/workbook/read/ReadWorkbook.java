package org.wetmil.workbook.read;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.Bid;
import org.wetmil.workbook.read.earlier.EarlierFill;
import org.wetmil.workbook.read.earlier.MarkedColumn;
import org.wetmil.workbook.read.table.RowKind;
import org.wetmil.workbook.stream.CellRange;

/**
 * A workbook as read.
 *
 * @param layouts where the tables of each bid sheet stand, in the order of the bid's sheets
 * @param filledBefore whether it carries the mark of an earlier fill
 * @param filledColumns where an earlier fill's columns stand now
 * @param ourSheets sheets that an earlier fill added
 * @param ourCells the cells that an earlier fill wrote, by sheet
 * @param fills earlier ones, oldest first
 * @param rows how many rows of each kind the tables have
 * @param carried the tables that it carries: as an earlier fill had them, else those of the bid
 */
public record ReadWorkbook(
    Bid bid,
    List<SheetLayout> layouts,
    boolean filledBefore,
    List<MarkedColumn> filledColumns,
    List<String> ourSheets,
    Map<String, List<CellRange>> ourCells,
    Map<RowKind, Integer> rows,
    List<EarlierFill> fills,
    Catalogue carried) {
  public ReadWorkbook {
    layouts = List.copyOf(layouts);
    filledColumns = List.copyOf(filledColumns);
    ourSheets = List.copyOf(ourSheets);
    fills = List.copyOf(fills);
    ourCells = Map.copyOf(ourCells);
    rows = Collections.unmodifiableMap(new EnumMap<>(rows));
  }
}
