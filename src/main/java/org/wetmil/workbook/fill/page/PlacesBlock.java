package org.wetmil.workbook.fill.page;

import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.wetmil.catalogue.Names;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;

/**
 * Area, paint and hours by floor and by room, those with the most hours first; what would not fit
 * on the page stands in one line, so that the table adds up to the job.
 */
final class PlacesBlock {
  private static final int MOST_FLOORS = 10;
  private static final int MOST_ROOMS = 30;

  /** Columns of the page: two for names, three for figures. */
  static final int FLOOR = 0;

  static final int ROOM = 1;
  private static final int FIRST_FIGURE = 2;
  static final int HOURS = 4;

  private static final List<HoursColumn> FIGURES =
      List.of(HoursColumn.AREA, HoursColumn.PAINT, HoursColumn.LABOUR);

  private final Canvas page;
  private final Look look;
  private final FilledBid filled;
  private final HoursSums sums;
  private final UnitSystem system;

  PlacesBlock(Canvas page, Look look, FilledBid filled, HoursSums sums) {
    this.page = page;
    this.look = look;
    this.filled = filled;
    this.sums = sums;
    this.system = filled.bid().system();
  }

  /** Rows of the page from 0: the first room, the last one, and the row after the block. */
  record Written(int firstRoom, int lastRoom, int next) {}

  /**
   * @param total the cell of the job's hours
   */
  Written write(int row, JobHours hours, String total) {
    int at = row;
    boolean floors = filled.lines().anyMatch(line -> !floor(line).isEmpty());
    if (floors) {
      heading(at++, "By floor", "");
      List<Group> groups =
          largestFirst(
              Group.of(
                  filled,
                  line -> Names.key(floor(line)),
                  line -> HoursKeys.firstPart(HoursKeys.room(line))));
      int first = at;
      for (Group group : groups.subList(0, Math.min(MOST_FLOORS, groups.size()))) {
        String floor = floor(group.first());
        page.text(at, FLOOR, floor.isEmpty() ? "no floor named" : floor, look.text(false));
        figures(at++, group, column -> sums.begunBy(column, HoursColumn.ROOM_KEY, group.keys()));
      }
      at = rest(at, first, groups.size() - MOST_FLOORS, "floors", groups, MOST_FLOORS);
      at++;
    }
    heading(at++, floors ? "By floor and room" : "By room", "");
    List<Group> rooms =
        largestFirst(
            Group.of(
                filled,
                line ->
                    List.of(Names.key(floor(line)), Names.key(line.line().text(InputColumn.ROOM))),
                HoursKeys::room));
    int first = at;
    for (Group group : rooms.subList(0, Math.min(MOST_ROOMS, rooms.size()))) {
      String room = group.first().line().text(InputColumn.ROOM);
      page.text(at, FLOOR, floor(group.first()), look.text(false));
      page.text(at, ROOM, room.isEmpty() ? "no room named" : room, look.text(false));
      figures(at++, group, column -> sums.ofKeys(column, HoursColumn.ROOM_KEY, group.keys()));
    }
    int last = at - 1;
    at = rest(at, first, rooms.size() - MOST_ROOMS, "rooms", rooms, MOST_ROOMS);
    return new Written(first, last, totals(at, hours, total));
  }

  private void heading(int row, String floor, String room) {
    page.text(row, FLOOR, floor, look.band(false)).text(row, ROOM, room, look.band(false));
    for (int i = 0; i < FIGURES.size(); i++) {
      page.text(row, FIRST_FIGURE + i, FIGURES.get(i).heading(system), look.band(true));
    }
  }

  private void figures(int row, Group group, Function<HoursColumn, String> formula) {
    for (int i = 0; i < FIGURES.size(); i++) {
      HoursColumn column = FIGURES.get(i);
      page.formula(
          row,
          FIRST_FIGURE + i,
          formula.apply(column),
          group.total(column.figure(), system),
          look.number(decimals(column)));
    }
  }

  /** The groups that are not shown, as all less those that are. */
  private int rest(int row, int first, int more, String what, List<Group> groups, int shown) {
    if (more <= 0) {
      return row;
    }
    page.text(row, FLOOR, more + " more " + what, look.text(false));
    for (int i = 0; i < FIGURES.size(); i++) {
      HoursColumn column = FIGURES.get(i);
      double value =
          groups.subList(shown, groups.size()).stream()
              .mapToDouble(group -> group.total(column.figure(), system))
              .sum();
      String of = Canvas.range(first, row - 1, FIRST_FIGURE + i);
      page.formula(
          row,
          FIRST_FIGURE + i,
          sums.all(column) + "-SUM(" + of + ")",
          value,
          look.number(decimals(column)));
    }
    return row + 1;
  }

  private int totals(int row, JobHours hours, String total) {
    page.text(row, FLOOR, "All lines that count", look.strong());
    for (int i = 0; i < FIGURES.size(); i++) {
      HoursColumn column = FIGURES.get(i);
      FilledColumn figure = column.figure();
      double value = figure.quantity().shown(filled.total(figure), system);
      String formula = column == HoursColumn.LABOUR ? lineHours() : sums.all(column);
      page.formula(row, FIRST_FIGURE + i, formula, value, look.strongNumber(decimals(column)));
    }
    page.across(row, FLOOR, HOURS, look.strong());
    page.text(row + 1, FLOOR, "Set-up, clean-up, changes, touch-up", look.text(false));
    double job = hours.number(JobFigure.TOTAL) - filled.total(FilledColumn.LABOUR);
    page.formula(row + 1, HOURS, total + "-" + Canvas.at(row, HOURS), job, look.number(1));
    return row + 2;
  }

  /** Labour without the job's own rows, which stand in the same column. */
  private String lineHours() {
    return List.of(HoursColumn.SPRAY, HoursColumn.ROLL, HoursColumn.MASK, HoursColumn.PREPARE)
        .stream()
        .map(sums::all)
        .reduce((a, b) -> a + "+" + b)
        .orElseThrow();
  }

  private List<Group> largestFirst(List<Group> groups) {
    // added up once each, not for each comparison
    Map<Group, Double> hours = new IdentityHashMap<>();
    groups.forEach(group -> hours.put(group, group.total(FilledColumn.LABOUR, system)));
    return groups.stream()
        .sorted(Comparator.comparingDouble((Group group) -> hours.get(group)).reversed())
        .toList();
  }

  private int decimals(HoursColumn column) {
    return column == HoursColumn.AREA && system == UnitSystem.US ? 0 : 1;
  }

  private static String floor(FilledLine line) {
    return line.line().text(InputColumn.FLOOR);
  }
}
