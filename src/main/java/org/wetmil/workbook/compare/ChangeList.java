package org.wetmil.workbook.compare;

import java.util.Arrays;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.compare.Amounts;
import org.wetmil.estimate.compare.BidComparison;
import org.wetmil.estimate.compare.InputChange;
import org.wetmil.estimate.compare.LineChange;
import org.wetmil.estimate.compare.TableChange;
import org.wetmil.quantity.Quantity;
import org.wetmil.workbook.look.Heights;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;

/** The list of changes: one row for each input, the figures of a line on its first row. */
final class ChangeList {
  private static final int[] WIDTHS = {10, 22, 11, 13, 12, 12, 13, 11, 11, 7, 7, 7, 7, 7, 7, 7, 9};
  static final int COLUMNS = WIDTHS.length;

  private final Look look;
  private final BidComparison compared;
  private final Version a;
  private final Version b;
  private Rows rows;
  private int column;
  private int lines;

  ChangeList(Look look, BidComparison compared, Version a, Version b) {
    this.look = look;
    this.compared = compared;
    this.a = a;
    this.b = b;
  }

  static int width() {
    return Arrays.stream(WIDTHS).sum();
  }

  void widths(XSSFSheet sheet) {
    Pages.widths(sheet, WIDTHS);
  }

  /** Writes the list; gives the row of its headings. */
  int write(Rows into) {
    rows = into;
    String area = " (" + Quantity.AREA.unit(compared.system()).symbol() + ")";
    String paint = " (" + Quantity.VOLUME.unit(compared.system()).symbol() + ")";
    rows.row().height(45);
    List.of(
            "What",
            "Room or row",
            "Surface",
            "Coating",
            "Cell in A",
            "Cell in B",
            "Input",
            "In A",
            "In B",
            "Area more" + area,
            "Paint before" + paint,
            "Paint after" + paint,
            "Paint more" + paint,
            "Hours before",
            "Hours after",
            "Hours more",
            compared.oneCurrency() ? "Cost more" : "Cost more (two currencies)")
        .forEach(heading -> rows.text(heading, look.heading()));
    int heading = rows.number();
    compared.tables().forEach(this::table);
    compared.changed().forEach(line -> line("changed", line));
    compared.onlyB().forEach(line -> line("only in B", line));
    compared.onlyA().forEach(line -> line("only in A", line));
    return heading;
  }

  private void table(TableChange change) {
    begin(change.table().title(), change.row(), "", "");
    words(change.whereFrom());
    words(change.whereTo());
    words(change.figure().isEmpty() ? "value" : change.figure());
    words(change.from());
    words(change.to());
    end();
  }

  private void line(String what, LineChange change) {
    BidLine line = change.line();
    String floor = line.text(InputColumn.FLOOR);
    String room = line.text(InputColumn.ROOM);
    String place = floor.isEmpty() ? room : floor + ", " + room;
    String surface = line.text(InputColumn.SURFACE);
    String coating = line.text(InputColumn.COATING);
    begin(what, place, surface, coating);
    List<InputChange> inputs = change.inputs();
    input(change, inputs.isEmpty() ? null : inputs.get(0));
    amounts(change.before(), change.after(), change.effect());
    end();
    inputs.stream()
        .skip(1)
        .forEach(
            input -> {
              begin(what, place, surface, coating);
              input(change, input);
              end();
            });
  }

  private void input(LineChange change, InputChange input) {
    InputColumn column = input == null ? null : input.column();
    words(change.a() == null ? "" : a.address(change.a(), column));
    words(change.b() == null ? "" : b.address(change.b(), column));
    boolean both = change.a() != null && change.b() != null;
    words(input != null ? input.heading() : both ? "none of its own" : "");
    words(input == null ? "" : input.from());
    words(input == null ? "" : input.to());
  }

  private void begin(String... words) {
    rows.row();
    column = 0;
    lines = 1;
    for (String each : words) {
      words(each);
    }
  }

  /** Words in the next column; the row grows with them. */
  private void words(String text) {
    rows.text(text, column == 1 ? look.strongText() : look.text(true));
    lines = Math.max(lines, Heights.lines(text, WIDTHS[column] - 2));
    column++;
  }

  private void end() {
    rows.height(Heights.points(lines));
  }

  private void amounts(Amounts before, Amounts after, Amounts effect) {
    int row = rows.number();
    rows.number(shown(Quantity.AREA, effect.areaFt2()), look.sparse(1))
        .number(shown(Quantity.VOLUME, before.paintGal()), look.number(2))
        .number(shown(Quantity.VOLUME, after.paintGal()), look.number(2))
        .formula(
            "L%d-K%d".formatted(row, row),
            shown(Quantity.VOLUME, effect.paintGal()),
            look.strongNumber(2))
        .number(before.hours(), look.number(2))
        .number(after.hours(), look.number(2))
        .formula("O%d-N%d".formatted(row, row), effect.hours(), look.strongNumber(2));
    if (compared.oneCurrency()) {
      rows.number(effect.cost(), look.sparse(2));
    }
  }

  private double shown(Quantity quantity, double base) {
    return quantity.shown(base, compared.system());
  }
}
