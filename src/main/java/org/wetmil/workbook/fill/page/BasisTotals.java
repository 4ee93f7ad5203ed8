package org.wetmil.workbook.fill.page;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.quantity.Quantity;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.SheetPlan;
import org.wetmil.workbook.fill.beside.Totals;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Rows;

/** The totals of the lines that count, as formulas over the bid itself. */
final class BasisTotals {
  private final XSSFWorkbook workbook;
  private final Look look;
  private final FilledBid filled;
  private final List<SheetPlan> plans;
  private final BasisBook book;
  private final Rows rows;

  BasisTotals(
      XSSFWorkbook workbook,
      Look look,
      FilledBid filled,
      List<SheetPlan> plans,
      BasisBook book,
      Rows rows) {
    this.workbook = workbook;
    this.look = look;
    this.filled = filled;
    this.plans = plans;
    this.book = book;
    this.rows = rows;
  }

  void write() {
    rows.row().text("Totals of the lines that count", look.block());
    rows.underline(BasisSheet.PRINTED, look.block());
    total("Net area", FilledColumn.NET_AREA);
    total("Paint", FilledColumn.PAINT);
    Set<String> coatings = new LinkedHashSet<>();
    filled
        .lines()
        .filter(FilledLine::isFilled)
        .forEach(line -> coatings.add(line.work().coating().name()));
    coatings.forEach(this::paintOf);
    total("Labour of the lines", FilledColumn.LABOUR);
    long left = filled.lines().filter(FilledLine::isLeftOut).count();
    long open = filled.lines().filter(line -> !line.isFilled() && !line.isLeftOut()).count();
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
}
