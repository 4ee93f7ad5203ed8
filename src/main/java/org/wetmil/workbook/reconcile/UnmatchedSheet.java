package org.wetmil.workbook.reconcile;

import java.util.Comparator;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.wetmil.ledger.LedgerColumn;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.Place;
import org.wetmil.reconcile.PlacedLine;
import org.wetmil.workbook.fill.Look;

/** The list of lines that are matched to no coating, those to act on first. */
final class UnmatchedSheet {
  private static final List<String> HEADINGS =
      List.of(
          "Reason",
          "Date",
          "Job",
          "Item",
          "Quantity",
          "Unit",
          "Amount",
          "Currency",
          "Document",
          "Kind",
          "File",
          "Line",
          "What may be meant");

  private static final int[] WIDTHS = {24, 11, 24, 40, 10, 13, 12, 10, 12, 13, 28, 7, 44};

  private final Sheet sheet;
  private final Look look;

  UnmatchedSheet(Sheet sheet, Look look) {
    this.sheet = sheet;
    this.look = look;
  }

  void write(List<PlacedLine> lines) {
    Row heads = sheet.createRow(0);
    for (int i = 0; i < WIDTHS.length; i++) {
      Cell cell = heads.createCell(i);
      cell.setCellValue(HEADINGS.get(i));
      cell.setCellStyle(look.heading());
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    List<PlacedLine> unmatched =
        lines.stream()
            .filter(line -> line.place() == Place.UNMATCHED)
            .sorted(Comparator.comparing(PlacedLine::reason))
            .toList();
    int next = 1;
    for (PlacedLine line : unmatched) {
      write(sheet.createRow(next++), line);
    }
    Lists.shape(sheet, WIDTHS.length, next);
  }

  private void write(Row row, PlacedLine placed) {
    LedgerLine line = placed.line();
    text(row, 0, placed.reason().title());
    LedgerSheet.date(row, 1, line, look);
    text(row, 2, LedgerSheet.job(placed));
    text(row, 3, LedgerSheet.item(line));
    LedgerSheet.number(row, 4, line, LedgerColumn.QUANTITY, look);
    text(row, 5, line.text(LedgerColumn.UNIT));
    LedgerSheet.number(row, 6, line, LedgerColumn.AMOUNT, look);
    text(row, 7, line.amount() == null ? "" : line.currency());
    text(row, 8, line.text(LedgerColumn.DOCUMENT));
    text(row, 9, line.kind().title());
    text(row, 10, line.file());
    row.createCell(11).setCellValue(line.line());
    text(row, 12, String.join("; ", placed.suggestion()));
  }

  private void text(Row row, int column, String text) {
    LedgerSheet.text(row, column, text, look);
  }
}
