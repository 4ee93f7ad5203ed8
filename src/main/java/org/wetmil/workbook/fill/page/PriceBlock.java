package org.wetmil.workbook.fill.page;

import java.math.BigDecimal;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.estimate.price.CostItem.Kind;
import org.wetmil.estimate.price.Price;
import org.wetmil.estimate.price.PriceTerms;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.look.Canvas;
import org.wetmil.workbook.look.Look;

/**
 * How the price comes about, for the contractor's eyes: direct cost by kind, overhead, profit and
 * what leads from there to the price. Formulas repeat the rounding of the price itself.
 */
final class PriceBlock {
  private final Canvas page;
  private final Look look;
  private final FilledBid filled;
  private final BasisBook basis;
  private final Coin coin;
  private int next;
  private int directRow;

  PriceBlock(Canvas page, Look look, FilledBid filled, BasisBook basis, Coin coin) {
    this.page = page;
    this.look = look;
    this.filled = filled;
    this.basis = basis;
    this.coin = coin;
  }

  /**
   * Rows of the page from 0: the direct cost, the price before tax, the price to be paid, and the
   * row after.
   */
  record Written(int direct, int beforeTax, int total, int next) {}

  /**
   * @param hoursAt the cell of the job's hours
   * @param order the sheet of the order
   */
  Written write(int row, Price price, JobHours hours, String hoursAt, String order) {
    Catalogue catalogue = filled.bid().catalogue();
    next = row;
    page.text(next, SummarySheet.LABEL, "Price", look.band(false))
        .text(next, SummarySheet.COUNT, "Of it", look.band(true))
        .text(next, SummarySheet.VALUE, catalogue.text(Setting.CURRENCY), look.band(true))
        .across(next, SummarySheet.LABEL, SummarySheet.UNIT, look.band(false));
    next++;
    int first = next;
    page.formula(next, SummarySheet.COUNT, hoursAt, hours.number(JobFigure.TOTAL), look.number(1));
    String wage = basis.reference(Setting.LABOUR_RATE) + "*(1+" + name(Setting.BURDEN) + ")";
    String labour =
        part("Labour, h", coin.rounded(hoursAt + "*" + wage), price.amount(Kind.LABOUR));
    String paint =
        part(
            "Paint, as on the order",
            "SUM(" + OrderColumn.AMOUNT.whole(order) + ")",
            price.amount(Kind.MATERIAL));
    String both = labour + "+" + paint;
    share(Setting.SUNDRIES);
    part(
        "Sundries",
        coin.rounded(name(Setting.SUNDRIES) + "*(" + both + ")"),
        price.amount(Kind.SUNDRIES));
    for (Setting stated : new Setting[] {Setting.EQUIPMENT, Setting.ACCESS}) {
      if (catalogue.entry(stated).isStated()) {
        Kind kind = stated == Setting.ACCESS ? Kind.ACCESS : Kind.EQUIPMENT;
        part(stated.title(), coin.rounded(basis.reference(stated)), price.amount(kind));
      }
    }
    if (catalogue.number(Setting.TAX_ON_MATERIAL) > 0) {
      share(Setting.TAX_ON_MATERIAL);
      part(
          "Tax on material",
          coin.rounded(name(Setting.TAX_ON_MATERIAL) + "*" + paint),
          price.amount(Kind.TAX));
    }
    String of = Canvas.range(first, next - 1, SummarySheet.VALUE);
    directRow = next;
    String direct = total("Direct cost", "SUM(" + of + ")", price.direct());
    return asked(price, terms(price, direct, PriceTerms.of(catalogue)), direct);
  }

  /** Overhead and profit; gives the sum of them and the direct cost as a formula. */
  private String terms(Price price, String direct, PriceTerms terms) {
    String overheadShare = name(Setting.OVERHEAD);
    String profitShare = name(Setting.PROFIT);
    String overhead;
    String profit;
    String at = Canvas.at(next, SummarySheet.VALUE);
    switch (terms.profitAs()) {
      case MARK_UP -> {
        overhead = coin.rounded(direct + "*" + overheadShare);
        profit = coin.rounded("(" + direct + "+" + at + ")*" + profitShare);
      }
      case MARK_UP_ON_DIRECT -> {
        overhead = coin.rounded(direct + "*" + overheadShare);
        profit = coin.rounded(direct + "*" + profitShare);
      }
      default -> {
        String kept = "(1-" + overheadShare + "-" + profitShare + ")";
        String whole = coin.rounded(direct + "/" + kept);
        overhead = coin.rounded(whole + "*" + overheadShare);
        profit = whole + "-" + direct + "-" + at;
      }
    }
    share(Setting.OVERHEAD);
    part("Overhead, " + terms.profitAs().word(), overhead, price.overhead());
    share(Setting.PROFIT);
    String last = part("Profit, " + terms.profitAs().word(), profit, price.profit());
    return direct + "+" + at + "+" + last;
  }

  private Written asked(Price price, String computed, String direct) {
    String sum = computed;
    String minimum = basis.reference(Setting.MINIMUM_CHARGE);
    if (minimum != null) {
      String lift = "MAX(0," + minimum + "-(" + sum + "))";
      sum += "+" + part("To the minimum charge", lift, price.toMinimum());
    }
    String step = basis.reference(Setting.ROUNDING_STEP);
    if (step != null && filled.bid().catalogue().number(Setting.ROUNDING_STEP) > 0) {
      String stepped = "ROUND((" + sum + ")/" + step + ",0)*" + step;
      sum += "+" + part("Rounding", stepped + "-(" + sum + ")", price.rounding());
    }
    String asked = basis.reference(Setting.PRICE_ASKED);
    if (asked != null) {
      sum += "+" + part("To the price asked", asked + "-(" + sum + ")", price.adjustment());
    }
    int before = next;
    String beforeTax = total("Price before tax", sum, price.beforeTax());
    String taxShare = name(Setting.TAX_ON_PRICE);
    boolean taxed = filled.bid().catalogue().number(Setting.TAX_ON_PRICE) > 0;
    if (taxed) {
      boolean onTop = filled.bid().catalogue().text(Setting.TAX_AS).equals("on top");
      String share = onTop ? taxShare : taxShare + "/(1-" + taxShare + ")";
      share(Setting.TAX_ON_PRICE);
      String tax = part("Tax on price", coin.rounded(beforeTax + "*" + share), price.tax());
      total("To be paid", beforeTax + "+" + tax, price.total());
    }
    int total = next - 1;
    ratio("Mark-up on direct cost", beforeTax, direct, direct, price.markUp());
    ratio("Margin of the price", beforeTax, direct, beforeTax, price.margin());
    return new Written(directRow, before, total, next);
  }

  private void ratio(String label, String price, String direct, String of, BigDecimal value) {
    if (value != null) {
      page.text(next, SummarySheet.LABEL, label, look.text(false));
      page.formula(
          next++,
          SummarySheet.VALUE,
          "(" + price + "-" + direct + ")/" + of,
          value.doubleValue(),
          look.percent());
    }
  }

  /** The share that a row takes, beside its label. */
  private void share(Setting setting) {
    double value = filled.bid().catalogue().number(setting);
    if (!Double.isNaN(value)) {
      page.formula(next, SummarySheet.COUNT, basis.reference(setting), value, look.percent());
    }
  }

  private String part(String label, String formula, BigDecimal amount) {
    return row(label, look.text(false), formula, amount, coin.look());
  }

  private String total(String label, String formula, BigDecimal amount) {
    return row(label, look.strong(), formula, amount, coin.strong());
  }

  /** Writes a row and gives the cell of its amount. */
  private String row(
      String label, XSSFCellStyle words, String formula, BigDecimal amount, XSSFCellStyle figures) {
    page.text(next, SummarySheet.LABEL, label, words);
    page.formula(next, SummarySheet.VALUE, formula, amount.doubleValue(), figures);
    return Canvas.at(next++, SummarySheet.VALUE);
  }

  /** A setting that counts as 0 where it is not stated. */
  private String name(Setting setting) {
    String name = basis.reference(setting);
    return name == null ? "0" : name;
  }
}
