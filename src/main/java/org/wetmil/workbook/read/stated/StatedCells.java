package org.wetmil.workbook.read.stated;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import org.wetmil.catalogue.Field;
import org.wetmil.catalogue.StatedRow.StatedCell;
import org.wetmil.catalogue.Tables;
import org.wetmil.measure.DecimalMark;
import org.wetmil.measure.LengthText;
import org.wetmil.measure.NumberText;
import org.wetmil.measure.Typed;
import org.wetmil.quantity.Dimension;
import org.wetmil.quantity.Unit;
import org.wetmil.workbook.read.grid.CellText;
import org.wetmil.workbook.read.words.UnitWords;
import org.wetmil.workbook.stream.CellAddress;
import org.wetmil.workbook.stream.CellKind;
import org.wetmil.workbook.stream.RawCell;

/** Reads the cells of the estimator's tables of figures. */
final class StatedCells {
  private final CellText texts;
  private final DecimalMark mark;

  StatedCells(CellText texts, DecimalMark mark) {
    this.texts = texts;
    this.mark = mark;
  }

  /** The unit that stands in the cell itself. */
  Optional<Unit> unit(RawCell cell) {
    return cell.kind() == CellKind.NUMBER
        ? UnitWords.inFormat(texts.format(cell))
        : typed(cell) instanceof Typed.Value value ? value.unit() : Optional.empty();
  }

  /** The cell as stated; empty when nothing is, or n/a and the like. */
  Optional<StatedCell> read(Tables table, Field field, RawCell cell, Optional<Unit> unit) {
    String address = new CellAddress(cell.row(), cell.column()).toString();
    boolean date = texts.isDate(cell);
    boolean isNumber = cell.kind() == CellKind.NUMBER && !date;
    boolean percent = texts.isPercent(cell);
    boolean text = field.quantity() != null && !field.quantity().isNumber();
    String raw = isNumber && !text ? texts.exact(cell) : texts.shown(cell).strip();
    if (cell.kind() == CellKind.BLANK) {
      raw = "=" + cell.formula();
    }
    double number = CellText.number(cell);
    if (date) {
      number = Double.NaN;
    } else if (!isNumber) {
      Typed typed = typed(cell);
      if (typed instanceof Typed.NotKnown && cell.kind() == CellKind.TEXT) {
        return Optional.empty();
      }
      number = typed instanceof Typed.Value value ? value.value() : Double.NaN;
    }
    if (table == Tables.SURFACES && text && unit.isPresent() && !Double.isNaN(number)) {
      raw = inches(unit.get(), number, raw);
    }
    return Optional.of(
        new StatedCell(address, raw, number, ofShare(cell, number, unit), isNumber, percent));
  }

  /** Per cent in the heading says how most write it; 0.36 and a percent format are shares still. */
  private Unit ofShare(RawCell cell, double number, Optional<Unit> unit) {
    boolean inCell = unit(cell).isPresent();
    boolean share = texts.isPercent(cell) || (!inCell && number <= 1);
    return unit.filter(each -> each != Unit.PERCENT || !share).orElse(null);
  }

  /** The narrowest dimension of a surface is a word or a number of inches. */
  private static String inches(Unit unit, double number, String raw) {
    return unit.dimension() == Dimension.LENGTH
        ? BigDecimal.valueOf(unit.to(Unit.INCH, number))
            .round(MathContext.DECIMAL32)
            .stripTrailingZeros()
            .toPlainString()
        : raw;
  }

  private Typed typed(RawCell cell) {
    if (cell.kind() != CellKind.TEXT) {
      return new Typed.Refused(cell.text(), "");
    }
    Typed number = NumberText.read(cell.text(), mark);
    return number instanceof Typed.Refused ? LengthText.read(cell.text(), mark) : number;
  }
}
