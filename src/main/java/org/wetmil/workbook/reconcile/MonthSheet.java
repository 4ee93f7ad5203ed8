package org.wetmil.workbook.reconcile;

import java.time.YearMonth;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.workbook.fill.Look;
import org.wetmil.workbook.fill.Rows;

/** The list of what the ledgers say by month; a bid has no month. */
final class MonthSheet {
  private final XSSFSheet sheet;
  private final Look look;
  private final Books books;
  private final Rows rows;
  private final AmountCells amounts;

  MonthSheet(XSSFSheet sheet, Look look, Books books) {
    this.sheet = sheet;
    this.look = look;
    this.books = books;
    this.rows = new Rows(sheet);
    this.amounts = new AmountCells(rows, look, books);
  }

  void write() {
    rows.row().text("Month", look.heading());
    for (PaintColumn column : PaintColumn.values()) {
      if (column.kind() != null) {
        rows.text(column.heading(books.volumeUnit()), look.heading());
      }
    }
    rows.text(PaintColumn.USED.heading(books.volumeUnit()), look.heading());
    amounts.headings(AmountCells.Lines.MATCHED);
    amounts.headings(AmountCells.Lines.UNMATCHED);
    books.result().byMonth().forEach(this::month);
    int columns = sheet.getRow(0).getLastCellNum();
    for (int i = 0; i < columns; i++) {
      sheet.setColumnWidth(i, 12 * 256);
    }
    Lists.shape(sheet, columns, rows.number());
  }

  private void month(GroupUse group) {
    String days = days(group.name());
    String counted = LedgerField.COATING.whole() + ",\"<>\"";
    rows.row().text(group.name(), look.text(false));
    for (PaintColumn column : PaintColumn.values()) {
      if (column.kind() != null) {
        rows.formula(
            live(days, Books.sum(LedgerField.VOLUME, days, counted, Books.is(column.kind()))),
            books.volume(group.ledger().gallons(column.kind())),
            look.sparse(2));
      }
    }
    int row = rows.number();
    // the columns of the kinds are where those of the page are, less names and bid
    rows.formula(
        books.live(PaintColumn.used(0, row)), books.volume(group.usedGal()), look.strongNumber(2));
    amounts.write(AmountCells.Lines.MATCHED, group, days);
    amounts.write(AmountCells.Lines.UNMATCHED, group, days);
  }

  /** Lines without a date are summed by value: what stands there may be any text. */
  private String live(String days, String formula) {
    return days.isEmpty() ? null : books.live(formula);
  }

  private static String days(String month) {
    if (!month.matches("\\d{4,}-\\d\\d")) {
      return "";
    }
    YearMonth from = YearMonth.parse(month);
    YearMonth to = from.plusMonths(1);
    String whole = LedgerField.DATE.whole();
    return "%s,\">=\"&DATE(%d,%d,1),%s,\"<\"&DATE(%d,%d,1)"
        .formatted(
            whole, from.getYear(), from.getMonthValue(), whole, to.getYear(), to.getMonthValue());
  }
}
