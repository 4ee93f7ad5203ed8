package org.wetmil.workbook.template;

import java.util.Optional;
import org.apache.poi.ss.usermodel.IgnoredErrorType;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** The blank sheet of bid lines: an Excel table with a column for every input. */
final class BidForm {
  /** Lines of a blank form. */
  static final int ROWS = 60;

  /** Per cent; small enough for two pages while nothing is filled. */
  private static final short SCALE = 50;

  private static final InputColumn[] COLUMNS = InputColumn.values();

  private final XSSFSheet sheet;
  private final Look look;
  private final UnitSystem system;
  private final int rows;

  /**
   * @param rows lines to lay out; the table grows with what is typed below
   */
  BidForm(XSSFSheet sheet, Look look, UnitSystem system, int rows) {
    this.sheet = sheet;
    this.look = look;
    this.system = system;
    this.rows = rows;
  }

  void write() {
    Rows lines = new Rows(sheet);
    lines.row().height(Headings.HEIGHT);
    Prompts prompts = new Prompts(sheet);
    for (InputColumn column : COLUMNS) {
      String heading = Headings.of(column.heading(), column.quantity(), system);
      lines.text(heading, look.asked());
      int at = column.ordinal();
      prompt(prompts, column, new CellRangeAddressList(1, rows, at, at), heading);
      Pages.width(sheet, at, width(column, heading));
    }
    for (int i = 0; i < rows; i++) {
      lines.row();
      for (InputColumn column : COLUMNS) {
        lines.blank(look.blank(column == InputColumn.TIP));
      }
    }
    table();
    codesAreText();
    sheet.createFreezePane(InputColumn.SURFACE.ordinal() + 1, 1);
    onPaper();
  }

  /** As wide as it takes, since filled columns will follow; each page begins with the rooms. */
  private void onPaper() {
    Pages.landscape(sheet, COLUMNS.length, rows + 1);
    Pages.narrowMargins(sheet);
    sheet.setFitToPage(false);
    sheet.getPrintSetup().setScale(SCALE);
    sheet.getWorkbook().removePrintArea(sheet.getWorkbook().getSheetIndex(sheet));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    sheet.setRepeatingColumns(
        new CellRangeAddress(-1, -1, InputColumn.ROOM.ordinal(), InputColumn.SURFACE.ordinal()));
  }

  /** With no style of a spreadsheet program: the look is that of the cells. */
  private void table() {
    AreaReference area =
        sheet
            .getWorkbook()
            .getCreationHelper()
            .createAreaReference(
                new CellReference(0, 0), new CellReference(rows, COLUMNS.length - 1));
    XSSFTable table = sheet.createTable(area);
    table.setName("BidLines");
    table.setDisplayName("BidLines");
    table.getCTTable().addNewAutoFilter().setRef(area.formatAsString());
  }

  /** A tip code is text, so that 5-17 becomes no date; the program need not mark it. */
  private void codesAreText() {
    int tip = InputColumn.TIP.ordinal();
    sheet.addIgnoredErrors(
        new CellRangeAddress(1, rows, tip, tip), IgnoredErrorType.NUMBER_STORED_AS_TEXT);
  }

  private static void prompt(
      Prompts prompts, InputColumn column, CellRangeAddressList cells, String heading) {
    String text = column.meaning();
    Optional<Tables> table = column.table();
    if (table.isPresent()) {
      prompts.offer(cells, ListsSheet.name(table.get()), heading, text);
    } else if (!column.words().isEmpty()) {
      prompts.offer(cells, column.words(), heading, text);
    } else {
      prompts.say(cells, heading, text + typing(column));
    }
  }

  /** How a size may be typed besides as a number in the unit of the heading. */
  private static String typing(InputColumn column) {
    return switch (column.quantity()) {
      case LENGTH, GIRTH -> ". A unit in the cell wins: 12' 6\", 3.81 m, 3810 mm";
      case AREA -> ". A unit in the cell wins: 120 ft², 11.2 m²";
      case FILM -> ". Type a range as 4 to 6; a unit in the cell wins: 5 mil, 125 µm";
      case PRESSURE -> ". A unit in the cell wins: 2000 psi, 140 bar";
      default -> "";
    };
  }

  private static int width(InputColumn column, String heading) {
    return switch (column) {
      case ROOM -> 20;
      case FLOOR, SHEEN, TIP -> 9;
      case NOTES -> 30;
      default -> Headings.width(heading, column.quantity(), column.words());
    };
  }
}
