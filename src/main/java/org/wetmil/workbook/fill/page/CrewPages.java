package org.wetmil.workbook.fill.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.wetmil.catalogue.Names;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;

/** Parts the lines of a bid into pages: each room has its own, a long one several. */
final class CrewPages {
  private CrewPages() {}

  /** The lines of one page, and which of the room's pages it is. */
  record Page(List<FilledLine> lines, int number, int of) {
    double height(ToDoubleFunction<FilledLine> lineHeight) {
      return lines.stream().mapToDouble(lineHeight).sum();
    }
  }

  /**
   * @param lineHeight the least height of a line, in points
   * @param most what the lines of a page share, in points
   */
  static List<Page> of(FilledBid filled, ToDoubleFunction<FilledLine> lineHeight, double most) {
    return rooms(filled).stream()
        .flatMap(lines -> pages(lines, lineHeight, most).stream())
        .toList();
  }

  private static List<List<FilledLine>> rooms(FilledBid filled) {
    Map<String, List<FilledLine>> rooms = new LinkedHashMap<>();
    filled
        .lines()
        .filter(line -> line.work().isIncluded())
        .forEach(
            line ->
                rooms
                    .computeIfAbsent(
                        line.line().text(InputColumn.FLOOR)
                            + "\n"
                            + Names.key(line.line().text(InputColumn.ROOM)),
                        room -> new ArrayList<>())
                    .add(line));
    return List.copyOf(rooms.values());
  }

  /** A room on one page where its lines fit, else on as few as take them, evenly. */
  private static List<Page> pages(
      List<FilledLine> lines, ToDoubleFunction<FilledLine> lineHeight, double most) {
    for (int number = 1; ; number++) {
      List<Page> pages = new ArrayList<>();
      for (int i = 0; i < number; i++) {
        int from = i * lines.size() / number;
        int to = (i + 1) * lines.size() / number;
        pages.add(new Page(lines.subList(from, to), i + 1, number));
      }
      boolean fit = pages.stream().allMatch(page -> page.height(lineHeight) <= most);
      if (fit || number >= lines.size()) {
        return pages;
      }
    }
  }
}
