package org.wetmil.workbook.reconcile;

import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.util.CellReference;
import org.wetmil.reconcile.Place;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.reconcile.match.Match;
import org.wetmil.reconcile.match.Reason;
import org.wetmil.reconcile.use.Tally;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;
import org.wetmil.workbook.look.Texts;

/** Whether every line and every cent that was read has its place. */
final class CountsBlock {
  private static final Tally NONE = new Tally();

  private final Rows rows;
  private final Look look;
  private final Books books;
  private final Reconciliation result;
  private final List<String> currencies;

  CountsBlock(Rows rows, Look look, Books books) {
    this.rows = rows;
    this.look = look;
    this.books = books;
    this.result = books.result();
    this.currencies = books.currencies();
  }

  void write() {
    rows.row().text("Lines and money", look.heading()).text("", look.heading());
    rows.text("Lines", look.heading());
    currencies.forEach(currency -> rows.text(books.amounts("Amount", currency), look.heading()));
    rows.row().text("Read from the ledgers", look.strong()).text("", null);
    int read = rows.number();
    rows.number(result.read().lines(), look.strongNumber(0));
    currencies.forEach(
        currency -> rows.number(money(result.read(), currency), look.strongNumber(2)));
    int first = rows.number() + 1;
    for (Match.How how : Match.How.values()) {
      place("Matched " + how.title(), how.title(), matched(how));
    }
    for (Reason reason : Reason.values()) {
      place(
          "Unmatched: " + reason.title(),
          reason.title(),
          result.reasons().getOrDefault(reason, NONE));
    }
    place("Outside the period", Place.OUTSIDE.title(), result.at(Place.OUTSIDE));
    place("Duplicates left out", Place.LEFT_OUT.title(), result.at(Place.LEFT_OUT));
    int last = rows.number();
    rows.row().text("Without a place", look.strong()).text("", null);
    for (int i = 0; i <= currencies.size(); i++) {
      String column = CellReference.convertNumToColString(2 + i);
      String formula =
          "ROUND(%1$s%2$d-SUM(%1$s%3$d:%1$s%4$d),2)".formatted(column, read, first, last);
      rows.formula(books.live(formula), 0, look.strongNumber(i == 0 ? 0 : 2));
    }
    int how = Match.How.values().length;
    inAll("Matched in all", result.at(Place.MATCHED), first, first + how - 1);
    int reasons = first + how;
    Tally unmatched = result.at(Place.UNMATCHED);
    inAll("Unmatched in all", unmatched, reasons, reasons + Reason.values().length - 1);
    rows.gap();
  }

  private void inAll(String label, Tally tally, int first, int last) {
    rows.row().text(label, look.strong()).text("", null);
    for (int i = 0; i <= currencies.size(); i++) {
      String column = CellReference.convertNumToColString(2 + i);
      double value = i == 0 ? tally.lines() : money(tally, currencies.get(i - 1));
      rows.formula(
          books.live("ROUND(SUM(%1$s%2$d:%1$s%3$d),2)".formatted(column, first, last)),
          value,
          look.strongNumber(i == 0 ? 0 : 2));
    }
  }

  private void place(String label, String state, Tally tally) {
    rows.row().text(label, look.text(false)).text("", null);
    String is = LedgerField.STATE.whole() + "," + Texts.criterion(state);
    rows.formula(books.live(Books.count(is)), tally.lines(), look.sparse(0));
    for (String currency : currencies) {
      String only = is + books.in(currency);
      rows.formula(
          books.live("ROUND(" + Books.sum(LedgerField.AMOUNT, only) + ",2)"),
          money(tally, currency),
          look.sparse(2));
    }
  }

  private static double money(Tally tally, String currency) {
    BigDecimal amount = tally.amount(currency);
    return amount.doubleValue();
  }

  private Tally matched(Match.How how) {
    Tally tally = new Tally();
    result.lines().stream()
        .filter(line -> line.isMatched() && line.how() == how)
        .forEach(line -> tally.add(line.line()));
    return tally;
  }
}
