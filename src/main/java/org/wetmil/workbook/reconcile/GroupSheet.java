package org.wetmil.workbook.reconcile;

import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.reconcile.use.MoneyVariance;
import org.wetmil.workbook.fill.Look;
import org.wetmil.workbook.fill.Rows;
import org.wetmil.workbook.fill.Texts;

/** The list of sums by coating or by job. */
final class GroupSheet {
  /** The first column of figures, after the name. */
  static final int FIGURES = 1;

  /** What is summed over. */
  enum By {
    COATING("Coating", 1, LedgerField.COATING),
    JOB("Job", 0, LedgerField.JOB);

    private final String heading;
    private final int column;
    private final LedgerField field;

    By(String heading, int column, LedgerField field) {
      this.heading = heading;
      this.column = column;
      this.field = field;
    }
  }

  private final XSSFSheet sheet;
  private final Look look;
  private final Books books;
  private final UseRows uses;
  private final Rows rows;
  private final AmountCells amounts;

  GroupSheet(XSSFSheet sheet, Look look, Books books, UseRows uses) {
    this.sheet = sheet;
    this.look = look;
    this.books = books;
    this.uses = uses;
    this.rows = new Rows(sheet);
    this.amounts = new AmountCells(rows, look, books);
  }

  void write(By by) {
    boolean money = uses.costFirst() > 0;
    rows.row().text(by.heading, look.heading());
    PaintCells cells = new PaintCells(rows, look, books, FIGURES);
    cells.headings();
    if (money) {
      for (String heading :
          List.of(
              "Used at the price paid",
              "Bid at the price bid",
              "Variance by price",
              "Variance by quantity",
              "Variance in all")) {
        rows.text(heading + books.money(), look.heading());
      }
    }
    amounts.headings(AmountCells.Lines.MATCHED);
    if (by == By.JOB) {
      amounts.headings(AmountCells.Lines.UNMATCHED);
    }
    List<GroupUse> groups = by == By.JOB ? books.result().byJob() : books.result().byCoating();
    for (GroupUse group : groups) {
      write(by, group, cells, money);
    }
    widths(rows.number());
  }

  private void write(By by, GroupUse group, PaintCells cells, boolean money) {
    String key = by == By.JOB ? Keys.job(group.name()) : Keys.plain(group.name());
    String is = Texts.criterion(key);
    rows.row().text(key, look.text(false));
    cells.write(
        sum(uses.paint(ReconcilePage.FIGURES), by, is),
        group.bidGal(),
        group.ledger(),
        column -> sum(uses.paint(ReconcilePage.FIGURES + column.ordinal()), by, is));
    if (money) {
      money(by, is, group.money());
    }
    String ofGroup = Books.is(by.field, key);
    amounts.write(AmountCells.Lines.MATCHED, group, ofGroup);
    if (by == By.JOB) {
      amounts.write(AmountCells.Lines.UNMATCHED, group, ofGroup);
    }
  }

  /** Blank where some part has no price. */
  private void money(By by, String is, MoneyVariance money) {
    for (int i = 0; i < 5; i++) {
      if (money == null) {
        rows.text("", look.number(2));
        continue;
      }
      BigDecimal value =
          List.of(money.actual(), money.bid(), money.price(), money.quantity(), money.total())
              .get(i);
      String formula =
          "ROUND(SUMIFS(%s,%s,%s),2)"
              .formatted(uses.cost(CostBlock.USED + i), uses.cost(by.column), is);
      rows.formula(books.live(formula), value.doubleValue(), look.number(2));
    }
  }

  private String sum(String summed, By by, String is) {
    return "SUMIFS(" + summed + "," + uses.paint(by.column) + "," + is + ")";
  }

  private void widths(int last) {
    int columns = sheet.getRow(0).getLastCellNum();
    sheet.setColumnWidth(0, 30 * 256);
    for (int i = 1; i < columns; i++) {
      sheet.setColumnWidth(i, 12 * 256);
    }
    Lists.shape(sheet, columns, last);
  }
}
