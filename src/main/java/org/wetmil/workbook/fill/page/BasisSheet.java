package org.wetmil.workbook.fill.page;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;
import org.wetmil.checks.CheckLimits;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Openings;
import org.wetmil.measure.MeasuringRule;
import org.wetmil.quantity.Unit;
import org.wetmil.trade.Constant;
import org.wetmil.trade.Constants;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.FillStamp;
import org.wetmil.workbook.fill.beside.SheetPlan;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;
import org.wetmil.workbook.read.earlier.BasisWords;
import org.wetmil.workbook.read.earlier.EarlierFill;

/**
 * The page that says what the figures rest on: the job's totals at the top, then every figure of
 * the tables with its unit, kind and source. Row formulas point at the values here.
 */
public final class BasisSheet {
  /** The last, the values as filled, stands to the right of the paper. */
  private static final int[] WIDTHS = {12, 17, 20, 9, 8, 17, 33, 16, 50, 12};

  /** Columns on paper. */
  static final int PRINTED = WIDTHS.length - 1;

  private final XSSFSheet sheet;
  private final Look look;
  private final FilledBid filled;
  private final List<SheetPlan> plans;
  private final BasisBook book;
  private final Rows rows;

  public BasisSheet(
      XSSFSheet sheet, Look look, FilledBid filled, List<SheetPlan> plans, BasisBook book) {
    this.sheet = sheet;
    this.look = look;
    this.filled = filled;
    this.plans = plans;
    this.book = book;
    this.rows = new Rows(sheet);
  }

  /**
   * @param fills earlier ones, oldest first
   * @param renamed sheets of ours that could not have their usual name
   */
  public void write(FillStamp stamp, List<EarlierFill> fills, List<String> renamed) {
    top(renamed);
    new BasisTotals(sheet.getWorkbook(), look, filled, plans, book, rows).write();
    follows();
    units();
    new BasisFigures(sheet, look, plans, book, rows).write();
    constants();
    fills(stamp, fills);
    Pages.widths(sheet, WIDTHS);
    Pages.landscape(sheet, PRINTED, rows.number());
    Pages.narrowMargins(sheet);
  }

  /** Gives the row that was begun last the height of texts that stand in columns from the first. */
  static void fit(Rows rows, List<String> texts) {
    int lines = 1;
    for (int i = 0; i < texts.size(); i++) {
      lines = Math.max(lines, Heights.lines(texts.get(i), WIDTHS[i]));
    }
    if (lines > 1) {
      rows.height(Heights.points(lines));
    }
  }

  /** Lays cells of the row that was begun last together; gives the lines of the text in them. */
  private int across(String text, int first, int last) {
    int row = rows.number() - 1;
    sheet.addMergedRegionUnsafe(new CellRangeAddress(row, row, first, last));
    return Heights.lines(text, IntStream.rangeClosed(first, last).map(i -> WIDTHS[i]).sum());
  }

  private void top(List<String> renamed) {
    Catalogue catalogue = filled.bid().catalogue();
    rows.row().text("Basis of these figures", look.title());
    rows.gap();
    fact("Job", filled.bid().job());
    MeasuringRule rule = Openings.rule(catalogue);
    fact("Measuring rule", rule.title() + ": " + rule.meaning() + " (" + rule.source() + ")");
    fact("Figures follow", catalogue.text(Setting.FIGURES_FOLLOW) + " tip");
    fact("Units of this page", book.system().word());
    if (!renamed.isEmpty()) {
      fact("Names taken", "a sheet of yours has the name: " + String.join(", ", renamed));
    }
    long rated = filled.lines().filter(line -> line.work().sprayer() != null).count();
    if (rated == 0) {
      fact("Sprayer", "none stated: no limit of flow, orifice or pressure was applied");
    }
    rows.gap();
  }

  /** One line for each time that the workbook was filled; last, so that nothing else moves. */
  private void fills(FillStamp stamp, List<EarlierFill> earlier) {
    rows.gap();
    rows.row();
    BasisWords.FILLS.forEach(heading -> rows.text(heading, look.heading()));
    rows.height(Heights.HEADING_PT);
    for (EarlierFill fill : earlier) {
      fill(fill.date(), fill.program(), fill.input(), fill.inputSha256());
    }
    fill(
        stamp.date().toString(),
        "Wetmil " + stamp.version(),
        stamp.inputName(),
        stamp.inputSha256());
  }

  private void fill(String... texts) {
    rows.row();
    for (int i = 0; i < texts.length; i++) {
      // the last is long and has room to its right
      rows.text(texts[i], look.text(i < texts.length - 1));
    }
    fit(rows, List.of(texts).subList(0, texts.length - 1));
  }

  private void fact(String label, String value) {
    rows.row().text(label, look.strong()).skip(1).text(value, look.text(true));
    rows.height(Heights.points(across(value, 2, PRINTED - 1)));
  }

  private void follows() {
    rows.row().text("What follows a change, and what does not", look.block());
    rows.underline(PRINTED, look.block());
    for (String sentence :
        List.of(
            "Area, pace, film, spread, paint and hours are formulas: they follow a changed length,"
                + " count, thinner or film, and a changed figure on this page.",
            "Tip, fan, orifice, coats and pressure to set are choices, and so is the flow where a"
                + " hose is stated: they do not follow. Fill the workbook again after a change of"
                + " coating, surface, condition, texture, sprayer, pressure, tip, coats or height,"
                + " or after typing a measure into an empty cell.",
            "To use another tip than the recommended one, write it under Tip and set Figures"
                + " follow to Planned on a Settings sheet.",
            "A cell that holds text such as 12' 6\" is not followed: the value as read stands in"
                + " the formula.",
            "The links on the list of findings point where the lines stood when this was filled.",
            "A value typed over one in the list below is taken as yours when the workbook is filled"
                + " again, and marked so under Where from; empty the cell to have the former value"
                + " back. Where the value follows a cell of yours, change that cell.",
            "A number or formula of yours in the place of a filled formula stays when the workbook"
                + " is filled again, until it is filled with --refresh; a tip, coats or a pressure"
                + " typed over is replaced.",
            "Narrow work (no wider than the setting Narrow work) is one stroke: no overlap, and of"
                + " a fan wider than the work only the share that meets it counts. At that width"
                + " the figures make a step.",
            "The floor of a room is covered once, on its first walls or ceiling line; the factor"
                + " for height does not touch it.")) {
      rows.row().text(sentence, look.text(true));
      rows.height(Heights.points(across(sentence, 0, PRINTED - 1)));
    }
    rows.gap();
  }

  private void units() {
    rows.row().text("Units read", look.block());
    rows.underline(PRINTED, look.block());
    rows.row()
        .text("Sheet", look.heading())
        .text("Column", look.heading())
        .text("Unit", look.heading());
    filled
        .sheets()
        .forEach(
            sheet -> {
              for (Map.Entry<InputColumn, Unit> unit : sheet.sheet().columnUnits().entrySet()) {
                if (!unit.getValue().symbol().isEmpty()) {
                  rows.row()
                      .text(sheet.sheet().name(), look.text(false))
                      .text(unit.getKey().heading(), look.text(false))
                      .text(unit.getValue().symbol(), look.text(false));
                }
              }
            });
    rows.gap();
  }

  /** What the formulas and checks hold fixed, so that nothing they rest on is out of sight. */
  private void constants() {
    rows.gap();
    rows.row().text("Held fixed in formulas and checks", look.block());
    rows.underline(PRINTED, look.block());
    rows.row()
        .text("Constant", look.heading())
        .text("", look.heading())
        .text("", look.heading())
        .text("Value", look.heading())
        .text("Unit", look.heading())
        .text("Kind", look.heading())
        .text("Source", look.heading());
    Stream.of(Constants.ALL, CheckLimits.ALL).flatMap(List::stream).forEach(this::constant);
  }

  private void constant(Constant constant) {
    rows.row()
        .text(constant.name(), look.text(true))
        .skip(2)
        .number(constant.value(), look.shortened(constant.value()))
        .text(constant.unit(), look.unit())
        .text(constant.kind().name().toLowerCase(Locale.ROOT), look.text(true))
        .text(constant.source(), look.text(true));
    int name = across(constant.name(), 0, 2);
    int source = across(constant.source(), 6, PRINTED - 1);
    rows.height(Heights.points(Math.max(name, source)));
  }
}
