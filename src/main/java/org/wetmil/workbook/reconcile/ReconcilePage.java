package org.wetmil.workbook.reconcile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.ledger.LineKind;
import org.wetmil.reconcile.flag.Flag;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.workbook.fill.Heights;
import org.wetmil.workbook.fill.Look;
import org.wetmil.workbook.fill.Pages;
import org.wetmil.workbook.fill.Rows;

/** The first page: whether everything adds up, then paint, cost and explanation by coating. */
final class ReconcilePage {
  static final String NAME = "Reconcile";

  /** The first column of figures, after job and coating. */
  static final int FIGURES = 2;

  private static final int TOLERANCE = FIGURES + PaintColumn.values().length;

  /** The column of sentences, the last. */
  static final int FLAG = TOLERANCE + 2;

  private static final int FLAG_WIDTH = 64;

  private final XSSFSheet sheet;
  private final Look look;
  private final Books books;
  private final Rows rows;
  private final List<CoatingUse> uses;
  private final Map<String, List<Flag>> flags = new HashMap<>();

  ReconcilePage(XSSFSheet sheet, Look look, Books books) {
    this.sheet = sheet;
    this.look = look;
    this.books = books;
    this.rows = new Rows(sheet);
    this.uses = books.result().uses();
    books
        .result()
        .flags()
        .forEach(
            flag ->
                flags
                    .computeIfAbsent(flag.job() + "\n" + flag.coating(), k -> new ArrayList<>())
                    .add(flag));
  }

  UseRows write() {
    rows.row().text("Paint bought against paint bid", look.title());
    rows.row().text(Headline.period(books.result()), look.text(false));
    if (!books.live()) {
      rows.row()
          .text(
              "The ledgers have more than 20,000 lines: figures here are values and follow no"
                  + " change.",
              look.strong());
    }
    books.apart().ifPresent(sentence -> rows.row().text(sentence, look.strong()));
    rows.gap();
    new CountsBlock(rows, look, books).write();
    while (rows.number() < UseChart.LAST_ROW) {
      rows.gap();
    }
    int paint = paint();
    CostBlock cost = new CostBlock(rows, look, books, paint);
    int costFirst = cost.isNeeded() ? cost.write() : 0;
    new ExplainBlock(rows, look, books, paint).write();
    widths();
    Pages.landscape(sheet, FLAG + 1, rows.number());
    return new UseRows(paint, costFirst, uses.size());
  }

  private int paint() {
    block("Paint by job and coating");
    rows.row().text("Job", look.heading()).text("Coating", look.heading());
    PaintCells cells = new PaintCells(rows, look, books, FIGURES);
    cells.headings();
    rows.text("Tolerance (" + books.volumeUnit() + ")", look.heading())
        .text("Flag", look.heading())
        .text("What it could mean, what to look at first", look.heading());
    rows.current().setHeightInPoints(Lists.HEADINGS_PT);
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
      String said = said(use);
      rows.text(said, look.text(true));
      rows.current().setHeightInPoints((float) Heights.points(Heights.lines(said, FLAG_WIDTH)));
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

  private String said(CoatingUse use) {
    return flags.getOrDefault(use.job() + "\n" + use.coating(), List.of()).stream()
        .map(
            flag ->
                sentence(flag.type().title())
                    + at(flag)
                    + ". "
                    + (flag.couldMean() + " " + flag.lookFirst()).strip())
        .collect(Collectors.joining("\n"));
  }

  private static String at(Flag flag) {
    return flag.file().isEmpty() ? "" : " (" + flag.file() + ":" + flag.line() + ")";
  }

  private static String sentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private void block(String title) {
    rows.row().text(title, look.block());
    Pages.underline(rows.current(), FLAG + 1, look.block());
  }

  /** The criteria that pick the ledger lines of a coating of a job. */
  static String keys(CoatingUse use) {
    return Books.is(LedgerField.JOB, Keys.job(use.job()))
        + ","
        + Books.is(LedgerField.COATING, Keys.plain(use.coating()));
  }

  static void names(Rows rows, CoatingUse use, Look look) {
    rows.text(Keys.job(use.job()), look.text(false))
        .text(Keys.plain(use.coating()), look.text(false));
  }

  private void widths() {
    sheet.setColumnWidth(0, 30 * 256);
    sheet.setColumnWidth(1, 18 * 256);
    for (int i = FIGURES; i < FLAG; i++) {
      sheet.setColumnWidth(i, 11 * 256);
    }
    sheet.setColumnWidth(FLAG, FLAG_WIDTH * 256);
  }
}
