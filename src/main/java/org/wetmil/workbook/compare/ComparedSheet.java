package org.wetmil.workbook.compare;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.estimate.compare.BidComparison;
import org.wetmil.estimate.compare.CompareWords;
import org.wetmil.estimate.compare.JobTotals;
import org.wetmil.estimate.compare.Split;
import org.wetmil.estimate.price.Price;
import org.wetmil.quantity.Quantity;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** The one sheet: what both come to, what the difference comes from, and the list of changes. */
final class ComparedSheet {
  static final String NAME = "Compared";

  private static final int LABEL = 4;

  private final XSSFSheet sheet;
  private final Look look;
  private final BidComparison compared;
  private final Version a;
  private final Version b;
  private final Rows rows;

  ComparedSheet(XSSFSheet sheet, Look look, BidComparison compared, Version a, Version b) {
    this.sheet = sheet;
    this.look = look;
    this.compared = compared;
    this.a = a;
    this.b = b;
    this.rows = new Rows(sheet);
  }

  void write(LocalDate date) {
    ChangeList list = new ChangeList(look, compared, a, b);
    list.widths(sheet);
    rows.row().text("Two versions of a bid", look.title());
    rows.height(24);
    sentence("A is \"%s\", B is \"%s\"; compared on %s.".formatted(a.name(), b.name(), date));
    CompareWords.notes(compared).forEach(this::sentence);
    rows.gap();
    totals();
    if (!compared.isSame()) {
      rows.gap();
      split();
      rows.gap();
      int heading = list.write(rows);
      sheet.setRepeatingRows(new CellRangeAddress(heading - 1, heading - 1, -1, -1));
      sheet.setAutoFilter(
          new CellRangeAddress(heading - 1, rows.number() - 1, 0, ChangeList.COLUMNS - 1));
    }
    sheet.setMargin(PageMargin.LEFT, 0.4);
    sheet.setMargin(PageMargin.RIGHT, 0.4);
    Pages.landscape(sheet, ChangeList.COLUMNS, rows.number());
  }

  private void sentence(String text) {
    rows.row().text(text, look.text(true));
    int row = rows.number() - 1;
    sheet.addMergedRegion(new CellRangeAddress(row, row, 0, ChangeList.COLUMNS - 1));
    rows.height(Heights.points(Heights.lines(text, ChangeList.width())));
  }

  private void band(String... headings) {
    rows.row();
    for (int i = 0; i < LABEL; i++) {
      rows.text(i == 0 ? headings[0] : "", look.band(false));
    }
    for (int i = 1; i < headings.length; i++) {
      rows.text(headings[i], look.band(true));
    }
  }

  /** What both come to. */
  private void totals() {
    band("Comes to", "A", "B", "B less A");
    amount("Net area of the lines that count", Quantity.AREA, totals -> totals.lines().areaFt2());
    amount("Paint of the job", Quantity.VOLUME, JobTotals::paintGal);
    amount("Hours of the job", Quantity.TIME, JobTotals::hours);
    if (compared.isPriced()) {
      figures(
          "Price before tax (" + CompareWords.currency(compared) + ")",
          price(compared.first()),
          price(compared.second()),
          2);
    }
  }

  private void amount(String label, Quantity quantity, Function<JobTotals, Double> amount) {
    figures(
        label + " (" + unit(quantity) + ")",
        shown(quantity, amount.apply(compared.first())),
        shown(quantity, amount.apply(compared.second())),
        2);
  }

  private void figures(String label, double one, double other, int decimals) {
    int row = rows.row().number();
    rows.text(label, look.strong())
        .skip(LABEL - 1)
        .number(one, look.number(decimals))
        .number(other, look.number(decimals))
        .formula("F%d-E%d".formatted(row, row), other - one, look.strongNumber(decimals));
  }

  /** The parts of the difference. */
  private void split() {
    boolean priced = compared.isPriced();
    band(
        "Of the difference",
        "Paint (" + unit(Quantity.VOLUME) + ")",
        "Hours",
        priced ? "Price" : "");
    int from = rows.number() + 1;
    List<Split> parts = Split.of(compared);
    for (Split part : parts) {
      if (!part.isThere() || (part.kind() == Split.Kind.PRICE && !priced)) {
        continue;
      }
      rows.row()
          .text(CompareWords.label(part), look.text(false))
          .skip(LABEL - 1)
          .number(shown(Quantity.VOLUME, part.paintGal()), look.sparse(2))
          .number(part.hours(), look.sparse(2));
      BigDecimal price = part.price();
      if (priced && price != null) {
        rows.number(price.doubleValue(), look.sparse(2));
      }
    }
    int to = rows.number();
    rows.row().text("Together", look.strong()).skip(LABEL - 1);
    double paint = compared.second().paintGal() - compared.first().paintGal();
    double hours = compared.second().hours() - compared.first().hours();
    rows.formula(
            "SUM(E%d:E%d)".formatted(from, to), shown(Quantity.VOLUME, paint), look.strongNumber(2))
        .formula("SUM(F%d:F%d)".formatted(from, to), hours, look.strongNumber(2));
    if (priced) {
      rows.formula(
          "SUM(G%d:G%d)".formatted(from, to),
          price(compared.second()) - price(compared.first()),
          look.strongNumber(2));
    }
  }

  private static double price(JobTotals totals) {
    Optional<Price> price = totals.price();
    return price.map(each -> each.beforeTax().doubleValue()).orElse(Double.NaN);
  }

  private String unit(Quantity quantity) {
    return quantity.unit(compared.system()).symbol();
  }

  private double shown(Quantity quantity, double base) {
    return quantity.shown(base, compared.system());
  }
}
