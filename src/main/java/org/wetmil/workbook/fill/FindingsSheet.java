package org.wetmil.workbook.fill;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Check;
import org.wetmil.checks.Checks;
import org.wetmil.checks.Finding;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.RowsLater;

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
  private final Addresses addresses;
  private final XSSFCellStyle heading;
  private final XSSFCellStyle strong;
  private final XSSFCellStyle text;
  private final XSSFCellStyle wrapped;
  private final XSSFCellStyle link;

  FindingsSheet(XSSFSheet sheet, Look look, Addresses addresses) {
    this.sheet = sheet;
    this.addresses = addresses;
    this.heading = look.heading();
    this.strong = look.strong();
    this.text = look.text(false);
    this.wrapped = look.text(true);
    this.link = look.link();
  }

  /**
   * @param findings worst first
   */
  void write(LeanWorkbook workbook, List<Finding> findings) {
    int count = Math.min(MOST, findings.size());
    workbook.later(
        sheet,
        new RowsLater(
            1 + count,
            WIDTHS.length,
            cells -> {
              Rows rows = new Rows(cells).row();
              HEADINGS.forEach(each -> rows.text(each, heading));
              findings.subList(0, count).forEach(finding -> write(rows, finding));
            }));
    for (int i = 0; i < WIDTHS.length; i++) {
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, count, 0, WIDTHS.length - 1));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    Pages.landscape(sheet, WIDTHS.length, 1 + count);
  }

  private void write(Rows rows, Finding finding) {
    Check check = Checks.get(finding.check());
    rows.row()
        .text(finding.severity().name().toLowerCase(Locale.ROOT), strong)
        .text(finding.check(), text)
        .text(finding.room(), wrapped)
        .text(finding.surface(), wrapped)
        .text(finding.message(), wrapped)
        .text(finding.measured(), wrapped)
        .text(finding.limit(), wrapped)
        .text(check.why(), wrapped)
        .text(check.advice(), wrapped);
    int lines =
        IntStream.of(
                Heights.lines(finding.message(), WIDTHS[4]),
                Heights.lines(finding.measured(), WIDTHS[5]),
                Heights.lines(finding.limit(), WIDTHS[6]),
                Heights.lines(check.why(), WIDTHS[7]),
                Heights.lines(check.advice(), WIDTHS[8]))
            .max()
            .getAsInt();
    rows.height(Heights.points(lines));
    String address = addresses.of(finding);
    if (!address.isEmpty()) {
      String target = "#" + Texts.sheet(finding.spot().sheet()) + "!" + address;
      String shown = finding.spot().sheet() + "!" + address;
      rows.formula(
          "HYPERLINK(" + Texts.quoted(target) + "," + Texts.quoted(shown) + ")", shown, link);
    }
  }
}
