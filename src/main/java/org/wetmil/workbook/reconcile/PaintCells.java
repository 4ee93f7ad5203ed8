package org.wetmil.workbook.reconcile;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.wetmil.reconcile.use.KindSums;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** Writes bid, what the ledgers say and the variance into one row. */
final class PaintCells {
  private final Rows rows;
  private final Look look;
  private final Books books;
  private final int firstColumn;

  PaintCells(Rows rows, Look look, Books books, int firstColumn) {
    this.rows = rows;
    this.look = look;
    this.books = books;
    this.firstColumn = firstColumn;
  }

  static List<String> headings(Books books) {
    return Stream.of(PaintColumn.values())
        .map(column -> column.heading(books.volumeUnit()))
        .toList();
  }

  /**
   * Writes one row.
   *
   * @param bidFormula null where the bid is a value
   * @param ofKind the formula of a column of a kind
   */
  void write(
      String bidFormula, double bidGal, KindSums ledger, Function<PaintColumn, String> ofKind) {
    int row = rows.number();
    double bid = books.volume(bidGal);
    double used = books.volume(ledger.usedGal());
    XSSFCellStyle plain = look.number(2);
    rows.formula(books.live(bidFormula), bid, plain);
    for (PaintColumn column : PaintColumn.values()) {
      if (column.kind() != null) {
        double value = books.volume(ledger.gallons(column.kind()));
        rows.formula(books.live(ofKind.apply(column)), value, look.sparse(2));
      }
    }
    rows.formula(books.live(PaintColumn.used(firstColumn, row)), used, look.strongNumber(2))
        .formula(
            books.live(PaintColumn.variance(firstColumn, row)), used - bid, look.strongNumber(2))
        .formula(
            books.live(PaintColumn.share(firstColumn, row)),
            (used - bid) / bid * 100,
            look.number(1));
  }
}
