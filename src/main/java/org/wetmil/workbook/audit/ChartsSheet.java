package org.wetmil.workbook.audit;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.audit.MeasureAudit;
import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.ratio.JobRatio;
import org.wetmil.audit.stats.Trend;
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
  private static final int MOST_GROUPS = 12;
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
      sheet.setColumnWidth(i, WIDTH * 256);
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
    rows.gap().row().text(capital(measure.word()) + ", job by job", look.block());
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
        nice(
            jobs.stream()
                    .mapToDouble(job -> shown(measure, Math.max(job.estimated(), job.actual())))
                    .max()
                    .orElse(1)
                * ROOM);
    double[] days = days(jobs);
    double[] drift = drift(audit, days);
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
      new Chart(on, sheet, corners, against(audit))
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
      double[] ends = ends(jobs.stream().map(JobRatio::ratio), 0.1);
      new Chart(sheet, sheet, new int[] {half, top, COLUMNS, top + CHART_ROWS}, overTime(audit))
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
    groups(audit, top + CHART_ROWS + 1);
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

  /** Groups that have an interval, the furthest from right first. */
  private void groups(MeasureAudit audit, int top) {
    List<JudgedEffect> groups =
        audit.effects().stream()
            .filter(effect -> effect.likely().isKnown())
            .filter(effect -> effect.effect().by() != GroupedBy.YEAR)
            .sorted(Comparator.comparingDouble(effect -> -Math.abs(Math.log(middle(effect)))))
            .limit(MOST_GROUPS)
            .toList();
    if (groups.isEmpty()) {
      return;
    }
    rows.gap().row();
    for (String heading :
        List.of("Group", "Low", "Middle", "High", "Low to middle", "Middle to high")) {
      rows.text(heading, look.heading());
    }
    int first = rows.number();
    for (JudgedEffect group : groups) {
      int row = rows.row().number();
      double low = group.likely().low();
      double high = group.likely().high();
      rows.text(
              group.effect().by().title().toLowerCase(Locale.ROOT) + ": " + group.effect().group(),
              look.text(false))
          .number(low, look.number(2))
          .number(middle(group), look.number(2))
          .number(high, look.number(2))
          .formula("C" + row + "-B" + row, middle(group) - low, look.number(2))
          .formula("D" + row + "-C" + row, high - middle(group), look.number(2));
    }
    int last = rows.number() - 1;
    double[] ends =
        ends(groups.stream().flatMap(g -> Stream.of(g.likely().low(), g.likely().high())), 0.05);
    new Chart(sheet, sheet, new int[] {0, top, COLUMNS, top + CHART_ROWS}, furthest(audit, groups))
        .spans(
            "taken/bid: pale below the middle, dark above it; 1.00 is right",
            column(first, last, 0),
            new CellRangeAddress[] {
              column(first, last, 1), column(first, last, 4), column(first, last, 5)
            },
            new String[] {"", "low to middle", "middle to high"},
            ends);
  }

  private static double middle(JudgedEffect effect) {
    return Math.sqrt(effect.likely().low() * effect.likely().high());
  }

  private static String against(MeasureAudit audit) {
    List<JobRatio> jobs = audit.ratios().jobs();
    long over = jobs.stream().filter(job -> job.ratio() > 1).count();
    return "%s: %d of %d jobs took more than bid (above the line)"
        .formatted(capital(audit.measure().word()), over, jobs.size());
  }

  private static String overTime(MeasureAudit audit) {
    Trend trend = audit.ratios().trend();
    String word = capital(audit.measure().word());
    if (Double.isNaN(trend.slope())) {
      return word + " over time: too few jobs with a date to see a drift";
    }
    if (trend.chance() > JudgedEffect.ALARM) {
      return word + " over time: no drift that luck would not explain";
    }
    return String.format(
        Locale.ROOT,
        "%s drifts: each year %.0f %% %s",
        word,
        100 * Math.abs(Math.exp(trend.slope()) - 1),
        trend.slope() > 0 ? "more" : "less");
  }

  private static String furthest(MeasureAudit audit, List<JudgedEffect> groups) {
    String word = audit.measure().word();
    return groups.stream()
        .filter(JudgedEffect::standsApart)
        .findFirst()
        .map(
            group ->
                "%s by group: furthest off is %s".formatted(capital(word), group.effect().group()))
        .orElse(capital(word) + " by group: none stands out by more than luck explains");
  }

  private static double[] days(List<JobRatio> jobs) {
    double[] days =
        jobs.stream()
            .filter(job -> job.bid().date() != null)
            .mapToDouble(job -> DateUtil.getExcelDate(job.bid().date()))
            .toArray();
    return days.length == 0
        ? new double[] {Double.NaN, Double.NaN}
        : new double[] {
          Arrays.stream(days).min().orElseThrow(), Arrays.stream(days).max().orElseThrow()
        };
  }

  /** Ends of the drift: its slope through the middle of all dated jobs. */
  private static double[] drift(MeasureAudit audit, double[] days) {
    double slope = audit.ratios().trend().slope() / 365.25;
    double[] level =
        audit.ratios().jobs().stream()
            .filter(job -> job.bid().date() != null)
            .mapToDouble(
                job ->
                    Math.log(job.ratio())
                        - slope * (DateUtil.getExcelDate(job.bid().date()) - days[0]))
            .sorted()
            .toArray();
    if (level.length == 0 || Double.isNaN(slope)) {
      return new double[] {Double.NaN, Double.NaN};
    }
    int n = level.length;
    double middle = (level[(n - 1) / 2] + level[n / 2]) / 2;
    return new double[] {Math.exp(middle), Math.exp(middle + slope * (days[1] - days[0]))};
  }

  /** Round ends of an axis of ratios that holds 1. */
  private static double[] ends(Stream<Double> values, double step) {
    double[] all = values.mapToDouble(Double::doubleValue).toArray();
    double low = Math.min(1, Arrays.stream(all).min().orElse(1));
    double high = Math.max(1, Arrays.stream(all).max().orElse(1));
    return new double[] {
      Math.floor((low - step / 2) / step) * step, Math.ceil((high + step / 2) / step) * step
    };
  }

  private static double nice(double most) {
    double step = Math.pow(10, Math.floor(Math.log10(most)) - 1) * 5;
    return Math.ceil(most / step) * step;
  }

  private double shown(Measure measure, double kept) {
    return JobsSheet.shown(measure, kept, book.system());
  }

  private static CellRangeAddress column(int first, int last, int column) {
    return new CellRangeAddress(first, last, column, column);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
