package org.wetmil.workbook.reconcile;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.function.Predicate;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.reconcile.Place;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.workbook.fill.Look;
import org.wetmil.workbook.fill.Rows;

/** The list of what the ledgers say by month; a bid has no month. */
final class MonthSheet {
  private final XSSFSheet sheet;
  private final Look look;
  private final Books books;
  private final Rows rows;

  MonthSheet(XSSFSheet sheet, Look look, Books books) {
    this.sheet = sheet;
    this.look = look;
    this.books = books;
    this.rows = new Rows(sheet);
  }

  void write() {
    rows.row().text("Month", look.heading());
    for (PaintColumn column : PaintColumn.values()) {
      if (column.kind() != null) {
        rows.text(column.heading(books.volumeUnit()), look.heading());
      }
    }
    rows.text(PaintColumn.USED.heading(books.volumeUnit()), look.heading())
        .text("Matched amount" + books.money(), look.heading())
        .text("Unmatched amount" + books.money(), look.heading());
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
    rows.formula(
        live(
            days,
            "ROUND(" + Books.sum(LedgerField.AMOUNT, days, counted + books.inCurrency()) + ",2)"),
        matched(group.name()),
        look.number(2));
    rows.formula(
        live(
            days,
            "ROUND("
                + Books.sum(
                    LedgerField.AMOUNT,
                    days,
                    LedgerField.COATING.whole() + ",\"=\"",
                    LedgerField.STATE.whole() + ",\"<>outside the period\"",
                    LedgerField.STATE.whole() + ",\"<>duplicate, left out\"" + books.inCurrency())
                + ",2)"),
        group.unmatched().doubleValue(),
        look.number(2));
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

  private double matched(String month) {
    Predicate<PlacedLine> inMonth =
        line ->
            line.line().date() == null
                ? !month.matches("\\d{4,}-\\d\\d")
                : YearMonth.from(line.line().date()).toString().equals(month);
    List<PlacedLine> lines =
        books.result().lines().stream()
            .filter(line -> line.place() == Place.MATCHED)
            .filter(inMonth)
            .filter(line -> line.line().amount() != null)
            .filter(line -> line.line().currency().equals(books.result().currency()))
            .toList();
    return lines.stream()
        .map(line -> line.line().amount())
        .reduce(BigDecimal.ZERO, BigDecimal::add)
        .doubleValue();
  }
}
