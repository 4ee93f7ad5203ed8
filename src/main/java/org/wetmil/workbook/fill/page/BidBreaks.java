package org.wetmil.workbook.fill.page;

import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.wetmil.workbook.look.Canvas;

/**
 * Where the customer's page goes on over to the next on paper: between rooms, and so that price,
 * what is not included, notes and signature stay on one page, with the last room above them.
 */
final class BidBreaks {
  /** Rows on letter paper with the columns fitted to its width, in points; rather too few. */
  private static final double PAGE_PT = 700;

  /** What is so little longer than a page is printed smaller, as one. */
  private static final double SHRUNK_PT = PAGE_PT * 1.15;

  private final Canvas page;
  private final int heading;

  /**
   * @param heading the row of the headings, repeated on each page
   */
  BidBreaks(Canvas page, int heading) {
    this.page = page;
    this.heading = heading;
  }

  /**
   * @param rooms first row of each room
   * @param closing first row of what follows the rooms
   * @param end the row after the last
   */
  void set(List<Integer> rooms, int closing, int end) {
    if (page.heightOf(0, end) <= SHRUNK_PT) {
      page.sheet().getPrintSetup().setFitHeight((short) 1);
      return;
    }
    List<Integer> parts = new ArrayList<>(rooms);
    int last = rooms.isEmpty() ? heading : rooms.get(rooms.size() - 1);
    if (page.heightOf(heading, heading + 1) + page.heightOf(last, end) > PAGE_PT) {
      parts.add(closing);
    }
    double used = page.heightOf(0, heading + 1);
    for (int i = 0; i < parts.size(); i++) {
      int start = parts.get(i);
      double high = page.heightOf(start, i + 1 < parts.size() ? parts.get(i + 1) : end);
      if (start > heading + 1 && used + high > PAGE_PT) {
        page.sheet().setRowBreak(start - 1);
        used = page.heightOf(heading, heading + 1);
      }
      used += high;
    }
    page.sheet().setRepeatingRows(new CellRangeAddress(heading, heading, -1, -1));
  }
}
