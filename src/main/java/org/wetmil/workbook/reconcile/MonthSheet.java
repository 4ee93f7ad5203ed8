package org.wetmil.workbook.reconcile;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of what the ledgers say by month; a bid has no month. */
final class MonthSheet {
  private final Look look;
  private final Books books;

  MonthSheet(Look look, Books books) {
    this.look = look;
    this.books = books;
  }

  void write(XSSFSheet sheet) {
    List<GroupUse> months = books.result().byMonth();
    Rows rows = Lists.now(sheet, look, columns(), months.size());
    AmountCells amounts = new AmountCells(rows, look, books);
    for (GroupUse month : months) {
      String days = days(month.name());
      paint(rows.row().text(month.name(), look.text(false)), month, days);
      for (AmountCells.Lines lines : AmountCells.Lines.values()) {
        amounts.write(lines, month, days);
      }
    }
  }

  private List<Lists.Column> columns() {
    List<String> headings = new ArrayList<>(List.of("Month"));
    for (PaintColumn column : PaintColumn.values()) {
      if (column.kind() != null) {
        headings.add(column.heading(books.volumeUnit()));
      }
    }
    headings.add(PaintColumn.USED.heading(books.volumeUnit()));
    for (AmountCells.Lines lines : AmountCells.Lines.values()) {
      headings.addAll(AmountCells.headings(lines, books));
    }
    return headings.stream().map(heading -> new Lists.Column(heading, 12)).toList();
  }

  private void paint(Rows rows, GroupUse group, String days) {
    String counted = LedgerField.COATING.whole() + ",\"<>\"";
    for (PaintColumn column : PaintColumn.values()) {
      if (column.kind() != null) {
        rows.formula(
            live(days, Books.sum(LedgerField.VOLUME, days, counted, Books.is(column.kind()))),
            books.volume(group.ledger().gallons(column.kind())),
            look.sparse(2));
      }
    }
    // the columns of the kinds are where those of the page are, less names and bid
    rows.formula(
        books.live(PaintColumn.used(0, rows.number())),
        books.volume(group.usedGal()),
        look.strongNumber(2));
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
