package org.wetmil.workbook.fill.page;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.formula.Place;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Plain;
import org.wetmil.workbook.look.Texts;

/** Hours by task and how long the job takes: every figure of the job's hours has its cell here. */
final class TasksBlock {
  /** The tasks of lines, and the column of the list of hours that each adds up. */
  private static final Map<JobFigure, HoursColumn> SUMS =
      Map.of(
          JobFigure.SPRAY, HoursColumn.SPRAY,
          JobFigure.ROLL, HoursColumn.ROLL,
          JobFigure.MASK, HoursColumn.MASK,
          JobFigure.PREPARE, HoursColumn.PREPARE);

  /** Tasks that go by a number of times, which stands beside them. */
  private static final Map<JobFigure, JobFigure> TIMES =
      Map.of(
          JobFigure.CHANGE_TIP, JobFigure.TIP_CHANGES,
          JobFigure.CHANGE_COATING, JobFigure.COATING_CHANGES);

  private static final List<JobFigure> DURATION =
      List.of(JobFigure.WORK, JobFigure.GUNS, JobFigure.DAYS, JobFigure.DURATION);

  private final Canvas page;
  private final Look look;
  private final HoursSums sums;
  private final BasisBook basis;

  /** The row of the days of the page Plan. */
  private int planned;

  private final Map<JobFigure, int[]> cells = new EnumMap<>(JobFigure.class);

  TasksBlock(Canvas page, Look look, HoursSums sums, BasisBook basis) {
    this.page = page;
    this.look = look;
    this.sums = sums;
    this.basis = basis;
  }

  /** Rows of the page from 0: the first task, the last one, and the row after the block. */
  record Written(int firstTask, int lastTask, int next) {}

  /** Says where each figure will stand, so that other blocks can be written before. */
  Written place(int row) {
    int at = row + 1;
    for (JobFigure figure : JobFigure.values()) {
      if (figure.isTask()) {
        if (TIMES.containsKey(figure)) {
          cells.put(TIMES.get(figure), new int[] {at, SummarySheet.COUNT});
        }
        cells.put(figure, new int[] {at++, SummarySheet.VALUE});
      }
    }
    int last = at - 1;
    cells.put(JobFigure.TOTAL, new int[] {at++, SummarySheet.VALUE});
    at += 2;
    for (JobFigure figure : DURATION) {
      cells.put(figure, new int[] {at++, SummarySheet.VALUE});
    }
    planned = at++;
    return new Written(row + 1, last, at);
  }

  /** The cell of a figure as formulas of the page write it. */
  String at(JobFigure figure) {
    int[] cell = cells.get(figure);
    return Canvas.at(cell[0], cell[1]);
  }

  /** The cells of all figures as formulas of other sheets write them. */
  Map<JobFigure, String> places() {
    Map<JobFigure, String> places = new EnumMap<>(JobFigure.class);
    cells.forEach((figure, cell) -> places.put(figure, page.from(cell[0], cell[1])));
    return places;
  }

  /**
   * @param planDays until the last coat is laid
   */
  void write(FilledBid filled, JobHours hours, int planDays) {
    int heading = cells.get(JobFigure.SPRAY)[0] - 1;
    page.text(heading, SummarySheet.LABEL, "Hours by task", look.band(false))
        .text(heading, SummarySheet.COUNT, "Times", look.band(true))
        .text(heading, SummarySheet.VALUE, "h", look.band(true))
        .across(heading, SummarySheet.LABEL, SummarySheet.UNIT, look.band(false));
    int duration = cells.get(JobFigure.WORK)[0] - 1;
    page.text(duration, SummarySheet.LABEL, "Duration", look.band(false))
        .across(duration, SummarySheet.LABEL, SummarySheet.UNIT, look.band(false));
    cells.forEach((figure, cell) -> figure(figure, cell, hours));
    int[] last = cells.get(JobFigure.DURATION);
    double crew = filled.bid().catalogue().number(Setting.CREW);
    String words = "Duration for a crew of ";
    page.formula(
        last[0],
        SummarySheet.LABEL,
        Texts.quoted(words) + "&" + basis.reference(Setting.CREW),
        words + Plain.number(crew),
        look.strong());
    page.text(planned, SummarySheet.LABEL, "Days on Plan, with drying", look.text(false))
        .number(planned, SummarySheet.VALUE, planDays, look.number(0));
  }

  private void figure(JobFigure figure, int[] cell, JobHours hours) {
    boolean times = TIMES.containsValue(figure);
    boolean total = figure == JobFigure.TOTAL || figure == JobFigure.DURATION;
    boolean whole = times || figure == JobFigure.GUNS || figure == JobFigure.DAYS;
    if (!times) {
      page.text(
          cell[0], SummarySheet.LABEL, title(figure), total ? look.strong() : look.text(false));
      boolean timed = !whole && !figure.isTask() && figure != JobFigure.TOTAL;
      if (timed) {
        page.text(cell[0], SummarySheet.UNIT, "h", look.unit());
      }
    }
    Figure value = hours.figures().get(figure);
    page.formula(
        cell[0],
        cell[1],
        formula(figure, value),
        value.number(),
        total ? look.strongNumber(1) : look.number(whole ? 0 : 1));
  }

  /** Beside the days of the plan, the others are to say that they know no drying. */
  private static String title(JobFigure figure) {
    return figure == JobFigure.DAYS ? figure.title() + " by the hours alone" : figure.title();
  }

  private String formula(JobFigure figure, Figure value) {
    if (SUMS.containsKey(figure)) {
      return sums.all(SUMS.get(figure));
    }
    Function<Place, String> names =
        place -> place instanceof JobFigure other ? at(other) : basis.reference(place);
    return value instanceof Figure.Live live ? live.formula().print(names) : null;
  }
}
