package org.wetmil.workbook.reconcile;

import java.util.Comparator;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Finding;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.look.FindingsList;
import org.wetmil.workbook.look.FindingsList.Column;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The list of findings in ledgers and in what came of comparing them, by file and line. */
final class BookFindings {
  private static final List<Column> COLUMNS =
      List.of(
          Column.room("Job", 14),
          Column.surface("Coating", 12),
          Column.message(41),
          Column.why(21),
          Column.advice(21));
  private static final List<Column> BEYOND = List.of(Column.check(27));

  private final XSSFCellStyle text;
  private final XSSFCellStyle number;
  private final FindingsList list;

  BookFindings(Look look) {
    this.text = look.text(true);
    this.number = look.number(0);
    this.list =
        new FindingsList(
            look,
            COLUMNS,
            new FindingsList.Place(List.of("File", "Line"), List.of(16, 6), this::place),
            BEYOND);
  }

  void write(LeanWorkbook workbook, XSSFSheet sheet, List<Finding> findings) {
    list.write(
        workbook,
        sheet,
        findings.stream().sorted(Comparator.comparing(Finding::severity).reversed()).toList());
  }

  private void place(Rows rows, Finding finding) {
    rows.text(finding.spot().sheet(), text);
    if (finding.spot().row() > 0) {
      rows.number(finding.spot().row(), number);
    } else {
      rows.skip(1);
    }
  }
}
