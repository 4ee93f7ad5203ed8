package org.wetmil.workbook.reconcile;

import java.util.Comparator;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.Place;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.reconcile.match.Reason;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of lines that are matched to no coating, those to act on first. */
final class UnmatchedSheet {
  private static final List<Lists.Column> COLUMNS =
      List.of(
          new Lists.Column("Reason", 24),
          new Lists.Column("Date", 11),
          new Lists.Column("Job", 24),
          new Lists.Column("Item", 40),
          new Lists.Column("Quantity", 10),
          new Lists.Column("Unit", 13),
          new Lists.Column("Amount", 12),
          new Lists.Column("Currency", 10),
          new Lists.Column("Document", 12),
          new Lists.Column("Kind", 13),
          new Lists.Column("File", 28),
          new Lists.Column("Line", 7),
          new Lists.Column("What may be meant", 44));

  private final LineCells cells;

  UnmatchedSheet(Look look) {
    this.cells = new LineCells(look);
  }

  void write(XSSFSheet sheet, Look look, List<PlacedLine> lines) {
    List<PlacedLine> unmatched =
        lines.stream()
            .filter(line -> line.place() == Place.UNMATCHED)
            .sorted(Comparator.comparing(PlacedLine::reason))
            .toList();
    Lists.later(
        sheet,
        look,
        COLUMNS,
        unmatched.size(),
        rows -> unmatched.forEach(line -> write(rows, line)));
  }

  private void write(Rows rows, PlacedLine placed) {
    LedgerLine line = placed.line();
    cells.text(rows.row(), placed.reason().title());
    cells.date(rows, line);
    cells.job(rows, placed);
    cells.item(rows, line);
    cells.quantity(rows, line);
    cells.text(rows, line.text(LedgerColumn.UNIT));
    cells.amount(rows, line);
    cells.currency(rows, line);
    cells.text(rows, line.text(LedgerColumn.DOCUMENT));
    cells.text(rows, line.kind().title());
    cells.text(rows, line.file());
    cells.lineNumber(rows, line);
    cells.text(rows, meant(placed));
  }

  private static String meant(PlacedLine placed) {
    return placed.suggestion().isEmpty() && placed.reason() == Reason.NO_SUCH_COATING
        ? "no name is near; name the item in the item table"
        : String.join("; ", placed.suggestion());
  }
}
