package org.wetmil.workbook.read.heading;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.wetmil.estimate.InputColumn;

/**
 * The headings of one table, which may be stacked. Rows and columns count from 0.
 *
 * @param firstRow topmost row of headings
 * @param headingRow lowest row that names columns
 * @param lastRow lowest row, a row of units included
 * @param headings from left to right
 */
public record HeadingBlock(int firstRow, int headingRow, int lastRow, List<Heading> headings) {
  private static final Set<InputColumn> MEASURABLE =
      EnumSet.of(
          InputColumn.LENGTH,
          InputColumn.WIDTH,
          InputColumn.HEIGHT,
          InputColumn.AREA,
          InputColumn.COUNT);

  private static final int FILLED_TOGETHER = 4;

  public HeadingBlock {
    headings = List.copyOf(headings);
  }

  public int firstColumn() {
    return headings.get(0).column();
  }

  public int lastColumn() {
    return headings.get(headings.size() - 1).column();
  }

  /**
   * The same without the headings of columns that a fill wrote, told by several of them together:
   * so they stay when a sheet was copied to another workbook and lost its marks.
   *
   * @param filled whether a heading is named as such a column is
   */
  HeadingBlock withoutFilled(Predicate<Heading> filled) {
    List<Heading> own = headings.stream().filter(filled.negate()).toList();
    boolean several = headings.size() - own.size() >= FILLED_TOGETHER;
    return several && !own.isEmpty() ? new HeadingBlock(firstRow, headingRow, lastRow, own) : this;
  }

  /** How many headings are known. */
  public long known() {
    return headings.stream().filter(Heading::isKnown).count();
  }

  /** Whether two tables have columns in common. */
  public boolean isAboveOrBelow(HeadingBlock other) {
    return firstColumn() <= other.lastColumn() && other.firstColumn() <= lastColumn();
  }

  /** Whether it names the same columns at the same places. */
  public boolean repeats(HeadingBlock other) {
    return names().equals(other.names());
  }

  private List<List<Object>> names() {
    return headings.stream()
        .filter(Heading::isKnown)
        .map(each -> List.<Object>of(each.column(), each.candidates()))
        .toList();
  }

  /** Whether it may be the heading of a bid, once unknown headings are settled. */
  boolean mayBeBid() {
    Set<InputColumn> may = EnumSet.noneOf(InputColumn.class);
    headings.forEach(each -> may.addAll(each.candidates()));
    return known() >= 2
        && headings.size() >= 3
        && may.stream().anyMatch(MEASURABLE::contains)
        && (may.contains(InputColumn.ROOM)
            || may.contains(InputColumn.SURFACE)
            || may.contains(InputColumn.COATING));
  }

  /** Whether columns make a bid: where, how much, and what of or with what. */
  public static boolean isBid(Set<InputColumn> columns) {
    boolean where = columns.contains(InputColumn.ROOM) || columns.contains(InputColumn.SURFACE);
    boolean what = columns.contains(InputColumn.COATING) || columns.contains(InputColumn.SURFACE);
    return columns.size() >= 3 && where && what && columns.stream().anyMatch(MEASURABLE::contains);
  }
}
