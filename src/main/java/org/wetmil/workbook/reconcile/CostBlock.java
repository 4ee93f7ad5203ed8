package org.wetmil.workbook.reconcile;

import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.util.CellReference;
import org.wetmil.ledger.LineKind;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.reconcile.use.MoneyVariance;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** What price and quantity did to the cost, by job and coating; where prices are stated. */
final class CostBlock {
  static final int USED = ReconcilePage.FIGURES + 2;
  static final int BID = USED + 1;
  static final int PRICE = USED + 2;
  static final int QUANTITY = USED + 3;
  static final int TOTAL = USED + 4;

  private static final List<String> MONEY =
      List.of(
          "Used at the price paid",
          "Bid at the price bid",
          "Variance by price",
          "Variance by quantity",
          "Variance in all");

  private final Rows rows;
  private final Look look;
  private final Books books;
  private final int paintFirst;

  CostBlock(Rows rows, Look look, Books books, int paintFirst) {
    this.rows = rows;
    this.look = look;
    this.books = books;
    this.paintFirst = paintFirst;
  }

  /** The headings of the amounts, which lists of groups have, too. */
  static List<String> headings(Books books) {
    return MONEY.stream().map(heading -> heading + books.money()).toList();
  }

  boolean isNeeded() {
    return books.result().uses().stream().anyMatch(use -> use.money() != null);
  }

  int write() {
    rows.row().text("What it cost", look.block());
    rows.underline(ReconcilePage.COLUMNS, look.block());
    rows.row().text("Job", look.heading()).text("Coating", look.heading());
    String each = " a " + books.volumeUnit() + books.money();
    rows.text("Price paid" + each, look.heading()).text("Price bid" + each, look.heading());
    headings(books).forEach(heading -> rows.text(heading, look.heading()));
    rows.height(Lists.HEADINGS_PT);
    int first = rows.number() + 1;
    for (CoatingUse use : books.result().uses()) {
      ReconcilePage.names(rows.row(), use, look);
      if (use.money() != null) {
        write(use, paintFirst + rows.number() - first);
      }
    }
    total(first, rows.number());
    rows.gap();
    return first;
  }

  private void write(CoatingUse use, int paintRow) {
    int row = rows.number();
    String paid = "C" + row;
    String bid = use.bid().pricePerGal() == null ? paid : "D" + row;
    String used = PaintColumn.USED.at(ReconcilePage.FIGURES, paintRow);
    String volumeBid = PaintColumn.BID.at(ReconcilePage.FIGURES, paintRow);
    MoneyVariance money = use.money();
    rows.formula(books.live(pricePaid(use)), books.price(use.pricePaid()), look.number(2))
        .number(books.price(use.bid().pricePerGal()), look.number(2));
    money("ROUND(" + used + "*" + paid + ",2)", money.actual());
    money("ROUND(" + volumeBid + "*" + bid + ",2)", money.bid());
    money("E%d-ROUND(%s*%s,2)".formatted(row, used, bid), money.price());
    money("ROUND(%s*%s,2)-F%d".formatted(used, bid, row), money.quantity());
    money("G%1$d+H%1$d".formatted(row), money.total());
  }

  private void money(String formula, BigDecimal value) {
    rows.formula(books.live("ROUND(" + formula + ",2)"), value.doubleValue(), look.number(2));
  }

  /** Amount by volume of the purchases that state both: of this job, or else of all jobs. */
  private String pricePaid(CoatingUse use) {
    String both =
        Books.is(LineKind.PURCHASE)
            + ","
            + LedgerField.AMOUNT.whole()
            + ",\">=0\","
            + LedgerField.VOLUME.whole()
            + ",\">=0\""
            + books.inCurrency();
    String keys =
        use.ledger().pricePerGal() == null
            ? Books.is(LedgerField.COATING, Keys.coating(use.coating()))
            : ReconcilePage.keys(use);
    return Books.sum(LedgerField.AMOUNT, keys, both)
        + "/"
        + Books.sum(LedgerField.VOLUME, keys, both);
  }

  private void total(int first, int last) {
    MoneyVariance sum =
        books.result().uses().stream()
            .filter(use -> use.money() != null)
            .map(CoatingUse::money)
            .reduce(MoneyVariance.NOTHING, MoneyVariance::plus);
    rows.row().text("All that are priced", look.strong()).text("", null).text("", null);
    rows.text("", null);
    List<BigDecimal> values =
        List.of(sum.actual(), sum.bid(), sum.price(), sum.quantity(), sum.total());
    for (int i = 0; i < values.size(); i++) {
      String column = CellReference.convertNumToColString(USED + i);
      String formula = "ROUND(SUM(%1$s%2$d:%1$s%3$d),2)".formatted(column, first, last);
      rows.formula(books.live(formula), values.get(i).doubleValue(), look.strongNumber(2));
    }
  }
}
