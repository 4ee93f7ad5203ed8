package org.wetmil.workbook.reconcile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.reconcile.use.MoneyVariance;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;
import org.wetmil.workbook.look.Texts;

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

    private String key(GroupUse group) {
      return this == JOB ? Keys.job(group.name()) : Keys.coating(group.name());
    }
  }

  private final Look look;
  private final Books books;
  private final UseRows uses;
  private final boolean money;

  GroupSheet(Look look, Books books, UseRows uses) {
    this.look = look;
    this.books = books;
    this.uses = uses;
    this.money = uses.costFirst() > 0;
  }

  void write(XSSFSheet sheet, By by) {
    List<GroupUse> groups = by == By.JOB ? books.result().byJob() : books.result().byCoating();
    Rows rows = Lists.now(sheet, look, columns(by), groups.size());
    PaintCells paint = new PaintCells(rows, look, books, FIGURES);
    AmountCells amounts = new AmountCells(rows, look, books);
    for (GroupUse group : groups) {
      String key = by.key(group);
      String is = Texts.criterion(key);
      rows.row().text(key, look.text(false));
      paint.write(
          sum(uses.paint(ReconcilePage.FIGURES), by, is),
          group.bidGal(),
          group.ledger(),
          column -> sum(uses.paint(ReconcilePage.FIGURES + column.ordinal()), by, is));
      if (money) {
        money(rows, by, is, group.money());
      }
      for (AmountCells.Lines lines : lines(by)) {
        amounts.write(lines, group, Books.is(by.field, key));
      }
    }
  }

  private List<Lists.Column> columns(By by) {
    List<String> headings = new ArrayList<>(PaintCells.headings(books));
    if (money) {
      headings.addAll(CostBlock.headings(books));
    }
    lines(by).forEach(lines -> headings.addAll(AmountCells.headings(lines, books)));
    List<Lists.Column> columns = new ArrayList<>(List.of(new Lists.Column(by.heading, 30)));
    headings.forEach(heading -> columns.add(new Lists.Column(heading, 12)));
    return columns;
  }

  /** A line without a coating belongs to a job, but to no coating. */
  private static List<AmountCells.Lines> lines(By by) {
    return by == By.JOB
        ? List.of(AmountCells.Lines.MATCHED, AmountCells.Lines.UNMATCHED)
        : List.of(AmountCells.Lines.MATCHED);
  }

  /** Blank where some part has no price. */
  private void money(Rows rows, By by, String is, MoneyVariance money) {
    for (int i = 0; i < CostBlock.TOTAL - CostBlock.USED + 1; i++) {
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
}
