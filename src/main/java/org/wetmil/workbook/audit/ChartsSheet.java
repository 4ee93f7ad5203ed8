package org.wetmil.workbook.audit;

import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.audit.MeasureAudit;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.ratio.JobRatio;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/**
 * The charts, and below them the figures that they show, which follow the list of jobs. For each
 * measure a row of charts: taken against bid, ratio over time, groups with what they are likely to
 * be.
 */
final class ChartsSheet {
  static final String NAME = "Charts";

  private static final int CHART_ROWS = 24;
  private static final int WIDTH = 13;
  private static final int COLUMNS = 12;
  private static final double ROOM = 1.08;

  private final XSSFSheet sheet;
  private final XSSFSheet page;
  private final Look look;
  private final AuditBook book;
  private final Rows rows;

  /**
   * @param page where the charts of bid and outcome stand too, below its text
   */
  ChartsSheet(XSSFSheet sheet, XSSFSheet page, Look look, AuditBook book) {
    this.sheet = sheet;
    this.page = page;
    this.look = look;
    this.book = book;
    this.rows = new Rows(sheet);
  }

  /**
   * @param below the first free row of the page
   */
  void write(int below) {
    List<MeasureAudit> measures = book.audit().measures();
    for (int i = 0; i < COLUMNS; i++) {
      Pages.width(sheet, i, WIDTH);
    }
    rows.row().text("How the bids came out", look.title());
    while (rows.number() < 1 + measures.size() * 2 * (CHART_ROWS + 1)) {
      rows.gap();
    }
    int charts = rows.number();
    for (int i = 0; i < measures.size(); i++) {
      measure(measures.get(i), i, below);
    }
    Pages.landscape(sheet, COLUMNS, charts);
    // a measure on each page, its three charts together
    for (int i = 1; i < measures.size(); i++) {
      sheet.setRowBreak(i * 2 * (CHART_ROWS + 1));
    }
  }

  private void measure(MeasureAudit audit, int place, int below) {
    Measure measure = audit.measure();
    String unit = measure.quantity().unit(book.system()).symbol();
    List<JobRatio> jobs = audit.ratios().jobs();
    rows.gap().row().text(measure.title() + ", job by job", look.block());
    rows.underline(COLUMNS, look.block());
    rows.row();
    for (String heading : List.of("Job", "Bid", "Taken", "Date", "Taken/bid")) {
      rows.text(heading, look.heading());
    }
    int first = rows.number();
    jobs.forEach(job -> job(measure, job));
    int last = rows.number() - 1;
    rows.gap().row();
    for (String heading : List.of("Line", "Bid", "Taken", "Date", "Taken/bid")) {
      rows.text(heading, look.heading());
    }
    double most =
        AxisEnds.amounts(
            jobs.stream()
                    .mapToDouble(job -> shown(measure, Math.max(job.estimated(), job.actual())))
                    .max()
                    .orElse(1)
                * ROOM);
    double[] days = DriftLine.days(jobs);
    double[] drift = DriftLine.drift(audit, days);
    int line = rows.number();
    rows.row().text("from", look.text(false)).number(0, look.number(1)).number(0, look.number(1));
    rows.number(days[0], look.date()).number(drift[0], look.number(2));
    rows.row()
        .text("to", look.text(false))
        .number(most, look.number(1))
        .number(most, look.number(1));
    rows.number(days[1], look.date()).number(drift[1], look.number(2));

    int top = 1 + place * 2 * (CHART_ROWS + 1);
    CellRangeAddress[] even = {column(line, line + 1, 1), column(line, line + 1, 2)};
    Chart.Axes amounts = new Chart.Axes("bid, " + unit, "taken, " + unit, "#,##0", "#,##0");
    int half = COLUMNS / 2;
    for (XSSFSheet on : List.of(sheet, page)) {
      int[] corners =
          on == sheet ? new int[] {0, top, half, top + CHART_ROWS} : AuditPage.chart(place, below);
      new Chart(on, sheet, corners, ChartTitles.against(audit))
          .points(
              amounts,
              "a job",
              column(first, last, 1),
              column(first, last, 2),
              "taken as bid",
              even,
              new double[] {0, most, 0, most});
    }
    if (days[1] > days[0]) {
      double[] ends = AxisEnds.ratios(jobs.stream().map(JobRatio::ratio), 0.1);
      new Chart(
              sheet,
              sheet,
              new int[] {half, top, COLUMNS, top + CHART_ROWS},
              ChartTitles.overTime(audit))
          .points(
              new Chart.Axes("date", "taken/bid", "yyyy-mm", "0.00"),
              "a job",
              column(first, last, 3),
              column(first, last, 4),
              "drift",
              Double.isNaN(drift[0])
                  ? null
                  : new CellRangeAddress[] {column(line, line + 1, 3), column(line, line + 1, 4)},
              new double[] {days[0] - 30, days[1] + 30, ends[0], ends[1]});
    }
    int lower = top + CHART_ROWS + 1;
    new GroupsChart(sheet, look, rows)
        .write(audit, new int[] {0, lower, COLUMNS, lower + CHART_ROWS});
  }

  private void job(Measure measure, JobRatio job) {
    int at = 2;
    for (AuditedJob one : book.jobs()) {
      if (one.bid() == job.bid()) {
        break;
      }
      at++;
    }
    JobsColumn.OfMeasure columns = JobsColumn.OfMeasure.of(measure);
    String jobs = JobsSheet.NAME + "!";
    rows.row()
        .formula(jobs + JobsColumn.JOB.in(at), job.bid().id(), look.text(false))
        .formula(jobs + columns.bid().in(at), shown(measure, job.estimated()), look.number(1))
        .formula(jobs + columns.taken().in(at), shown(measure, job.actual()), look.number(1));
    LocalDate date = job.bid().date();
    if (date == null) {
      rows.skip(1);
    } else {
      rows.formula(jobs + JobsColumn.DATE.in(at), DateUtil.getExcelDate(date), look.date());
    }
    rows.formula(jobs + columns.ratio().in(at), job.ratio(), look.number(2));
  }

  private double shown(Measure measure, double kept) {
    return JobsSheet.shown(measure, kept, book.system());
  }

  private static CellRangeAddress column(int first, int last, int column) {
    return new CellRangeAddress(first, last, column, column);
  }
}
