package org.wetmil.workbook.fill.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Setting;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.Switching;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.FillStamp;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.FindingsList;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Texts;

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

  private static final int[] WIDTHS = {11, 22, 12, 11, 11, 3, 30, 9, 13, 6};
  private static final int MOST_COATINGS = 10;
  private static final int CHART_ROWS = 15;
  private static final int MOST_BARS = 12;

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
   */
  record Places(
      String paint, Map<JobFigure, String> hours, String price, String beforeTax, String direct) {}

  /**
   * @param likely where the page that says how sure the figures are has their ends
   */
  Places write(
      FillStamp stamp,
      List<Finding> findings,
      String findingsSheet,
      String orderSheet,
      HowSurePage.Places likely) {
    for (int i = 0; i < WIDTHS.length; i++) {
      page.sheet().setColumnWidth(i, WIDTHS[i] * 256);
    }
    page.text(0, 0, job.filled().bid().job(), look.title());
    page.text(
        1,
        0,
        "Summary of the bid, filled " + stamp.date() + " from " + stamp.inputName(),
        look.text(false));
    int top = 7;

    int right = paint(top, orderSheet);
    TasksBlock tasks = new TasksBlock(page, look, sums, basis);
    TasksBlock.Written hours = tasks.place(right + 1);
    tasks.write(job.filled(), job.hours());
    right = hours.next();
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
    int left = lines(places.next() + 1);
    left = findings(left + 1, findings, findingsSheet);
    left = switching(left + 1);

    tiles(tasks, price);
    likely(likely);
    int next = Math.max(left, right) + 1;
    if (job.filled().total(FilledColumn.LABOUR) > 0) {
      charts(next, places, hours, tasks);
      next += CHART_ROWS;
    }
    Pages.upright(page.sheet(), WIDTHS.length, next);
    page.sheet().getPrintSetup().setFitHeight((short) 1);
    return new Places(
        page.from(paintTotalRow, VALUE),
        tasks.places(),
        price == null ? null : page.from(price.total(), VALUE),
        price == null ? null : page.from(price.beforeTax(), VALUE),
        price == null ? null : page.from(price.direct(), VALUE));
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
        "\"likely \"&ROUND(%s,0)&\" to \"&ROUND(%s,0)".formatted(ends.lowAt(), ends.highAt()),
        "likely " + Math.round(ends.low()) + " to " + Math.round(ends.high()),
        look.text(false));
  }

  /** The figures that are asked for first, large. */
  private void tiles(TasksBlock tasks, PriceBlock.Written price) {
    String area = FilledColumn.NET_AREA.quantity().unit(system).symbol();
    String volume = Quantity.VOLUME.unit(system).symbol();
    tile(0, 1, "Net area, " + area, sums.all(HoursColumn.AREA), shown(FilledColumn.NET_AREA), 0);
    tile(
        2,
        4,
        "Paint, " + volume,
        Canvas.at(paintTotalRow, VALUE),
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

  private int paintTotalRow;

  private void tile(int first, int last, String label, String formula, double value, int decimals) {
    page.text(3, first, label, look.text(false));
    page.formula(4, first, formula, value, look.figure(decimals));
    page.height(4, 28);
    if (last > first) {
      page.merged(3, first, last).merged(4, first, last);
    }
  }

  private int paint(int row, String orderSheet) {
    page.text(row, LABEL, "Paint by coating", look.band(false))
        .across(row, LABEL, UNIT, look.band(false))
        .text(row, VALUE, Quantity.VOLUME.unit(system).symbol(), look.band(true));
    int at = row + 1;
    int first = at;
    List<Group> groups =
        Group.of(
            job.filled(),
            line -> line.work().coating().name(),
            line -> HoursKeys.firstPart(HoursKeys.order(line)));
    for (Group group : groups.subList(0, Math.min(MOST_COATINGS, groups.size()))) {
      page.text(at, LABEL, group.first().work().coating().name(), look.text(false));
      page.formula(
          at++,
          VALUE,
          sums.begunBy(HoursColumn.PAINT, HoursColumn.ORDER_KEY, group.keys()),
          group.total(FilledColumn.PAINT, system),
          look.number(1));
    }
    if (groups.size() > MOST_COATINGS) {
      double rest =
          groups.subList(MOST_COATINGS, groups.size()).stream()
              .mapToDouble(group -> group.total(FilledColumn.PAINT, system))
              .sum();
      String of = Canvas.range(first, at - 1, VALUE);
      page.text(at, LABEL, groups.size() - MOST_COATINGS + " more coatings", look.text(false));
      page.formula(
          at++, VALUE, sums.all(HoursColumn.PAINT) + "-SUM(" + of + ")", rest, look.number(1));
    }
    if (job.order().hoseGal() > 0) {
      page.text(at, LABEL, "Left in hoses", look.text(false));
      page.formula(
          at++,
          VALUE,
          "SUM(" + OrderColumn.IN_HOSES.whole(orderSheet) + ")",
          Quantity.VOLUME.shown(job.order().hoseGal(), system),
          look.number(1));
    }
    page.text(at, LABEL, "Paint of the job", look.strong());
    // where Include leaves every line out, there is no row to add up
    page.formula(
        at,
        VALUE,
        at == first
            ? sums.all(HoursColumn.PAINT)
            : "SUM(" + Canvas.range(first, at - 1, VALUE) + ")",
        Quantity.VOLUME.shown(job.paintGal(), system),
        look.strongNumber(1));
    paintTotalRow = at;
    return at + 1;
  }

  private int lines(int row) {
    long all = job.filled().lines().count();
    long filled = job.filled().lines().filter(FilledLine::isFilled).count();
    long counted = job.filled().lines().filter(FilledLine::isCounted).count();
    heading(row, "Lines of the bid");
    int at = row + 1;
    at = count(at, "Counted in these totals", counted);
    at = count(at, "Left out by Include", filled - counted);
    return count(at, "Not filled, so in no total", all - filled);
  }

  private int findings(int row, List<Finding> findings, String sheet) {
    heading(row, "Findings");
    int at = row + 1;
    for (Severity severity : List.of(Severity.STOP, Severity.WARNING, Severity.NOTE)) {
      long count = findings.stream().filter(each -> each.severity() == severity).count();
      String word = severity.name().toLowerCase(Locale.ROOT);
      page.text(at, 0, label(severity), look.text(false));
      String formula =
          findings.size() > FindingsList.MOST
              ? null
              : "COUNTIF(" + Texts.sheet(sheet) + "!$A:$A," + Texts.quoted(word) + ")";
      page.formula(at++, PlacesBlock.HOURS, formula, count, look.number(0));
    }
    Optional<String> leftOut = FindingsList.leftOut(findings.size());
    if (leftOut.isPresent()) {
      page.text(at++, 0, leftOut.get(), look.text(false));
    }
    return at;
  }

  private static String label(Severity severity) {
    return switch (severity) {
      case STOP -> "Stops: the line could not be filled";
      case WARNING -> "Warnings: out of range, look before bidding";
      case NOTE -> "Notes";
    };
  }

  private int count(int row, String label, long count) {
    page.text(row, 0, label, look.text(false));
    page.number(row, PlacesBlock.HOURS, count, look.number(0));
    return row + 1;
  }

  private void heading(int row, String text) {
    page.text(row, 0, text, look.band(false)).across(row, 0, PlacesBlock.HOURS, look.band(false));
  }

  /** What the recommended tips would save, as at the fill: tips are choices. */
  private int switching(int row) {
    Switching switching = job.switching();
    if (switching.lines() == 0) {
      return row;
    }
    page.text(
            row,
            0,
            "Planned and recommended tips differ on " + switching.lines() + " lines",
            look.band(false))
        .across(row, 0, PlacesBlock.HOURS, look.band(false))
        .text(row, 3, HoursColumn.PAINT.heading(system), look.band(true))
        .text(row, 4, "Spray (h)", look.band(true));
    int at = row + 1;
    side(at++, "With the planned tips", switching.plannedGal(), switching.plannedHours());
    side(
        at++,
        "With the recommended tips",
        switching.recommendedGal(),
        switching.recommendedHours());
    page.text(at, 0, "Saved by switching", look.strong());
    for (int column = 3; column <= 4; column++) {
      double saved =
          column == 3
              ? Quantity.VOLUME.shown(switching.savedGal(), system)
              : switching.savedHours();
      page.formula(
          at,
          column,
          Canvas.at(at - 2, column) + "-" + Canvas.at(at - 1, column),
          saved,
          look.strongNumber(1));
    }
    return at + 1;
  }

  private void side(int row, String label, double gal, double hours) {
    page.text(row, 0, label, look.text(false));
    page.number(row, 3, Quantity.VOLUME.shown(gal, system), look.number(1));
    page.number(row, 4, hours, look.number(1));
  }

  private void charts(
      int row, PlacesBlock.Written places, TasksBlock.Written hours, TasksBlock tasks) {
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
        new int[] {row, 0, row + CHART_ROWS, 5},
        new String[] {page.from(row, 0), roomTitle},
        shown(places.firstRoom(), last, PlacesBlock.ROOM, rooms),
        shown(places.firstRoom(), last, PlacesBlock.HOURS, roomHours),
        "Hours by room");
    List<String> names = new ArrayList<>();
    List<Double> taskHours = new ArrayList<>();
    read(hours.firstTask(), hours.lastTask(), LABEL, VALUE, names, taskHours);
    String taskTitle =
        title(
            row,
            LABEL,
            Canvas.range(hours.firstTask(), hours.lastTask(), LABEL),
            Canvas.range(hours.firstTask(), hours.lastTask(), VALUE),
            tasks.at(JobFigure.TOTAL),
            names,
            taskHours);
    charts.bars(
        new int[] {row, LABEL, row + CHART_ROWS, UNIT + 1},
        new String[] {page.from(row, LABEL), taskTitle},
        shown(hours.firstTask(), hours.lastTask(), LABEL, names),
        shown(hours.firstTask(), hours.lastTask(), VALUE, taskHours),
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
    long share = Math.round(100 * numbers.get(most) / job.hours().number(JobFigure.TOTAL));
    String text = texts.get(most) + String.format(Locale.ROOT, says, share);
    String formula =
        "INDEX(%1$s,MATCH(MAX(%2$s),%2$s,0))&\" takes \"&ROUND(100*MAX(%2$s)/%3$s,0)&\" %% of the hours\""
            .formatted(names, values, total);
    page.formula(row, column, formula, text, look.text(false));
    return text;
  }

  private double shown(FilledColumn column) {
    return column.quantity().shown(job.filled().total(column), system);
  }
}
