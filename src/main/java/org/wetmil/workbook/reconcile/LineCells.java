package org.wetmil.workbook.reconcile;

import java.math.BigDecimal;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** Writes the cells of ledger lines; their styles are made at once. */
final class LineCells {
  private final XSSFCellStyle date;
  private final XSSFCellStyle words;
  private final XSSFCellStyle plain;
  private final XSSFCellStyle hundredths;
  private final XSSFCellStyle whole;

  LineCells(Look look) {
    this.date = look.date();
    this.words = look.apart(false);
    this.plain = look.plain();
    this.hundredths = look.number(2);
    this.whole = look.number(0);
  }

  /** The date, or what stands there in its place. */
  void date(Rows rows, LedgerLine line) {
    if (line.date() != null) {
      rows.number(DateUtil.getExcelDate(line.date()), date);
    } else {
      written(rows, line.text(LedgerColumn.DATE), date);
    }
  }

  /** The job as the bids name it, or as the ledger does where no bid is for it. */
  void job(Rows rows, PlacedLine placed) {
    String job = placed.job();
    text(rows, job.isEmpty() ? Keys.plain(placed.line().text(LedgerColumn.JOB)) : Keys.job(job));
  }

  /** Item and description on one line. */
  void item(Rows rows, LedgerLine line) {
    text(
        rows,
        Stream.of(LedgerColumn.ITEM, LedgerColumn.DESCRIPTION)
            .map(line::text)
            .filter(text -> !text.isEmpty())
            .map(text -> text.replaceAll("\\s+", " "))
            .distinct()
            .collect(Collectors.joining(": ")));
  }

  /** The quantity as written, or what stands there in its place. */
  void quantity(Rows rows, LedgerLine line) {
    number(rows, line, LedgerColumn.QUANTITY, line.quantity(), plain);
  }

  /** The amount as written, or what stands there in its place. */
  void amount(Rows rows, LedgerLine line) {
    number(rows, line, LedgerColumn.AMOUNT, line.amount(), hundredths);
  }

  /** The currency of the amount; nothing where there is none. */
  void currency(Rows rows, LedgerLine line) {
    text(rows, line.amount() == null ? "" : line.currency());
  }

  private void number(
      Rows rows, LedgerLine line, LedgerColumn column, BigDecimal value, XSSFCellStyle style) {
    if (value != null) {
      rows.number(value.doubleValue(), style);
    } else {
      written(rows, line.isUnreadable(column) ? line.text(column) : "", plain);
    }
  }

  /** A volume, or nothing. */
  void volume(Rows rows, double volume) {
    if (Double.isNaN(volume)) {
      rows.skip(1);
    } else {
      rows.number(volume, hundredths);
    }
  }

  void lineNumber(Rows rows, LedgerLine line) {
    rows.number(line.line(), whole);
  }

  /** Words; no cell at all where there are none, since formulas ask for blanks. */
  void text(Rows rows, String text) {
    written(rows, text, words);
  }

  private static void written(Rows rows, String text, XSSFCellStyle style) {
    if (text.isEmpty()) {
      rows.skip(1);
    } else {
      rows.text(text, style);
    }
  }
}
