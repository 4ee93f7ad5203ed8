package org.wetmil.workbook.reconcile;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.workbook.fill.Look;
import org.wetmil.workbook.fill.Texts;

/** The list of every ledger line, once, matched or not. */
final class LedgerSheet {
  private final Sheet sheet;
  private final Look look;
  private final Books books;

  LedgerSheet(Sheet sheet, Look look, Books books) {
    this.sheet = sheet;
    this.look = look;
    this.books = books;
  }

  void write() {
    Row heads = sheet.createRow(0);
    for (LedgerField field : LedgerField.values()) {
      Cell cell = heads.createCell(field.ordinal());
      cell.setCellValue(heading(field));
      cell.setCellStyle(look.heading());
      sheet.setColumnWidth(field.ordinal(), field.width() * 256);
    }
    int next = 1;
    for (PlacedLine placed : books.result().lines()) {
      write(sheet.createRow(next++), placed);
    }
    Lists.shape(sheet, LedgerField.values().length, next);
  }

  private String heading(LedgerField field) {
    return field == LedgerField.VOLUME
        ? field.heading() + " (" + books.volumeUnit() + ")"
        : field.heading();
  }

  private void write(Row row, PlacedLine placed) {
    LedgerLine line = placed.line();
    date(row, LedgerField.DATE.ordinal(), line, look);
    text(row, LedgerField.JOB, job(placed));
    text(row, LedgerField.ITEM, item(line));
    text(row, LedgerField.COATING, Books.coating(placed));
    number(row, LedgerField.QUANTITY.ordinal(), line, LedgerColumn.QUANTITY, look);
    text(row, LedgerField.UNIT, line.text(LedgerColumn.UNIT));
    if (line.hasVolume()) {
      Cell cell = row.createCell(LedgerField.VOLUME.ordinal());
      cell.setCellValue(books.volume(line.volumeGal()));
      cell.setCellStyle(look.number(2));
    }
    number(row, LedgerField.AMOUNT.ordinal(), line, LedgerColumn.AMOUNT, look);
    text(row, LedgerField.CURRENCY, line.amount() == null ? "" : line.currency());
    text(row, LedgerField.DOCUMENT, line.text(LedgerColumn.DOCUMENT));
    text(row, LedgerField.KIND, line.kind().title());
    text(row, LedgerField.FILE, line.file());
    Cell at = row.createCell(LedgerField.LINE.ordinal());
    at.setCellValue(line.line());
    text(row, LedgerField.STATE, placed.state());
  }

  /** The job as the bids name it, or as the ledger does where no bid is for it. */
  static String job(PlacedLine placed) {
    return placed.job().isEmpty()
        ? Keys.plain(placed.line().text(LedgerColumn.JOB))
        : Keys.job(placed.job());
  }

  /** Item and description on one line. */
  static String item(LedgerLine line) {
    return Stream.of(LedgerColumn.ITEM, LedgerColumn.DESCRIPTION)
        .map(line::text)
        .filter(text -> !text.isEmpty())
        .map(text -> text.replaceAll("\\s+", " "))
        .distinct()
        .collect(Collectors.joining(": "));
  }

  /** A date, or what stands there in its place. */
  static void date(Row row, int column, LedgerLine line, Look look) {
    if (line.date() != null) {
      Cell cell = row.createCell(column);
      cell.setCellValue(line.date());
      cell.setCellStyle(look.date());
    } else if (!line.text(LedgerColumn.DATE).isEmpty()) {
      row.createCell(column).setCellValue(Texts.fitting(line.text(LedgerColumn.DATE)));
    }
  }

  /** A number, or what stands there in its place. */
  static void number(Row row, int column, LedgerLine line, LedgerColumn which, Look look) {
    var value = which == LedgerColumn.QUANTITY ? line.quantity() : line.amount();
    if (value != null) {
      Cell cell = row.createCell(column);
      cell.setCellValue(value.doubleValue());
      CellStyle style = which.isMoney() ? look.number(2) : look.plain();
      cell.setCellStyle(style);
    } else if (line.isUnreadable(which)) {
      Cell cell = row.createCell(column);
      cell.setCellValue(Texts.fitting(line.text(which)));
      cell.setCellStyle(look.plain());
    }
  }

  private void text(Row row, LedgerField field, String text) {
    text(row, field.ordinal(), text, look);
  }

  static void text(Row row, int column, String text, Look look) {
    if (!text.isEmpty()) {
      Cell cell = row.createCell(column);
      cell.setCellValue(Texts.fitting(text));
      cell.setCellStyle(look.apart(false));
    }
  }
}
