package org.wetmil.workbook.audit;

import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.audit.change.Suggestion;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of figures to change, one a row. */
final class SuggestedSheet {
  static final String NAME = "Suggested tables";

  private static final String[] HEADINGS = {
    "Measure",
    "Table",
    "Coating",
    "Surface",
    "Crew",
    "Figure",
    "Unit",
    "Now",
    "Suggested",
    "Suggested/now",
    "Factor on the bid",
    "Low",
    "High",
    "Jobs",
    "Held at its bound"
  };
  private static final int[] WIDTHS = {9, 16, 18, 22, 30, 16, 7, 10, 10, 11, 11, 8, 8, 7, 10};

  private final XSSFSheet sheet;
  private final Look look;
  private final AuditBook book;

  SuggestedSheet(XSSFSheet sheet, Look look, AuditBook book) {
    this.sheet = sheet;
    this.look = look;
    this.book = book;
  }

  void write() {
    Rows rows = ListSheet.begin(sheet, look, HEADINGS, WIDTHS);
    book.audit().suggestions().forEach(suggestion -> suggestion(rows, suggestion));
    ListSheet.end(sheet, look, HEADINGS.length, rows);
  }

  private void suggestion(Rows rows, Suggestion suggestion) {
    double now = suggestion.quantity().shown(suggestion.now(), book.system());
    double suggested = suggestion.quantity().shown(suggestion.suggested(), book.system());
    rows.row()
        .text(suggestion.measure().word(), look.text(false))
        .text(suggestion.isByHand() ? "by hand" : suggestion.table(), look.strong())
        .text(suggestion.coating(), look.text(false))
        .text(suggestion.surface(), look.text(false))
        .text(suggestion.crew(), look.text(false))
        .text(suggestion.column(), look.text(false))
        .text(suggestion.quantity().unit(book.system()).symbol(), look.text(false))
        .number(now, look.number(3))
        .number(suggested, look.number(3))
        .formula("I" + rows.number() + "/H" + rows.number(), suggested / now, look.number(3))
        .number(suggestion.factor(), look.number(3))
        .number(suggestion.likely().low(), look.number(2))
        .number(suggestion.likely().high(), look.number(2))
        .number(suggestion.jobs(), look.number(0))
        .text(suggestion.held() ? "yes" : "no", look.aside());
  }
}
