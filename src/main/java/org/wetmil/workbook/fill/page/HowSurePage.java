package org.wetmil.workbook.fill.page;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.job.Driver;
import org.wetmil.estimate.job.FilledJob;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobRange;
import org.wetmil.estimate.job.MoneyBand;
import org.wetmil.estimate.likely.Band;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.Totals;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;

/**
 * The page that says how sure the figures of the job are: between what eight jobs of ten like this
 * one come out, and what that range is made of. The ends are stated figures times a ratio.
 */
final class HowSurePage {
  private static final int LABEL = 0;
  private static final int LOW = 1;
  private static final int STATED = 2;
  private static final int HIGH = 3;
  private static final int UNIT = 4;
  private static final String CHANGED =
      "The bid was changed after these ranges were drawn: fill it again.";

  private static final int[] WIDTHS = {40, 14, 14, 14, 10};

  private static final int FIRST = 4;
  private static final int CHART_ROWS = 13;

  private final Canvas page;
  private final Look look;
  private final FilledJob job;
  private final BasisBook basis;
  private final Coin coin;
  private final UnitSystem system;
  private int next = FIRST;

  HowSurePage(XSSFSheet sheet, Look look, FilledJob job, BasisBook basis, Coin coin) {
    this.page = new Canvas(sheet);
    this.look = look;
    this.job = job;
    this.basis = basis;
    this.coin = coin;
    this.system = job.filled().bid().system();
  }

  /** Both ends of a figure and their cells as formulas of other sheets write them. */
  record Ends(double low, String lowAt, double high, String highAt) {}

  /** Where the summary finds the ends; the price is null where it does not range. */
  record Places(Ends paint, Ends hours, Ends days, Ends price) {}

  /** Says where the ends will stand, so that the summary can be written before. */
  Places places() {
    JobRange range = job.range();
    Band paint = shown(range.paintGal());
    return new Places(
        ends(0, paint),
        ends(1, range.hours()),
        ends(2, range.days()),
        range.total().map(money -> ends(taxed() ? 5 : 4, plain(money))).orElse(null));
  }

  private boolean taxed() {
    return job.filled().bid().catalogue().number(Setting.TAX_ON_PRICE) > 0;
  }

  private Ends ends(int row, Band band) {
    return new Ends(
        band.low(), page.from(FIRST + row, LOW), band.high(), page.from(FIRST + row, HIGH));
  }

  void write(SummarySheet.Places summary) {
    Pages.widths(page.sheet(), WIDTHS);
    page.text(0, LABEL, "How sure", look.title());
    page.text(
        1,
        LABEL,
        job.filled().bid().job()
            + ": of ten jobs like this one about eight come out between low"
            + " and high",
        look.text(false));
    page.formula(2, LABEL, summary.changed().formula(CHANGED), "", look.strong());
    heading(3, "Figure of the job", "Low", "Stated", "High", "");
    figures(summary);
    next++;
    drivers();
    notes();
    Pages.upright(page.sheet(), WIDTHS.length, next);
    Pages.narrowMargins(page.sheet());
  }

  private void heading(int row, String... texts) {
    for (int i = 0; i < texts.length; i++) {
      page.text(row, i, texts[i], look.band(i > LABEL && i < UNIT));
    }
  }

  private void figures(SummarySheet.Places summary) {
    JobRange range = job.range();
    String volume = Quantity.VOLUME.unit(system).symbol();
    figure("Paint", shown(range.paintGal()), summary.paint(), volume, look.number(1));
    figure("Labour", range.hours(), summary.hours().get(JobFigure.TOTAL), "h", look.number(1));
    days(range.days(), summary.hours().get(JobFigure.DAYS));
    String currency = job.filled().bid().catalogue().text(Setting.CURRENCY);
    money("Direct cost", range.direct(), summary.direct(), currency);
    money("Price before tax", range.beforeTax(), summary.beforeTax(), currency);
    if (taxed()) {
      money("To be paid", range.total(), summary.price(), currency);
    }
  }

  private void figure(String label, Band band, String stated, String unit, XSSFCellStyle style) {
    page.text(next, LABEL, label, look.strong());
    page.formula(next, LOW, times(band.lowRatio()), band.low(), style);
    page.formula(next, STATED, stated, band.stated(), look.strongNumber(1));
    page.formula(next, HIGH, times(band.highRatio()), band.high(), style);
    page.text(next++, UNIT, unit, look.unit());
  }

  private String times(double ratio) {
    return Canvas.at(next, STATED) + "*" + Totals.plain(ratio);
  }

  /** Whole days follow nothing by a ratio. */
  private void days(Band band, String stated) {
    page.text(next, LABEL, "Days of work", look.strong());
    page.number(next, LOW, band.low(), look.number(0));
    page.formula(next, STATED, stated, band.stated(), look.strongNumber(0));
    page.number(next, HIGH, band.high(), look.number(0));
    page.text(next++, UNIT, "days", look.unit());
  }

  private void money(String label, Optional<MoneyBand> money, String stated, String currency) {
    money.ifPresent(
        band -> {
          page.text(next, LABEL, label, look.strong());
          page.formula(next, LOW, rounded(band.low(), band), number(band.low()), coin.look());
          page.formula(next, STATED, stated, number(band.stated()), coin.strong());
          page.formula(next, HIGH, rounded(band.high(), band), number(band.high()), coin.look());
          page.text(next++, UNIT, currency, look.unit());
        });
  }

  private String rounded(BigDecimal end, MoneyBand band) {
    double stated = band.stated().doubleValue();
    return coin.rounded(times(stated == 0 ? 1 : end.doubleValue() / stated));
  }

  private static double number(BigDecimal amount) {
    return amount.doubleValue();
  }

  private void drivers() {
    Comparator<Driver> widest =
        Comparator.comparingDouble((Driver driver) -> width(driver.hours())).reversed();
    List<Driver> drivers = job.range().drivers().stream().sorted(widest).toList();
    int chart = next;
    next += CHART_ROWS + 1;
    String volume = Quantity.VOLUME.unit(system).symbol();
    heading(
        next++,
        "If this alone were uncertain",
        "Times or over",
        "Paint, " + volume,
        "Labour, h",
        "");
    int first = next;
    for (Driver driver : drivers) {
      page.text(next, LABEL, driver.factor().title(), look.text(false));
      Setting setting = driver.factor().setting();
      page.formula(
          next,
          LOW,
          basis.reference(setting),
          job.filled().bid().catalogue().number(setting),
          look.number(2));
      page.number(next, STATED, width(shown(driver.paint())), look.number(1));
      page.number(next, HIGH, width(driver.hours()), look.number(1));
      next++;
    }
    page.text(
        next++, LABEL, "Paint and labour: from the low end to the high end.", look.text(false));
    double most = width(drivers.get(0).hours());
    if (most > 0) {
      String title =
          "%s moves the labour most: by %s h from low to high"
              .formatted(drivers.get(0).factor().title(), String.format(Locale.ROOT, "%.1f", most));
      page.text(chart, LABEL, title, look.text(false));
      new SummaryCharts(page.sheet())
          .bars(
              new int[] {chart, LABEL, chart + CHART_ROWS, UNIT + 1},
              new String[] {page.from(chart, LABEL), title},
              new SummaryCharts.Shown<>(
                  new CellRangeAddress(first, first + drivers.size() - 1, LABEL, LABEL),
                  drivers.stream().map(driver -> driver.factor().title()).toList()),
              new SummaryCharts.Shown<>(
                  new CellRangeAddress(first, first + drivers.size() - 1, HIGH, HIGH),
                  drivers.stream().map(driver -> width(driver.hours())).toList()),
              "Hours from low to high");
    }
    next++;
  }

  private void notes() {
    page.text(next, LABEL, "What this rests on", look.block()).across(next, 0, UNIT, look.block());
    next++;
    double enough = Quantity.VOLUME.shown(job.order().enoughGal(), system);
    String volume = Quantity.VOLUME.unit(system).symbol();
    for (String sentence :
        List.of(
            "The order goes by the %s figure (setting Order by). Enough of every colour in nine jobs"
                    .formatted(job.filled().bid().catalogue().text(Setting.ORDER_BY))
                + " of ten would be %s %s."
                    .formatted(String.format(Locale.ROOT, "%.1f", enough), volume),
            "How far each factor ranges is our judgement until your own past jobs say better: the"
                + " settings Transfer range, Film range, Kept range, Trigger range and Range in"
                + " common, with their sources on Basis. The audit says how many of your jobs fell"
                + " inside.",
            "Each factor is lognormal about what is stated, so half of all jobs take more of it."
                + " The share of paint that stays on is never over 1. Part of each factor is the"
                + " same for all lines of the job, part is each line's own.",
            "Paint that is taken beyond the order, or less of it, counts at the price of the order. A"
                + " price that is asked does not move.",
            "Area, coats, masking, preparation and rolling are taken as stated; a wrong measure or"
                + " a forgotten room is in no range.",
            "The ranges of the lines stand beside them, in the columns that are folded. Low and high"
                + " follow a change of a line; the ratios to the stated figure, the days and the"
                + " bars are as at the fill.")) {
      page.paragraph(next++, sentence, WIDTHS, look.text(true));
    }
  }

  private static double width(Band band) {
    return band.high() - band.low();
  }

  private Band shown(Band gal) {
    return new Band(
        Quantity.VOLUME.shown(gal.low(), system),
        Quantity.VOLUME.shown(gal.stated(), system),
        Quantity.VOLUME.shown(gal.high(), system));
  }

  private static Band plain(MoneyBand money) {
    return new Band(
        money.low().doubleValue(), money.stated().doubleValue(), money.high().doubleValue());
  }
}
