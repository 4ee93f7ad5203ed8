package org.wetmil.workbook.fill.beside;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.wetmil.checks.Finding;
import org.wetmil.checks.Severity;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.formula.Place;
import org.wetmil.workbook.copy.AddedCell;
import org.wetmil.workbook.copy.CellContent;
import org.wetmil.workbook.copy.RowAdditions;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Texts;

/** The filled cells of each row of one bid sheet, made when the row is written. */
public final class RowCells implements RowAdditions {
  /** Characters of the Findings column. */
  static final int FINDINGS_WIDTH = 84;

  private static final int HEADING_LINES = 3;

  private final SheetPlan plan;
  private final ColumnHeadings headings;
  private final Map<SheetPlan.Block, CellNames> names = new IdentityHashMap<>();
  private final Map<Integer, List<Finding>> findings;
  private final int heading;
  private final int[][] styles = new int[FilledColumn.values().length][2];
  private final int text;
  private final int findingText;

  /**
   * @param findings findings of each row, by the row from 1
   */
  public RowCells(
      SheetPlan plan,
      ColumnHeadings headings,
      BasisBook basis,
      Map<Integer, List<Finding>> findings,
      Look look) {
    this.plan = plan;
    this.headings = headings;
    plan.blocks().forEach(block -> names.put(block, new CellNames(block, basis)));
    this.findings = findings;
    this.heading = look.heading().getIndex();
    this.text = look.filledText(false).getIndex();
    this.findingText = look.filledText(true).getIndex();
    for (FilledColumn column : FilledColumn.values()) {
      int decimals = column.decimals(plan.system());
      boolean code = column == FilledColumn.TIP_CODE;
      styles[column.ordinal()][0] = look.filled(decimals, code).getIndex();
      styles[column.ordinal()][1] = look.filled(decimals, true).getIndex();
    }
  }

  @Override
  public List<AddedCell> forRow(int row) {
    List<AddedCell> cells = new ArrayList<>();
    for (SheetPlan.Block block : plan.blocks()) {
      if (row == block.table().headingRow()) {
        for (FilledColumn column : plan.columns()) {
          cells.add(
              new AddedCell(
                  block.column(column), heading, new CellContent.Text(headings.of(block, column))));
        }
      }
    }
    for (SheetPlan.Placed placed : plan.at(row)) {
      CellNames here = names.get(placed.block()).at(row + 1);
      int at = placed.block().firstColumn();
      for (FilledColumn column : plan.columns()) {
        cells.add(cell(placed, at++, column, here));
      }
    }
    // the headings of one table can stand in a row of lines of another
    cells.sort(Comparator.comparingInt(AddedCell::column));
    return cells;
  }

  @Override
  public double heightPt(int row) {
    boolean heading = plan.blocks().stream().anyMatch(block -> block.table().headingRow() == row);
    if (heading) {
      return Heights.points(HEADING_LINES);
    }
    List<Finding> found = findings.getOrDefault(row + 1, List.of());
    int lines = found.stream().mapToInt(each -> Heights.lines(line(each), FINDINGS_WIDTH)).sum();
    return lines < 2 ? 0 : Heights.points(lines);
  }

  private AddedCell cell(
      SheetPlan.Placed placed, int at, FilledColumn column, Function<Place, String> names) {
    FilledLine line = placed.line();
    if (column == FilledColumn.FINDINGS) {
      return new AddedCell(at, findingText, new CellContent.Text(findings(placed)));
    }
    Figure figure = line.figures().getOrDefault(column, new Figure.Empty());
    int style = styles[column.ordinal()][0];
    if (figure instanceof Figure.Live live) {
      double value = live.formula().value();
      if (!Double.isFinite(value)) {
        return new AddedCell(at, style, new CellContent.Text(""));
      }
      return new AddedCell(
          at,
          style,
          new CellContent.Formula(live.formula().print(names), new CellContent.Num(value)));
    }
    if (figure instanceof Figure.Typed typed) {
      int bold = styles[column.ordinal()][1];
      CellContent.Num number = new CellContent.Num(typed.number());
      return new AddedCell(
          at,
          bold,
          typed.own().isEmpty()
              ? number
              : new CellContent.Formula(typed.own().get().print(names), number));
    }
    if (figure instanceof Figure.Choice choice) {
      return new AddedCell(at, style, new CellContent.Num(choice.number()));
    }
    String word = figure instanceof Figure.Word said ? said.text() : "";
    return new AddedCell(at, text, new CellContent.Text(Texts.fitting(word)));
  }

  private String findings(SheetPlan.Placed placed) {
    int row = placed.line().line().row();
    boolean alone = plan.at(row - 1).size() == 1;
    return Texts.lines(
        findings.getOrDefault(row, List.of()).stream()
            .filter(finding -> alone || placed.isAbout(finding))
            .map(RowCells::line)
            .toList());
  }

  /**
   * A finding as the row shows it: begun by the name of its column, which the marking looks for. A
   * note is begun otherwise, since the cell it is about may well be right and is not marked.
   */
  static String line(Finding finding) {
    String column = finding.spot().column() == null ? "" : finding.spot().column().heading();
    if (finding.severity() == Severity.NOTE) {
      return (column.isEmpty() ? "Note: " : "Note on " + column + ": ") + finding.message();
    }
    return (column.isEmpty() ? "Line" : column) + ": " + finding.message();
  }
}
