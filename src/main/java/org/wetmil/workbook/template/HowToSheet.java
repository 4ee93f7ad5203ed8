package org.wetmil.workbook.template;

import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** The page that says what to write and what comes back. */
final class HowToSheet {
  private static final List<String[]> STEPS =
      List.of(
          new String[] {
            "Write",
            "On the sheet Bid, one line for each surface of each room. Needed are a surface, a"
                + " coating and something to measure: sizes, a count or an area. Everything else may"
                + " stay blank. Columns may be moved, left out or added."
          },
          new String[] {
            "Units",
            "Each heading says its unit. A unit typed in a cell wins over it: 12' 6\", 3.81 m,"
                + " 3810 mm."
          },
          new String[] {
            "Lists",
            "The drop-down lists offer the names that are built in and those on your own sheets."
                + " Other words of the trade are understood too, so a list never forbids a word."
          },
          new String[] {
            "Your figures",
            "The other sheets are for what you own, buy and assume: a product on Coatings with its"
                + " class, your machines on Sprayers, your tips on Tips on hand. What a row leaves"
                + " blank keeps the built-in value. Sheets that you do not need may be deleted."
          },
          new String[] {
            "Fill",
            "Save, close, and run: wetmil fill BID.xlsx. Beside it appears BID-filled.xlsx; your own"
                + " file is never changed."
          },
          new String[] {
            "What comes back",
            "To the right of your columns: net area, orifice and fan of the tip, pressure, gun speed,"
                + " coats, wet and dry film, spread, paint, hours, and findings where a setup is out"
                + " of range. On further sheets: every finding, and Basis with every figure that was"
                + " assumed, its unit and its source."
          },
          new String[] {
            "Change",
            "In the filled workbook a changed size, loss or film is followed by the figures. Tips,"
                + " coats and pressures are choices: fill again after changing a coating, a surface"
                + " or a tip."
          },
          new String[] {
            "How sure",
            "Most built-in figures are house values: starting points from judgement, no law. Put data"
                + " sheets, bucket tests and your own records in their place; a test board decides."
          },
          new String[] {
            "Take care",
            "Paint at spraying pressure goes through skin: such a wound is a surgical emergency even"
                + " when it looks small. Vapours burn and poison, so ventilate, keep ignition away,"
                + " ground pump and pail, wear the respirator that the data sheet names. Paint from"
                + " before 1978 may hold lead. Ladders and lifts have rules of their own. The data"
                + " sheet, the maker's manual, local codes and licensed practice come before anything"
                + " in this workbook."
          });

  private final XSSFSheet sheet;
  private final Look look;
  private final UnitSystem system;

  HowToSheet(XSSFSheet sheet, Look look, UnitSystem system) {
    this.sheet = sheet;
    this.look = look;
    this.system = system;
  }

  void write() {
    Rows rows = new Rows(sheet);
    rows.row().text("How to use this workbook", look.title());
    rows.gap();
    for (String[] step : STEPS) {
      rows.row().text(step[0], look.strong()).skip(1).text(step[1], look.text(true));
      rows.height(15 * (1 + step[1].length() / 94));
    }
    rows.gap();
    rows.row().text("Column of Bid", look.asked()).text("Unit", look.asked());
    rows.text("What it holds", look.asked());
    for (InputColumn column : InputColumn.values()) {
      rows.row()
          .text(column.heading(), look.strong())
          .text(Headings.symbol(column.quantity(), system), look.text(false))
          .text(Prompts.sentence(column.meaning()), look.text(true));
    }
    Pages.width(sheet, 0, 20);
    Pages.width(sheet, 1, 7);
    Pages.width(sheet, 2, 86);
    Pages.upright(sheet, 3, rows.number());
  }
}
