package org.wetmil.workbook.audit;

import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of cells on which checks fired, one a row, as far as a list can be read. */
final class FiredSheet {
  static final String NAME = "Fired checks";

  /** A longer list would be read by nobody, and takes memory; Setups counts them all. */
  static final int MOST = 10_000;

  private static final String[] HEADINGS = {
    "Check", "Severity", "Job", "File", "Sheet", "Cell", "Room", "Surface", "Coating"
  };
  private static final int[] WIDTHS = {26, 10, 26, 26, 16, 8, 20, 20, 20};

  private final XSSFSheet sheet;
  private final Look look;
  private final AuditBook book;

  FiredSheet(XSSFSheet sheet, Look look, AuditBook book) {
    this.sheet = sheet;
    this.look = look;
    this.book = book;
  }

  void write() {
    Rows rows = ListSheet.begin(sheet, look, HEADINGS, WIDTHS);
    book.jobs().stream()
        .flatMap(job -> job.fired().stream().map(fired -> new Place(job, fired)))
        .limit(MOST)
        .forEach(place -> row(rows, place));
    ListSheet.end(sheet, look, HEADINGS.length, rows);
  }

  private record Place(AuditedJob job, FiredCheck fired) {}

  private void row(Rows rows, Place place) {
    FiredCheck fired = place.fired();
    Check check = Checks.get(fired.check());
    rows.row()
        .text(fired.check(), look.strong())
        .text(check.severity().name().toLowerCase(Locale.ROOT), look.text(false))
        .text(place.job().bid().id(), look.text(false))
        .text(place.job().file(), look.text(false))
        .text(fired.sheet(), look.text(false))
        .text(fired.address(), look.text(false))
        .text(fired.room(), look.text(false))
        .text(fired.surface(), look.text(false))
        .text(fired.coating(), look.text(false));
  }
}
