package org.wetmil.workbook.fill.page;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Setting;
import org.wetmil.checks.Finding;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.FillStamp;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;

/**
 * The job on one printed page: places on the left, paint, hours and price on the right, charts
 * below. Sums are formulas over the list of hours.
 */
final class SummarySheet {
  /** The columns of the right half. */
  static final int LABEL = 6;

  static final int COUNT = 7;
  static final int VALUE = 8;
  static final int UNIT = 9;

  private static final String CHANGED =
      "The bid was changed after it was filled. Sums follow; tips, changes, days of the plan and what"
          + " is said as when filled do not: fill it again.";

  private static final int[] WIDTHS = {11, 22, 12, 11, 11, 3, 30, 9, 13, 6};

  private final Canvas page;
  private final Look look;
  private final FilledJob job;
  private final HoursSums sums;
  private final BasisBook basis;
  private final Coin coin;
  private final UnitSystem system;

  SummarySheet(
      XSSFSheet sheet, Look look, FilledJob job, HoursSums sums, BasisBook basis, Coin coin) {
    this.page = new Canvas(sheet);
    this.look = look;
    this.job = job;
    this.sums = sums;
    this.basis = basis;
    this.coin = coin;
    this.system = job.filled().bid().system();
  }

  /**
   * Where other sheets find figures.
   *
   * @param paint the cell of the job's paint
   * @param hours the cells of the job's hours
   * @param price the cell of the price to be paid; null when there is none
   * @param beforeTax the cell of the price before tax; null when there is none
   * @param direct the cell of the direct cost; null when there is no price
   * @param changed tells whether the bid was changed since
   */
  record Places(
      String paint,
      Map<JobFigure, String> hours,
      String price,
      String beforeTax,
      String direct,
      ChangedSince changed) {}

  /**
   * @param likely where the page that says how sure the figures are has their ends
   * @param planDays days of the page Plan
   */
  Places write(
      FillStamp stamp,
      List<Finding> findings,
      String findingsSheet,
      String orderSheet,
      HowSurePage.Places likely,
      int planDays) {
    Pages.widths(page.sheet(), WIDTHS);
    page.text(0, 0, job.filled().bid().job(), look.title());
    page.text(
        1,
        0,
        "Summary of the bid, filled " + stamp.date() + " from " + stamp.inputName(),
        look.text(false));
    int top = 7;

    PaintBlock.Written paint = new PaintBlock(page, look, job, sums).write(top, orderSheet);
    TasksBlock tasks = new TasksBlock(page, look, sums, basis);
    TasksBlock.Written hours = tasks.place(paint.next() + 1);
    tasks.write(job.filled(), job.hours(), planDays);
    page.formula(
        2, 0, ChangedSince.of(job, tasks.at(JobFigure.TOTAL)).formula(CHANGED), "", look.strong());
    int right = hours.next();
    PriceBlock.Written price = null;
    if (job.price().price().isPresent()) {
      price =
          new PriceBlock(page, look, job.filled(), basis, coin)
              .write(
                  right + 1,
                  job.price().price().get(),
                  job.hours(),
                  tasks.at(JobFigure.TOTAL),
                  orderSheet);
      right = price.next();
    }

    PlacesBlock.Written places =
        new PlacesBlock(page, look, job.filled(), sums)
            .write(top, job.hours(), tasks.at(JobFigure.TOTAL));
    TalliesBlock tallies = new TalliesBlock(page, look, job.filled());
    int left = tallies.lines(places.next() + 1);
    left = tallies.findings(left + 1, findings, findingsSheet);
    left = new SwitchingBlock(page, look, job).write(left + 1);

    tiles(paint, tasks, price);
    likely(likely);
    int next = Math.max(left, right) + 1;
    if (job.filled().total(FilledColumn.LABOUR) > 0) {
      new HoursCharts(page, look, job.hours().number(JobFigure.TOTAL))
          .write(next, places, hours, tasks);
      next += HoursCharts.ROWS;
    }
    Pages.upright(page.sheet(), WIDTHS.length, next);
    Pages.narrowMargins(page.sheet());
    page.sheet().getPrintSetup().setFitHeight((short) 1);
    return new Places(
        page.from(paint.total(), VALUE),
        tasks.places(),
        price == null ? null : page.from(price.total(), VALUE),
        price == null ? null : page.from(price.beforeTax(), VALUE),
        price == null ? null : page.from(price.direct(), VALUE),
        ChangedSince.of(job, tasks.places().get(JobFigure.TOTAL)));
  }

  /** Under the large figures, between what eight jobs of ten like this one come out. */
  private void likely(HowSurePage.Places likely) {
    likely(2, likely.paint());
    likely(LABEL, likely.hours());
    if (job.price().price().isEmpty()) {
      likely(COUNT, likely.days());
    } else if (likely.price() != null) {
      likely(COUNT, likely.price());
    }
  }

  private void likely(int column, HowSurePage.Ends ends) {
    page.formula(
        5,
        column,
        // FIXED parts thousands as the reader's country does; a format in TEXT would not
        "\"likely \"&FIXED(%s,0)&\" to \"&FIXED(%s,0)".formatted(ends.lowAt(), ends.highAt()),
        String.format(Locale.ROOT, "likely %,.0f to %,.0f", ends.low(), ends.high()),
        look.text(false));
  }

  /** The figures that are asked for first, large. */
  private void tiles(PaintBlock.Written paint, TasksBlock tasks, PriceBlock.Written price) {
    String area = FilledColumn.NET_AREA.quantity().unit(system).symbol();
    String volume = Quantity.VOLUME.unit(system).symbol();
    tile(0, 1, "Net area, " + area, sums.all(HoursColumn.AREA), shown(FilledColumn.NET_AREA), 0);
    tile(
        2,
        4,
        "Paint, " + volume,
        Canvas.at(paint.total(), VALUE),
        Quantity.VOLUME.shown(job.paintGal(), system),
        1);
    tile(
        LABEL,
        LABEL,
        "Labour, h",
        tasks.at(JobFigure.TOTAL),
        job.hours().number(JobFigure.TOTAL),
        1);
    if (price == null) {
      tile(COUNT, UNIT, "Days", tasks.at(JobFigure.DAYS), job.hours().number(JobFigure.DAYS), 0);
    } else {
      String currency = job.filled().bid().catalogue().text(Setting.CURRENCY);
      tile(
          COUNT,
          UNIT,
          currency.isEmpty() ? "Price" : "Price, " + currency,
          Canvas.at(price.total(), VALUE),
          job.price().price().orElseThrow().total().doubleValue(),
          coin.decimals());
    }
  }

  private void tile(int first, int last, String label, String formula, double value, int decimals) {
    page.text(3, first, label, look.text(false));
    page.formula(4, first, formula, value, look.figure(decimals));
    page.height(4, 28);
    if (last > first) {
      page.merged(3, first, last).merged(4, first, last);
    }
  }

  private double shown(FilledColumn column) {
    return column.quantity().shown(job.filled().total(column), system);
  }
}
