package org.wetmil.workbook.reconcile;

import org.wetmil.quantity.Quantity;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** What alone would explain the use: a loss, a spread or a film, each with the others as bid. */
final class ExplainBlock {
  private final Rows rows;
  private final Look look;
  private final Books books;
  private final int paintFirst;

  ExplainBlock(Rows rows, Look look, Books books, int paintFirst) {
    this.rows = rows;
    this.look = look;
    this.books = books;
    this.paintFirst = paintFirst;
  }

  void write() {
    rows.row().text("What would explain the use, each alone with the rest as bid", look.block());
    rows.underline(ReconcilePage.COLUMNS, look.block());
    rows.row().text("Job", look.heading()).text("Coating", look.heading());
    String spread = " (" + books.symbol(Quantity.SPREAD) + ")";
    String film = " (" + books.symbol(Quantity.FILM) + ")";
    rows.text("Coats bid", look.heading())
        .text("Loss bid (%)", look.heading())
        .text("Loss that explains (%)", look.heading())
        .text("Spread of a coat bid" + spread, look.heading())
        .text("Spread found" + spread, look.heading())
        .text("Dry film of a coat bid" + film, look.heading())
        .text("Dry film that explains" + film, look.heading());
    rows.height(Lists.HEADINGS_PT);
    int first = rows.number() + 1;
    for (CoatingUse use : books.result().uses()) {
      ReconcilePage.names(rows.row(), use, look);
      write(use, paintFirst + rows.number() - first);
    }
    rows.gap();
  }

  private void write(CoatingUse use, int paintRow) {
    int row = rows.number();
    String used = PaintColumn.USED.at(ReconcilePage.FIGURES, paintRow);
    String bid = PaintColumn.BID.at(ReconcilePage.FIGURES, paintRow);
    double lossBid = 100 * (1 - use.bid().transferEfficiency());
    double spreadBid = spread(use.bid().coatedFt2() / use.bid().paintGal());
    rows.number(use.bid().coats(), look.number(1)).number(lossBid, look.number(1));
    explained(
        use, used, "100-(100-D%d)*%s/%s".formatted(row, bid, used), 100 * use.impliedLoss(), 1);
    rows.number(spreadBid, look.number(0));
    explained(
        use, used, "F%d*%s/%s".formatted(row, bid, used), spread(use.impliedSpreadFt2PerGal()), 0);
    rows.number(film(use.bid().dryMil()), look.number(2));
    explained(use, used, "H%d*%s/%s".formatted(row, used, bid), film(use.impliedDryMil()), 2);
  }

  /** A figure that is blank as long as nothing is used. */
  private void explained(CoatingUse use, String used, String formula, double value, int decimals) {
    String whole = books.live("IF(" + used + ">0.000001," + formula + ",\"\")");
    if (use.isUsed()) {
      rows.formula(whole, value, look.number(decimals));
    } else if (whole == null) {
      rows.text("", look.number(decimals));
    } else {
      rows.formula(whole, "", look.number(decimals));
    }
  }

  private double spread(double ft2PerGal) {
    return Quantity.SPREAD.shown(ft2PerGal, books.system());
  }

  private double film(double mil) {
    return Quantity.FILM.shown(mil, books.system());
  }
}
