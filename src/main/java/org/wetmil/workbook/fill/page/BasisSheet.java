package org.wetmil.workbook.fill.page;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Origin;
import org.wetmil.catalogue.Setting;
import org.wetmil.checks.CheckLimits;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.Openings;
import org.wetmil.measure.MeasuringRule;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.trade.Constant;
import org.wetmil.trade.Constants;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.FillStamp;
import org.wetmil.workbook.fill.beside.FormulaCodes;
import org.wetmil.workbook.fill.beside.SheetPlan;
import org.wetmil.workbook.fill.beside.Totals;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;
import org.wetmil.workbook.look.Texts;
import org.wetmil.workbook.read.earlier.BasisWords;
import org.wetmil.workbook.read.earlier.EarlierFill;
import org.wetmil.workbook.read.earlier.FormulaShapes;

/**
 * The page that says what the figures rest on: the job's totals at the top, then every figure of
 * the tables with its unit, kind and source. Row formulas point at the values here.
 */
public final class BasisSheet {
  private static final int[] WIDTHS = {20, 26, 24, 16, 9, 16, 44, 20, 58, 16};

  private final XSSFWorkbook workbook;
  private final XSSFSheet sheet;
  private final Look look;
  private final FilledBid filled;
  private final List<SheetPlan> plans;
  private final BasisBook book;
  private final Rows rows;

  public BasisSheet(
      XSSFWorkbook workbook,
      XSSFSheet sheet,
      Look look,
      FilledBid filled,
      List<SheetPlan> plans,
      BasisBook book) {
    this.workbook = workbook;
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
    totals();
    follows();
    units();
    figures();
    constants();
    fills(stamp, fills);
    for (int i = 0; i < WIDTHS.length; i++) {
      sheet.setColumnWidth(i, WIDTHS[i] * 256);
    }
    Pages.landscape(sheet, WIDTHS.length, rows.number());
  }

  private void top(List<String> renamed) {
    Catalogue catalogue = filled.bid().catalogue();
    rows.row().text("Basis of these figures", look.title());
    rows.gap();
    fact("Job", filled.bid().job());
    MeasuringRule rule = Openings.rule(catalogue);
    fact("Measuring rule", rule.title() + ": " + rule.meaning() + " (" + rule.source() + ")");
    fact("Figures follow", catalogue.text(Setting.FIGURES_FOLLOW) + " tip");
    fact("Units of this page", book.system() == UnitSystem.US ? "US" : "metric");
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
    for (String text : texts) {
      rows.text(text, look.text(false));
    }
  }

  private void fact(String label, String value) {
    rows.row().text(label, look.strong()).text(value, look.text(false));
  }

  private void totals() {
    rows.row().text("Totals of the lines that count", look.block());
    rows.underline(WIDTHS.length, look.block());
    total("Net area", FilledColumn.NET_AREA);
    total("Paint", FilledColumn.PAINT);
    Set<String> coatings = new LinkedHashSet<>();
    filled
        .lines()
        .filter(FilledLine::isFilled)
        .forEach(line -> coatings.add(line.work().coating().name()));
    coatings.forEach(this::paintOf);
    total("Labour of the lines", FilledColumn.LABOUR);
    long left =
        filled.lines().filter(FilledLine::isFilled).filter(line -> !line.isCounted()).count();
    long open = filled.lines().filter(line -> !line.isFilled()).count();
    rows.row()
        .text("Lines left out by Include", look.strong())
        .skip(2)
        .number(left, look.number(0));
    rows.row().text("Lines not filled", look.strong()).skip(2).number(open, look.number(0));
    rows.gap();
  }

  private void total(String label, FilledColumn column) {
    rows.row().text(label, look.strong()).text("", null).text("", null);
    double value = column.quantity().shown(filled.total(column), book.system());
    String formula = Totals.added(workbook, Totals.all(plans, column, book.system()));
    rows.formula(formula, value, look.number(2))
        .text(column.quantity().unit(book.system()).symbol(), look.text(false));
  }

  private void paintOf(String coating) {
    rows.row().text("Paint", look.text(false)).text(coating, look.text(false)).text("", null);
    double gal =
        filled
            .lines()
            .filter(FilledLine::isCounted)
            .filter(line -> line.work().coating().name().equals(coating))
            .mapToDouble(line -> line.base(FilledColumn.PAINT))
            .sum();
    rows.formula(
            Totals.added(workbook, Totals.ofCoating(plans, coating, book.system())),
            Quantity.VOLUME.shown(gal, book.system()),
            look.number(2))
        .text(Quantity.VOLUME.unit(book.system()).symbol(), look.text(false));
  }

  private void follows() {
    rows.row().text("What follows a change, and what does not", look.block());
    rows.underline(WIDTHS.length, look.block());
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
      rows.row().text(sentence, look.text(false));
    }
    rows.gap();
  }

  private void units() {
    rows.row().text("Units read", look.block());
    rows.underline(WIDTHS.length, look.block());
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
    rows.underline(WIDTHS.length, look.block());
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
        .text(constant.name(), look.text(false))
        .skip(2)
        .number(constant.value(), look.plain())
        .text(constant.unit(), look.text(false))
        .text(constant.kind().name().toLowerCase(Locale.ROOT), look.text(false))
        .text(constant.source(), look.text(true));
    int lines = Heights.lines(constant.source(), WIDTHS[6]);
    if (lines > 1) {
      rows.height(Heights.points(lines));
    }
  }

  private void figures() {
    rows.row();
    for (String heading : BasisWords.FIGURES) {
      rows.text(heading, look.heading());
    }
    int headings = rows.number();
    sheet.setRepeatingRows(new CellRangeAddress(headings - 1, headings - 1, -1, -1));
    for (BasisBook.Item item : book.items()) {
      rows.row()
          .text(item.table(), look.text(false))
          .text(item.row(), look.text(false))
          .text(item.figure(), look.text(false));
      value(item);
      String address = Texts.sheet(sheet.getSheetName()) + "!$D$" + rows.number();
      book.settle(item, address);
      if (!item.name().isEmpty()) {
        XSSFName name = workbook.createName();
        name.setNameName(item.name());
        name.setRefersToFormula(address);
      }
    }
    FormulaCodes.of(plans, book).forEach(this::shapes);
  }

  private void shapes(FilledColumn column, FormulaCodes.Codes codes) {
    rows.row()
        .text(FormulaShapes.TABLE, look.text(false))
        .text(column.heading(), look.text(false))
        .text(FormulaShapes.FIGURE, look.text(false))
        .number(codes.count(), look.plain())
        .text("", look.text(false))
        .text(Kind.DERIVED.word(), look.text(false))
        .text("the formulas of this fill", look.text(true))
        .text("this fill", look.text(false))
        .text(
            "how many of its formulas differ in more than their row; the codes tell ours from yours",
            look.text(true))
        .text(codes.text(), look.cut());
  }

  private void value(BasisBook.Item item) {
    String unit = "";
    String from = "built in";
    double number = item.factor();
    if (item.entry() == null) {
      rows.number(number, look.plain());
    } else {
      Entry entry = item.entry();
      from = entry.origin().text();
      if (Double.isNaN(entry.number())) {
        rows.text(entry.text(), look.plain());
      } else {
        unit = entry.quantity().unit(book.system()).symbol();
        number = entry.quantity().shown(entry.number(), book.system());
        String follows = follows(entry);
        if (follows.isEmpty()) {
          rows.number(number, look.plain());
        } else {
          rows.formula(follows, number, look.plain());
        }
      }
    }
    rows.text(unit, look.text(false))
        .text(item.kind().word(), look.text(false))
        .text(item.source(), look.text(true))
        .text(from, look.text(false))
        .text(item.meaning(), look.text(true));
    if (Double.isNaN(number)) {
      rows.text(item.entry().text(), look.plain());
    } else {
      rows.number(number, look.plain());
    }
    int lines =
        Math.max(Heights.lines(item.source(), WIDTHS[6]), Heights.lines(item.meaning(), WIDTHS[8]));
    if (lines > 1) {
      rows.height(Heights.points(lines));
    }
  }

  /** A formula that follows the estimator's own cell; empty when there is none to follow. */
  private String follows(Entry entry) {
    if (!(entry.origin() instanceof Origin.Cell cell)
        || cell.isElsewhere()
        || Double.isNaN(cell.cellNumber())
        || entry.quantity() == Quantity.TEMPERATURE) {
      return "";
    }
    String address = Texts.sheet(cell.sheet()) + "!" + Pages.absolute(cell.address());
    Unit shown = entry.quantity().unit(book.system());
    return cell.unit() == shown
        ? address
        : address + "*" + Totals.plain(cell.unit().si() / shown.si());
  }
}
