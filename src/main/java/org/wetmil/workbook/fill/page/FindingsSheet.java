package org.wetmil.workbook.fill.page;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.checks.Finding;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.fill.beside.Addresses;
import org.wetmil.workbook.look.FindingsList;
import org.wetmil.workbook.look.FindingsList.Column;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;
import org.wetmil.workbook.look.Texts;
import org.wetmil.workbook.stream.SheetReference;

/** The list of findings of a bid, each with a link to its cell. */
public final class FindingsSheet {
  private static final List<Column> COLUMNS =
      List.of(
          Column.room("Room", 12),
          Column.surface("Surface", 11),
          Column.message(42),
          Column.why(28),
          Column.advice(29));
  private static final List<Column> BEYOND =
      List.of(Column.check(27), Column.MEASURED, Column.LIMIT);

  private final XSSFSheet sheet;
  private final Addresses addresses;
  private final XSSFCellStyle link;
  private final FindingsList list;

  public FindingsSheet(XSSFSheet sheet, Look look, Addresses addresses) {
    this.sheet = sheet;
    this.addresses = addresses;
    this.link = look.link();
    this.list =
        new FindingsList(
            look,
            COLUMNS,
            new FindingsList.Place(List.of("Cell"), List.of(12), this::link),
            BEYOND);
  }

  /**
   * @param findings worst first
   */
  public void write(LeanWorkbook workbook, List<Finding> findings) {
    list.write(workbook, sheet, findings);
  }

  private void link(Rows rows, Finding finding) {
    String address = addresses.of(finding);
    if (address.isEmpty()) {
      rows.skip(1);
    } else {
      String target = "#" + SheetReference.quoted(finding.spot().sheet()) + "!" + address;
      String shown = finding.spot().sheet() + "!" + address;
      rows.formula(
          "HYPERLINK(" + Texts.quoted(target) + "," + Texts.quoted(shown) + ")", shown, link);
    }
  }
}
