package org.wetmil.workbook.reconcile;

import java.util.List;
import org.wetmil.reconcile.Place;
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.reconcile.use.Tally;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** Writes the amounts of some lines as the ledgers have them, a column for each currency. */
final class AmountCells {
  /** Which lines: those that count, or those inside the period that belong to no coating. */
  enum Lines {
    MATCHED("Matched amount", LedgerField.COATING.whole() + ",\"<>\""),
    UNMATCHED(
        "Unmatched amount",
        LedgerField.COATING.whole()
            + ",\"=\","
            + LedgerField.STATE.whole()
            + ",\"<>"
            + Place.OUTSIDE.title()
            + "\","
            + LedgerField.STATE.whole()
            + ",\"<>"
            + Place.LEFT_OUT.title()
            + "\"");

    private final String heading;
    private final String criteria;

    Lines(String heading, String criteria) {
      this.heading = heading;
      this.criteria = criteria;
    }

    private Tally of(GroupUse group) {
      return this == MATCHED ? group.matched() : group.unmatched();
    }
  }

  private final Rows rows;
  private final Look look;
  private final Books books;

  AmountCells(Rows rows, Look look, Books books) {
    this.rows = rows;
    this.look = look;
    this.books = books;
  }

  static List<String> headings(Lines lines, Books books) {
    return books.currencies().stream()
        .map(currency -> books.amounts(lines.heading, currency))
        .toList();
  }

  /**
   * Writes the amounts of a group.
   *
   * @param is the criterion of its lines; empty for values without a formula
   */
  void write(Lines lines, GroupUse group, String is) {
    for (String currency : books.currencies()) {
      String sum = Books.sum(LedgerField.AMOUNT, is, lines.criteria + books.in(currency));
      String formula = is.isEmpty() ? null : books.live("ROUND(" + sum + ",2)");
      rows.formula(formula, lines.of(group).amount(currency).doubleValue(), look.sparse(2));
    }
  }
}
