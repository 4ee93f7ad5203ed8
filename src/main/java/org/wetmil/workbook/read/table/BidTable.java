package org.wetmil.workbook.read.table;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.wetmil.estimate.InputColumn;
import org.wetmil.workbook.read.heading.ChosenColumns;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.read.heading.HeadingBlock;

/**
 * A table of a bid before its rows are read. Rows and columns count from 0.
 *
 * @param block its headings
 * @param again rows of headings that are repeated further down
 * @param lastRow last row that can belong to it
 * @param endRow last row before another table
 * @param lastColumn its rightmost column
 * @param chosen which column holds which input
 * @param excelTable name of the Excel table that it is
 */
public record BidTable(
    HeadingBlock block,
    List<HeadingBlock> again,
    int lastRow,
    int endRow,
    int lastColumn,
    ChosenColumns chosen,
    Optional<String> excelTable) {

  public int firstRow() {
    return block.lastRow() + 1;
  }

  public int firstColumn() {
    return block.firstColumn();
  }

  public Map<InputColumn, Heading> columns() {
    return chosen.columns();
  }

  /** Whether rows of both may lie at the same height without sharing a column. */
  public boolean isBeside(BidTable other) {
    return !block.isAboveOrBelow(other.block)
        && block.firstRow() <= other.lastRow
        && other.block.firstRow() <= lastRow;
  }

  public boolean isBid() {
    return HeadingBlock.isBid(columns().keySet());
  }
}
