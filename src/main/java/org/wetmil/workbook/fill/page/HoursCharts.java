package org.wetmil.workbook.fill.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.util.CellRangeAddress;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;

/** Where the hours go: by room and by task. */
final class HoursCharts {
  /** Rows that the charts cover. */
  static final int ROWS = 15;

  private static final int MOST_BARS = 12;

  private final Canvas page;
  private final Look look;
  private final double totalHours;

  HoursCharts(Canvas page, Look look, double totalHours) {
    this.page = page;
    this.look = look;
    this.totalHours = totalHours;
  }

  /** Two charts side by side, each with a title that says its answer. */
  void write(int row, PlacesBlock.Written places, TasksBlock.Written hours, TasksBlock tasks) {
    SummaryCharts charts = new SummaryCharts(page.sheet());
    int last = Math.min(places.lastRoom(), places.firstRoom() + MOST_BARS - 1);
    List<String> rooms = new ArrayList<>();
    List<Double> roomHours = new ArrayList<>();
    read(
        places.firstRoom(),
        places.lastRoom(),
        PlacesBlock.ROOM,
        PlacesBlock.HOURS,
        rooms,
        roomHours);
    String roomTitle =
        title(
            row,
            0,
            Canvas.range(places.firstRoom(), places.lastRoom(), PlacesBlock.ROOM),
            Canvas.range(places.firstRoom(), places.lastRoom(), PlacesBlock.HOURS),
            tasks.at(JobFigure.TOTAL),
            rooms,
            roomHours);
    charts.bars(
        new int[] {row, 0, row + ROWS, 5},
        new String[] {page.from(row, 0), roomTitle},
        shown(places.firstRoom(), last, PlacesBlock.ROOM, rooms),
        shown(places.firstRoom(), last, PlacesBlock.HOURS, roomHours),
        "Hours by room");
    List<String> names = new ArrayList<>();
    List<Double> taskHours = new ArrayList<>();
    read(
        hours.firstTask(),
        hours.lastTask(),
        SummarySheet.LABEL,
        SummarySheet.VALUE,
        names,
        taskHours);
    String taskTitle =
        title(
            row,
            SummarySheet.LABEL,
            Canvas.range(hours.firstTask(), hours.lastTask(), SummarySheet.LABEL),
            Canvas.range(hours.firstTask(), hours.lastTask(), SummarySheet.VALUE),
            tasks.at(JobFigure.TOTAL),
            names,
            taskHours);
    charts.bars(
        new int[] {row, SummarySheet.LABEL, row + ROWS, SummarySheet.UNIT + 1},
        new String[] {page.from(row, SummarySheet.LABEL), taskTitle},
        shown(hours.firstTask(), hours.lastTask(), SummarySheet.LABEL, names),
        shown(hours.firstTask(), hours.lastTask(), SummarySheet.VALUE, taskHours),
        "Hours by task");
  }

  private static <T> SummaryCharts.Shown<T> shown(int first, int last, int column, List<T> now) {
    return new SummaryCharts.Shown<>(
        new CellRangeAddress(first, last, column, column), now.subList(0, last - first + 1));
  }

  private void read(
      int first, int last, int names, int values, List<String> texts, List<Double> numbers) {
    for (int row = first; row <= last; row++) {
      texts.add(page.textAt(row, names));
      numbers.add(page.numberAt(row, values));
    }
  }

  /** The cell under a chart that says what it shows: the greatest of some figures, as a share. */
  private String title(
      int row,
      int column,
      String names,
      String values,
      String total,
      List<String> texts,
      List<Double> numbers) {
    int most = 0;
    for (int i = 1; i < numbers.size(); i++) {
      most = numbers.get(i) > numbers.get(most) ? i : most;
    }
    String says = " takes %d %% of the hours";
    long share = Math.round(100 * numbers.get(most) / totalHours);
    String text = texts.get(most) + String.format(Locale.ROOT, says, share);
    String formula =
        "INDEX(%1$s,MATCH(MAX(%2$s),%2$s,0))&\" takes \"&ROUND(100*MAX(%2$s)/%3$s,0)&\" %% of the hours\""
            .formatted(names, values, total);
    page.formula(row, column, formula, text, look.text(false));
    return text;
  }
}
