package org.wetmil.workbook.fill;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;

/** The list of findings, one a row, worst first, each with a link to its cell. */
final class FindingsSheet {
  /** More would make the workbook slow to open; the rest is counted where it is printed. */
  static final int MOST = 50_000;

  static final List<String> HEADINGS =
      List.of(
          "Severity",
          "Check",
          "Room",
          "Surface",
          "Finding",
          "Measured",
          "Limit",
          "Why",
          "What to do",
          "Cell");
  private static final int[] WIDTHS = {10, 27, 15, 14, 50, 22, 22, 38, 38, 13};

  private final XSSFSheet sheet;
  private final Look look;
  private final Addresses addresses;

  FindingsSheet(XSSFSheet sheet, Look look, Addresses addresses) {
    this.sheet = sheet;
    this.look = look;
    this.addresses = addresses;
  }

  /**
   * @param findings worst first
   */
  void write(List<Finding> findings) {
    Rows rows = new Rows(sheet);
    rows.row();
    HEADINGS.forEach(heading -> rows.text(heading, look.heading()));
    findings.stream().limit(MOST).forEach(finding -> write(rows, finding));
    for (int i = 0; i < WIDTHS.length; i++) {
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(
        new CellRangeAddress(0, Math.max(0, rows.number() - 1), 0, WIDTHS.length - 1));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    Pages.landscape(sheet, WIDTHS.length, rows.number());
  }

  private void write(Rows rows, Finding finding) {
    Check check = Checks.get(finding.check());
    rows.row()
        .text(finding.severity().name().toLowerCase(Locale.ROOT), look.strong())
        .text(finding.check(), look.text(false))
        .text(finding.room(), look.text(true))
        .text(finding.surface(), look.text(true))
        .text(finding.message(), look.text(true))
        .text(finding.measured(), look.text(true))
        .text(finding.limit(), look.text(true))
        .text(check.why(), look.text(true))
        .text(check.advice(), look.text(true));
    int lines =
        IntStream.of(
                Heights.lines(finding.message(), WIDTHS[4]),
                Heights.lines(finding.measured(), WIDTHS[5]),
                Heights.lines(finding.limit(), WIDTHS[6]),
                Heights.lines(check.why(), WIDTHS[7]),
                Heights.lines(check.advice(), WIDTHS[8]))
            .max()
            .getAsInt();
    rows.current().setHeightInPoints((float) Heights.points(lines));
    String address = addresses.of(finding);
    if (!address.isEmpty()) {
      String target = "#" + Texts.sheet(finding.spot().sheet()) + "!" + address;
      String shown = finding.spot().sheet() + "!" + address;
      rows.formula(
          "HYPERLINK(" + Texts.quoted(target) + "," + Texts.quoted(shown) + ")",
          shown,
          look.link());
    }
  }
}
