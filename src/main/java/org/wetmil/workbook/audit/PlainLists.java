package org.wetmil.workbook.audit;

import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The lists of words: mistakes found in the bids, and files that gave none. */
final class PlainLists {
  private static final int SENTENCE = 80;

  private PlainLists() {}

  static void findings(XSSFSheet sheet, Look look, AuditBook book) {
    String[] headings = {"File", "Place", "Mistake", "Finding"};
    Rows rows = ListSheet.begin(sheet, look, headings, 30, 16, 22, SENTENCE);
    for (AuditFinding finding : book.findings()) {
      rows.row()
          .text(finding.file(), look.strong())
          .text(finding.place(), look.text(false))
          .text(finding.kind(), look.text(false));
      sentence(rows, look, finding.message());
    }
    ListSheet.end(sheet, look, headings.length, rows);
  }

  static void unreadable(XSSFSheet sheet, Look look, AuditBook book) {
    String[] headings = {"File", "What came of it", "Reason"};
    Rows rows = ListSheet.begin(sheet, look, headings, 34, 18, SENTENCE);
    for (LeftOut file : book.leftOut()) {
      rows.row()
          .text(file.file(), look.strong())
          .text(file.readable() ? "left alone" : "not read", look.text(false));
      sentence(rows, look, file.reason());
    }
    ListSheet.end(sheet, look, headings.length, rows);
  }

  private static void sentence(Rows rows, Look look, String text) {
    rows.text(text, look.text(true));
    rows.height(Heights.points(Heights.lines(text, SENTENCE)));
  }
}
