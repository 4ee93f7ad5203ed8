package org.wetmil.workbook.fill.page;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.wetmil.catalogue.Entry;
import org.wetmil.catalogue.Kind;
import org.wetmil.catalogue.Origin;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.quantity.Quantity;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.fill.beside.BasisBook;
import org.wetmil.workbook.fill.beside.FormulaCodes;
import org.wetmil.workbook.fill.beside.SheetPlan;
import org.wetmil.workbook.fill.beside.Totals;
import org.wetmil.workbook.look.Look;
import org.wetmil.workbook.look.Pages;
import org.wetmil.workbook.look.Rows;
import org.wetmil.workbook.read.earlier.BasisWords;
import org.wetmil.workbook.read.earlier.FormulaShapes;
import org.wetmil.workbook.stream.SheetReference;

/** Every figure that the formulas rest on, with unit, kind, source and where it is from. */
final class BasisFigures {
  private static final String FORMULAS = "the formulas of this fill";
  private static final String SHAPES =
      "how many of its formulas differ in more than their row; the codes tell ours from yours";

  private final XSSFSheet sheet;
  private final Look look;
  private final List<SheetPlan> plans;
  private final BasisBook book;
  private final Rows rows;

  BasisFigures(XSSFSheet sheet, Look look, List<SheetPlan> plans, BasisBook book, Rows rows) {
    this.sheet = sheet;
    this.look = look;
    this.plans = plans;
    this.book = book;
    this.rows = rows;
  }

  void write() {
    rows.row();
    for (String heading : BasisWords.FIGURES) {
      rows.text(heading, look.heading());
    }
    int headings = rows.number();
    sheet.setRepeatingRows(new CellRangeAddress(headings - 1, headings - 1, -1, -1));
    for (BasisBook.Item item : book.items()) {
      rows.row()
          .text(item.table(), look.text(true))
          .text(item.row(), look.text(true))
          .text(item.figure(), look.text(true));
      value(item);
      String address = SheetReference.quoted(sheet.getSheetName()) + "!$D$" + rows.number();
      book.settle(item, address);
      if (!item.name().isEmpty()) {
        XSSFName name = sheet.getWorkbook().createName();
        name.setNameName(item.name());
        name.setRefersToFormula(address);
      }
    }
    FormulaCodes.of(plans, book).forEach(this::shapes);
  }

  private void shapes(FilledColumn column, FormulaCodes.Codes codes) {
    rows.row()
        .text(FormulaShapes.TABLE, look.text(true))
        .text(column.heading(), look.text(true))
        .text(FormulaShapes.FIGURE, look.text(true))
        .number(codes.count(), look.plain())
        .text("", look.text(false))
        .text(Kind.DERIVED.word(), look.text(true))
        .text(FORMULAS, look.text(true))
        .text("this fill", look.text(true))
        .text(SHAPES, look.text(true))
        .text(codes.text(), look.cut());
    BasisSheet.fit(rows, List.of("", "", "", "", "", "", FORMULAS, "", SHAPES));
  }

  private void value(BasisBook.Item item) {
    String unit = "";
    String from = "built in";
    double number = item.factor();
    if (item.entry() == null) {
      rows.number(number, look.shortened(number));
    } else {
      Entry entry = item.entry();
      from = entry.origin().text();
      if (Double.isNaN(entry.number())) {
        rows.text(entry.text(), look.text(true));
      } else {
        unit = entry.quantity().unit(book.system()).symbol();
        number = entry.quantity().shown(entry.number(), book.system());
        String follows = follows(entry);
        if (follows.isEmpty()) {
          rows.number(number, look.shortened(number));
        } else {
          rows.formula(follows, number, look.plain());
        }
      }
    }
    rows.text(unit, look.unit())
        .text(item.kind().word(), look.text(true))
        .text(item.source(), look.text(true))
        .text(from, look.text(true))
        .text(item.meaning(), look.text(true));
    if (Double.isNaN(number)) {
      rows.text(item.entry().text(), look.text(true));
    } else {
      rows.number(number, look.shortened(number));
    }
    String words = Double.isNaN(number) ? item.entry().text() : "";
    BasisSheet.fit(
        rows,
        List.of(
            item.table(),
            item.row(),
            item.figure(),
            words,
            unit,
            item.kind().word(),
            item.source(),
            from,
            item.meaning()));
  }

  /** A formula that follows the estimator's own cell; empty when there is none to follow. */
  private String follows(Entry entry) {
    if (!(entry.origin() instanceof Origin.Cell cell)
        || cell.isElsewhere()
        || Double.isNaN(cell.cellNumber())
        || entry.quantity() == Quantity.TEMPERATURE) {
      return "";
    }
    String address = SheetReference.quoted(cell.sheet()) + "!" + Pages.absolute(cell.address());
    Unit shown = entry.quantity().unit(book.system());
    return cell.unit() == shown
        ? address
        : address + "*" + Totals.plain(cell.unit().si() / shown.si());
  }
}
