package org.wetmil.workbook.reconcile;

import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of every ledger line, once, matched or not. */
final class LedgerSheet {
  private final LineCells cells;
  private final Books books;

  LedgerSheet(Look look, Books books) {
    this.cells = new LineCells(look);
    this.books = books;
  }

  void write(XSSFSheet sheet, Look look) {
    List<Lists.Column> columns =
        Stream.of(LedgerField.values())
            .map(field -> new Lists.Column(heading(field), field.width()))
            .toList();
    List<PlacedLine> lines = books.result().lines();
    Lists.later(
        sheet, look, columns, lines.size(), rows -> lines.forEach(line -> write(rows, line)));
  }

  private String heading(LedgerField field) {
    return field == LedgerField.VOLUME
        ? field.heading() + " (" + books.volumeUnit() + ")"
        : field.heading();
  }

  private void write(Rows rows, PlacedLine placed) {
    LedgerLine line = placed.line();
    rows.row();
    for (LedgerField field : LedgerField.values()) {
      switch (field) {
        case DATE -> cells.date(rows, line);
        case JOB -> cells.job(rows, placed);
        case ITEM -> cells.item(rows, line);
        case COATING -> cells.text(rows, Books.coating(placed));
        case QUANTITY -> cells.quantity(rows, line);
        case UNIT -> cells.text(rows, line.text(LedgerColumn.UNIT));
        case VOLUME -> cells.volume(rows, books.volume(line.volumeGal()));
        case AMOUNT -> cells.amount(rows, line);
        case CURRENCY -> cells.currency(rows, line);
        case DOCUMENT -> cells.text(rows, line.text(LedgerColumn.DOCUMENT));
        case KIND -> cells.text(rows, line.kind().title());
        case FILE -> cells.text(rows, line.file());
        case LINE -> cells.lineNumber(rows, line);
        case STATE -> cells.text(rows, placed.state());
      }
    }
  }
}
