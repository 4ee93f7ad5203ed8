package org.wetmil.workbook.fill.page;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.copy.LeanWorkbook;
import org.wetmil.workbook.copy.RowsLater;
import org.wetmil.workbook.fill.beside.SheetPlan;
import org.wetmil.workbook.fill.beside.Totals;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.SheetReference;

/**
 * The list of hours, area and paint, one line a row, in the job's units, and then the rows that
 * only the job as a whole has. Every cell of a line's row refers to one row of a bid sheet, so that
 * after a sort there it is whole again; a line that is not filled has its row for the same reason.
 */
final class HoursSheet {
  /** The job's own rows; the tasks of lines stand in the lines. */
  private static final List<JobFigure> JOB_ROWS =
      List.of(
          JobFigure.CHANGE_TIP,
          JobFigure.CHANGE_COATING,
          JobFigure.TOUCH_UP,
          JobFigure.SET_UP,
          JobFigure.CLEAN_UP);

  private final XSSFSheet sheet;
  private final UnitSystem system;
  private final XSSFCellStyle heading;
  private final XSSFCellStyle text;
  private final XSSFCellStyle whole;
  private final XSSFCellStyle hours;
  private final Map<HoursColumn, XSSFCellStyle> figures = new EnumMap<>(HoursColumn.class);

  HoursSheet(XSSFSheet sheet, Look look, UnitSystem system) {
    this.sheet = sheet;
    this.system = system;
    this.heading = look.heading();
    this.text = look.text(false);
    this.whole = look.number(0);
    this.hours = look.number(2);
    for (HoursColumn column : HoursColumn.values()) {
      if (column.isAmount()) {
        figures.put(column, look.number(column.figure().decimals(system)));
      }
    }
  }

  /**
   * @param places the cell of each of the job's figures
   */
  void write(
      LeanWorkbook workbook, List<SheetPlan> plans, JobHours job, Map<JobFigure, String> places) {
    int lines = plans.stream().mapToInt(plan -> plan.placed().size()).sum();
    int count = 1 + lines + JOB_ROWS.size();
    int columns = HoursColumn.values().length;
    workbook.later(
        sheet,
        new RowsLater(
            count,
            columns,
            cells -> {
              Rows rows = new Rows(cells);
              headings(rows);
              for (SheetPlan plan : plans) {
                plan.placed().forEach(placed -> line(rows, plan, placed));
              }
              JOB_ROWS.forEach(figure -> job(rows, figure, job.number(figure), places.get(figure)));
            }));
    for (HoursColumn column : HoursColumn.values()) {
      Pages.width(sheet, column.ordinal(), column.width());
    }
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, count - 1, 0, columns - 1));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    // the keys are for formulas, not for a reader of the print
    Pages.landscape(sheet, HoursColumn.ROOM_KEY.ordinal(), count);
    Pages.narrowMargins(sheet);
  }

  private void headings(Rows rows) {
    rows.row();
    for (HoursColumn column : HoursColumn.values()) {
      rows.text(column.heading(system), heading);
    }
    rows.height(Heights.HEADING_PT);
  }

  private void line(Rows rows, SheetPlan plan, SheetPlan.Placed placed) {
    FilledLine line = placed.line();
    SheetPlan.Block block = placed.block();
    rows.row();
    for (HoursColumn column : HoursColumn.values()) {
      if (column.label() != null) {
        label(rows, plan, block, line, column.label());
      } else if (column.figure() != null) {
        figure(rows, plan, block, line, column);
      } else if (column == HoursColumn.SHEET) {
        rows.text(plan.sheet(), text);
      } else {
        rows.formula(keyFormula(rows, column), key(column, line), text);
      }
    }
  }

  private void label(
      Rows rows, SheetPlan plan, SheetPlan.Block block, FilledLine line, InputColumn label) {
    List<CellAddress> cells = block.table().cells(line.line().row() - 1, label);
    String said = Label.text(line.line().get(label));
    if (cells.isEmpty()) {
      rows.text(said, text);
      return;
    }
    List<String> places = cells.stream().map(at -> cell(plan, at.row() + 1, at.column())).toList();
    rows.formula(Label.formula(places), said, text);
  }

  private void figure(
      Rows rows, SheetPlan plan, SheetPlan.Block block, FilledLine line, HoursColumn column) {
    FilledColumn figure = column.figure();
    String cell = cell(plan, line.line().row(), block.column(figure));
    Figure value = line.figures().getOrDefault(figure, new Figure.Empty());
    if (column == HoursColumn.COATING) {
      String word = value instanceof Figure.Word said ? said.text() : "";
      rows.formula("T(" + cell + ")", word, text);
      return;
    }
    // SUM and T, since a filled cell without a figure holds an empty text
    double factor =
        figure.quantity().unit(plan.system()).si() / figure.quantity().unit(system).si();
    double shown = Double.isFinite(value.number()) ? value.number() : 0;
    rows.formula(
        "SUM(" + cell + ")" + (factor == 1 ? "" : "*" + Totals.plain(factor)),
        shown * factor,
        figures.getOrDefault(column, whole));
  }

  private void job(Rows rows, JobFigure figure, double value, String place) {
    rows.row();
    for (HoursColumn column : HoursColumn.values()) {
      switch (column) {
        case SURFACE -> rows.text(figure.title(), text);
        case COUNTED -> rows.number(1, whole);
        case LABOUR -> rows.formula(place, value, hours);
        default -> rows.skip(1);
      }
    }
  }

  private static String keyFormula(Rows rows, HoursColumn column) {
    return column == HoursColumn.ROOM_KEY
        ? HoursColumn.keyFormula(rows.number(), HoursColumn.FLOOR, HoursColumn.ROOM)
        : HoursColumn.keyFormula(
            rows.number(), HoursColumn.COATING, HoursColumn.COLOUR, HoursColumn.SHEEN);
  }

  private static String key(HoursColumn column, FilledLine line) {
    return column == HoursColumn.ROOM_KEY ? HoursKeys.room(line) : HoursKeys.order(line);
  }

  private static String cell(SheetPlan plan, int row, int column) {
    return SheetReference.quoted(plan.sheet()) + "!$" + CellAddress.letters(column) + "$" + row;
  }
}
