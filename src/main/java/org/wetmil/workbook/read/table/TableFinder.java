package org.wetmil.workbook.read.table;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.Remark;
import org.wetmil.workbook.read.grid.Grid;
import org.wetmil.workbook.read.heading.ChosenColumns;
import org.wetmil.workbook.read.heading.ColumnChooser;
import org.wetmil.workbook.read.heading.Heading;
import org.wetmil.workbook.read.heading.HeadingBlock;
import org.wetmil.workbook.read.heading.HeadingFinder;
import org.wetmil.workbook.read.heading.HeadingWords;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.TableRef;

/** Finds the tables of a sheet that hold bid lines. */
public final class TableFinder {
  /** A further table has about as many of the bid's columns as the first, or is a summary. */
  private static final double LIKE_THE_FIRST = 0.6;

  private final Grid grid;
  private final List<TableRef> excelTables;
  private final Catalogue catalogue;
  private final List<Remark> remarks;

  public TableFinder(
      Grid grid, List<TableRef> excelTables, Catalogue catalogue, List<Remark> remarks) {
    this.grid = grid;
    this.excelTables = excelTables;
    this.catalogue = catalogue;
    this.remarks = remarks;
  }

  /** The tables, from top to bottom and left to right; those that are no bid included. */
  public List<BidTable> find(HeadingWords words) {
    List<HeadingBlock> blocks = new HeadingFinder(grid, words).find();
    List<BidTable> tables = new ArrayList<>();
    BitSet done = new BitSet();
    for (int at = 0; at < blocks.size(); at++) {
      if (!done.get(at)) {
        BitSet again = repetitions(at, blocks);
        done.or(again);
        tables.add(table(at, again, blocks));
      }
    }
    return tables;
  }

  /** The bids among them. What is not read though it has a bid's headings is said. */
  public List<BidTable> bids(List<BidTable> tables) {
    List<BidTable> bids = tables.stream().filter(BidTable::isBid).toList();
    int most = bids.stream().mapToInt(each -> each.columns().size()).max().orElse(0);
    List<BidTable> kept = new ArrayList<>();
    for (BidTable bid : bids) {
      if (bid.columns().size() < LIKE_THE_FIRST * most) {
        leaveOut(
            bid,
            "This small table is taken for a summary and is not read. If it holds bid lines, give"
                + " it the headings of the large one.");
      } else {
        kept.add(bid);
        remarks.addAll(bid.chosen().remarks());
      }
    }
    return kept;
  }

  private void leaveOut(BidTable table, String message) {
    remarks.add(
        new Remark(
            "table-left-out",
            grid.sheet(),
            new CellAddress(table.block().headingRow(), table.firstColumn()).toString(),
            table.block().headings().get(0).text(),
            message));
  }

  /** Later headings that name the same columns, with no other headings between. */
  private static BitSet repetitions(int at, List<HeadingBlock> blocks) {
    HeadingBlock block = blocks.get(at);
    BitSet again = new BitSet();
    for (int i = at + 1; i < blocks.size(); i++) {
      HeadingBlock later = blocks.get(i);
      if (later.firstRow() > block.lastRow() && later.isAboveOrBelow(block)) {
        if (!later.repeats(block)) {
          break;
        }
        again.set(i);
      }
    }
    return again;
  }

  /** Last row above the next headings; of stacked ones, a later one may begin higher up. */
  private int lastRow(int at, BitSet again, List<HeadingBlock> blocks) {
    HeadingBlock block = blocks.get(at);
    int last = grid.lastRow();
    for (int i = at + 1; i < blocks.size(); i++) {
      HeadingBlock other = blocks.get(i);
      if (other.headingRow() - HeadingFinder.GREATEST_DEPTH >= last) {
        break;
      }
      if (!again.get(i) && other.firstRow() > block.lastRow() && other.isAboveOrBelow(block)) {
        last = Math.min(last, other.firstRow() - 1);
      }
    }
    return last;
  }

  private BidTable table(int at, BitSet again, List<HeadingBlock> blocks) {
    HeadingBlock block = blocks.get(at);
    Optional<TableRef> excel =
        excelTables.stream()
            .filter(each -> each.headerRows() > 0 && each.range().firstRow() == block.headingRow())
            .filter(each -> each.range().firstColumn() <= block.lastColumn())
            .filter(each -> each.range().lastColumn() >= block.firstColumn())
            .findFirst();
    int lastRow = lastRow(at, again, blocks);
    HeadingBlock headings = excel.map(each -> within(block, each)).orElse(block);
    int lastColumn = excel.map(each -> each.range().lastColumn()).orElse(headings.lastColumn());
    int last = excel.map(each -> each.range().lastRow() - each.totalsRows()).orElse(lastRow);
    ChosenColumns chosen = new ColumnChooser(grid, headings, last, catalogue).choose();
    return new BidTable(
        headings,
        again.stream().mapToObj(blocks::get).toList(),
        last,
        lastRow,
        lastColumn,
        chosen,
        excel.map(TableRef::displayName));
  }

  /** The headings that stand within an Excel table; others beside it are none of its. */
  private static HeadingBlock within(HeadingBlock block, TableRef table) {
    List<Heading> inside =
        block.headings().stream()
            .filter(each -> each.column() >= table.range().firstColumn())
            .filter(each -> each.column() <= table.range().lastColumn())
            .toList();
    return inside.isEmpty()
        ? block
        : new HeadingBlock(block.firstRow(), block.headingRow(), block.lastRow(), inside);
  }
}
