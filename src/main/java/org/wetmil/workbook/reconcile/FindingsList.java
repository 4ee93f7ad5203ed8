package org.wetmil.workbook.reconcile;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.workbook.fill.Heights;
import org.wetmil.workbook.fill.Look;
import org.wetmil.workbook.fill.Rows;

/** The list of findings, worst first. */
final class FindingsList {
  /** More would make the workbook slow to open; all are printed. */
  private static final int MOST = 50_000;

  private static final List<String> HEADINGS =
      List.of(
          "Severity", "Check", "Job", "Coating", "Finding", "Why", "What to do", "File", "Line");
  private static final int[] WIDTHS = {10, 20, 24, 16, 64, 36, 36, 28, 7};

  private final XSSFSheet sheet;
  private final Look look;

  FindingsList(XSSFSheet sheet, Look look) {
    this.sheet = sheet;
    this.look = look;
  }

  void write(List<Finding> findings) {
    Rows rows = new Rows(sheet);
    rows.row();
    HEADINGS.forEach(heading -> rows.text(heading, look.heading()));
    findings.stream()
        .sorted(Comparator.comparing(Finding::severity).reversed())
        .limit(MOST)
        .forEach(finding -> write(rows, finding));
    for (int i = 0; i < WIDTHS.length; i++) {
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    Lists.shape(sheet, WIDTHS.length, rows.number());
  }

  private void write(Rows rows, Finding finding) {
    Check check = Checks.get(finding.check());
    rows.row()
        .text(finding.severity().name().toLowerCase(Locale.ROOT), look.strong())
        .text(finding.check(), look.text(false))
        .text(finding.room(), look.text(true))
        .text(finding.surface(), look.text(true))
        .text(finding.message(), look.text(true))
        .text(check.why(), look.text(true))
        .text(check.advice(), look.text(true))
        .text(finding.spot().sheet(), look.text(false));
    if (finding.spot().row() > 0) {
      rows.number(finding.spot().row(), look.number(0));
    }
    int lines =
        Math.max(
            Heights.lines(finding.message(), WIDTHS[4]),
            Math.max(
                Heights.lines(check.why(), WIDTHS[5]), Heights.lines(check.advice(), WIDTHS[6])));
    rows.height(Heights.points(lines));
  }
}
