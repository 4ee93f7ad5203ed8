package org.wetmil.workbook.fill;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.stream.CellAddress;

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
  private final Look look;
  private final UnitSystem system;
  private final Rows rows;

  HoursSheet(XSSFSheet sheet, Look look, UnitSystem system) {
    this.sheet = sheet;
    this.look = look;
    this.system = system;
    this.rows = new Rows(sheet);
  }

  /**
   * @param places the cell of each of the job's figures
   */
  void write(List<SheetPlan> plans, JobHours hours, Map<JobFigure, String> places) {
    rows.row();
    for (HoursColumn column : HoursColumn.values()) {
      rows.text(column.heading(system), look.heading());
      sheet.setColumnWidth(column.ordinal(), column.width() * 256);
    }
    rows.current().setHeightInPoints(Heights.HEADING_PT);
    for (SheetPlan plan : plans) {
      plan.placed().forEach(placed -> line(plan, placed));
    }
    JOB_ROWS.forEach(figure -> job(figure, hours.number(figure), places.get(figure)));
    int columns = HoursColumn.values().length;
    sheet.createFreezePane(0, 1);
    sheet.setAutoFilter(new CellRangeAddress(0, rows.number() - 1, 0, columns - 1));
    sheet.setRepeatingRows(new CellRangeAddress(0, 0, -1, -1));
    // the keys are for formulas, not for a reader of the print
    Pages.landscape(sheet, HoursColumn.ROOM_KEY.ordinal(), rows.number());
  }

  private void line(SheetPlan plan, SheetPlan.Placed placed) {
    FilledLine line = placed.line();
    SheetPlan.Block block = placed.block();
    rows.row();
    for (HoursColumn column : HoursColumn.values()) {
      if (column.label() != null) {
        label(plan, block, line, column.label());
      } else if (column.figure() != null) {
        figure(plan, block, line, column);
      } else if (column == HoursColumn.SHEET) {
        rows.text(plan.sheet(), look.text(false));
      } else {
        rows.formula(keyFormula(column), key(column, line), look.text(false));
      }
    }
  }

  private void label(SheetPlan plan, SheetPlan.Block block, FilledLine line, InputColumn label) {
    List<CellAddress> cells = block.table().cells(line.line().row() - 1, label);
    String text = Label.text(line.line().get(label));
    if (cells.isEmpty()) {
      rows.text(text, look.text(false));
      return;
    }
    List<String> places = cells.stream().map(at -> cell(plan, at.row() + 1, at.column())).toList();
    rows.formula(Label.formula(places), text, look.text(false));
  }

  private void figure(SheetPlan plan, SheetPlan.Block block, FilledLine line, HoursColumn column) {
    FilledColumn figure = column.figure();
    String cell = cell(plan, line.line().row(), block.column(figure));
    Figure value = line.figures().getOrDefault(figure, new Figure.Empty());
    if (column == HoursColumn.COATING) {
      String word = value instanceof Figure.Word said ? said.text() : "";
      rows.formula("T(" + cell + ")", word, look.text(false));
      return;
    }
    // SUM and T, since a filled cell without a figure holds an empty text
    double factor =
        figure.quantity().unit(plan.system()).si() / figure.quantity().unit(system).si();
    double shown = Double.isFinite(value.number()) ? value.number() : 0;
    rows.formula(
        "SUM(" + cell + ")" + (factor == 1 ? "" : "*" + Totals.plain(factor)),
        shown * factor,
        look.number(column == HoursColumn.COUNTED ? 0 : figure.decimals(system)));
  }

  private void job(JobFigure figure, double hours, String place) {
    rows.row();
    for (HoursColumn column : HoursColumn.values()) {
      switch (column) {
        case SURFACE -> rows.text(figure.title(), look.text(false));
        case COUNTED -> rows.number(1, look.number(0));
        case LABOUR -> rows.formula(place, hours, look.number(2));
        default -> rows.skip(1);
      }
    }
  }

  private String keyFormula(HoursColumn column) {
    return column == HoursColumn.ROOM_KEY
        ? HoursColumn.keyFormula(rows.number(), HoursColumn.FLOOR, HoursColumn.ROOM)
        : HoursColumn.keyFormula(
            rows.number(), HoursColumn.COATING, HoursColumn.COLOUR, HoursColumn.SHEEN);
  }

  private static String key(HoursColumn column, FilledLine line) {
    return column == HoursColumn.ROOM_KEY ? HoursKeys.room(line) : HoursKeys.order(line);
  }

  private static String cell(SheetPlan plan, int row, int column) {
    return Texts.sheet(plan.sheet())
        + "!"
        + new CellReference(row - 1, column, true, true).formatAsString();
  }
}
