package org.wetmil.workbook.audit;

import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.tables.MovedFigure;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Origin;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of figures that are others today than in the tables of a past bid. */
final class MovedSheet {
  static final String NAME = "Moved figures";

  private static final int[] WIDTHS = {26, 24, 14, 30, 18, 7, 12, 22, 12, 14, 14};

  private final XSSFSheet sheet;
  private final Look look;
  private final AuditBook book;

  MovedSheet(XSSFSheet sheet, Look look, AuditBook book) {
    this.sheet = sheet;
    this.look = look;
    this.book = book;
  }

  void write() {
    String[] headings = {
      "Job",
      "File",
      "Table",
      "Row",
      "Figure",
      "Unit",
      "In the bid",
      "From",
      "Today",
      "Paint by it (" + symbol(Measure.PAINT) + ")",
      "Hours by it (" + symbol(Measure.HOURS) + ")"
    };
    Rows rows = ListSheet.begin(sheet, look, headings, WIDTHS);
    book.jobs().forEach(job -> job.moves().figures().forEach(figure -> row(rows, job, figure)));
    if (rows.number() == 1) {
      rows.row().text("No bid has a figure that today's tables have otherwise.", look.text(false));
    }
    ListSheet.end(sheet, look, headings.length, rows);
  }

  private String symbol(Measure measure) {
    return measure.quantity().unit(book.system()).symbol();
  }

  private void row(Rows rows, AuditedJob job, MovedFigure figure) {
    Entry then = figure.then();
    rows.row()
        .text(job.bid().id(), look.strong())
        .text(job.file(), look.text(false))
        .text(figure.table(), look.text(false))
        .text(figure.row(), look.strong())
        .text(figure.figure(), look.text(false))
        .text(then.quantity().unit(book.system()).symbol(), look.text(false));
    value(rows, then);
    rows.text(from(then), look.aside());
    value(rows, figure.now());
    rows.number(shown(Measure.PAINT, figure.paintGal()), look.number(1))
        .number(shown(Measure.HOURS, figure.hours()), look.number(1));
  }

  /** An earlier fill wrote on Basis what it had, whoever it was from. */
  private static String from(Entry entry) {
    return entry.origin() instanceof Origin.OnBasis ? "Basis" : entry.origin().text();
  }

  private double shown(Measure measure, double kept) {
    return JobsSheet.shown(measure, kept, book.system());
  }

  private void value(Rows rows, Entry entry) {
    if (Double.isNaN(entry.number())) {
      rows.text(entry.text(), look.text(false));
    } else {
      rows.number(entry.quantity().shown(entry.number(), book.system()), look.number(3));
    }
  }
}
