package org.wetmil.workbook.reconcile;

import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.ledger.LineKind;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.workbook.look.FindingsList;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** The first page: whether everything adds up, then paint, cost and explanation by coating. */
final class ReconcilePage {
  static final String NAME = "Reconcile";

  /** The first column of figures, after job and coating. */
  static final int FIGURES = 2;

  /** How wide a column of figures is, in characters. */
  static final int FIGURE_WIDTH = 11;

  private static final int TOLERANCE = FIGURES + PaintColumn.values().length;

  /** All columns: the last holds the word of the flag. */
  static final int COLUMNS = TOLERANCE + 2;

  static final String NO_USES =
      "No line of the bids has an amount of paint, so that nothing is compared; see to the findings"
          + " of the bids with the command fill.";

  private final XSSFSheet sheet;
  private final Look look;
  private final Books books;
  private final Rows rows;
  private final List<CoatingUse> uses;

  ReconcilePage(XSSFSheet sheet, Look look, Books books) {
    this.sheet = sheet;
    this.look = look;
    this.books = books;
    this.rows = new Rows(sheet);
    this.uses = books.result().uses();
  }

  /**
   * Writes the page.
   *
   * @param findings how many there are
   */
  UseRows write(int findings) {
    rows.row().text("Paint bought against paint bid", look.title());
    rows.row().text(Headline.period(books.result()), look.text(false));
    if (!books.live()) {
      rows.row()
          .text(
              String.format(
                  Locale.ROOT,
                  "The ledgers have more than %,d lines: figures here are values and follow no"
                      + " change.",
                  Books.MOST_LIVE_LINES),
              look.strong());
    }
    FindingsList.leftOut(findings).ifPresent(sentence -> rows.row().text(sentence, look.strong()));
    if (uses.isEmpty()) {
      rows.row().text(NO_USES, look.strong());
    }
    books.apart().ifPresent(sentence -> rows.row().text(sentence, look.strong()));
    rows.gap();
    new CountsBlock(rows, look, books).write();
    while (rows.number() < UseChart.LAST_ROW) {
      rows.gap();
    }
    UseRows written = uses.isEmpty() ? UseRows.NONE : uses();
    widths();
    Pages.landscape(sheet, COLUMNS, rows.number());
    Pages.narrowMargins(sheet);
    return written;
  }

  private UseRows uses() {
    int paint = paint();
    new FlagBlock(sheet, rows, look).write(books.result().flags());
    CostBlock cost = new CostBlock(rows, look, books, paint);
    int costFirst = cost.isNeeded() ? cost.write() : 0;
    new ExplainBlock(rows, look, books, paint).write();
    return new UseRows(paint, costFirst, uses.size());
  }

  private int paint() {
    block("Paint by job and coating");
    rows.row().text("Job", look.heading()).text("Coating", look.heading());
    PaintCells cells = new PaintCells(rows, look, books, FIGURES);
    PaintCells.headings(books).forEach(heading -> rows.text(heading, look.heading()));
    rows.text("Tolerance (" + books.volumeUnit() + ")", look.heading())
        .text("Flag", look.heading());
    rows.height(Lists.HEADINGS_PT);
    int first = rows.number() + 1;
    for (CoatingUse use : uses) {
      String keys = keys(use);
      names(rows.row(), use, look);
      cells.write(
          null,
          use.bid().paintGal(),
          use.ledger(),
          column -> Books.sum(LedgerField.VOLUME, keys, Books.is(column.kind())));
      flag(use);
    }
    rows.gap();
    return first;
  }

  private void flag(CoatingUse use) {
    int row = rows.number();
    String variance = PaintColumn.VARIANCE.at(FIGURES, row);
    String tolerance = CellReference.convertNumToColString(TOLERANCE) + row;
    String formula =
        "IF(%1$s+%2$s+%3$s=0,\"not bought\",IF(%4$s>%5$s,\"over bid\",IF(%4$s<-%5$s,\"under bid\",\"\")))"
            .formatted(
                PaintColumn.OPENING.at(FIGURES, row),
                PaintColumn.BOUGHT.at(FIGURES, row),
                PaintColumn.MOVED_IN.at(FIGURES, row),
                variance,
                tolerance);
    rows.number(books.volume(use.toleranceGal()), look.number(2));
    if (books.live()) {
      rows.formula(formula, word(use), look.apart(false));
    } else {
      rows.text(word(use), look.apart(false));
    }
  }

  private static String word(CoatingUse use) {
    double in =
        use.ledger().gallons(LineKind.OPENING_STOCK)
            + use.ledger().gallons(LineKind.PURCHASE)
            + use.ledger().gallons(LineKind.TRANSFER_IN);
    if (in == 0) {
      return "not bought";
    }
    return use.isOver() ? "over bid" : use.isUnder() ? "under bid" : "";
  }

  private void block(String title) {
    rows.row().text(title, look.block());
    rows.underline(COLUMNS, look.block());
  }

  /** The criteria that pick the ledger lines of a coating of a job. */
  static String keys(CoatingUse use) {
    return Books.is(LedgerField.JOB, Keys.job(use.job()))
        + ","
        + Books.is(LedgerField.COATING, Keys.coating(use.coating()));
  }

  static void names(Rows rows, CoatingUse use, Look look) {
    rows.text(Keys.job(use.job()), look.text(false))
        .text(Keys.coating(use.coating()), look.text(false));
  }

  private void widths() {
    Pages.width(sheet, 0, 30);
    Pages.width(sheet, 1, 18);
    for (int i = FIGURES; i < COLUMNS; i++) {
      Pages.width(sheet, i, FIGURE_WIDTH);
    }
  }
}
