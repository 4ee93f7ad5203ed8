package org.wetmil.workbook.look;

import org.wetmil.workbook.copy.CellContent;
import org.wetmil.workbook.copy.CellContent.Formula;
import org.wetmil.workbook.copy.CellContent.Num;
import org.wetmil.workbook.copy.CellContent.Text;
import org.wetmil.workbook.copy.CellContent.Value;

/** What cells of ours hold. */
final class Contents {
  private Contents() {}

  static Text text(String text) {
    return new Text(Texts.fitting(text));
  }

  /** A number; an empty text where there is none that a cell could hold. */
  static Value number(double value) {
    return Double.isFinite(value) ? new Num(value) : new Text("");
  }

  /** A formula with its value; the value alone where there is no formula. */
  static CellContent formula(String formula, double value) {
    return formula == null ? number(value) : new Formula(formula, number(value));
  }

  static CellContent formula(String formula, String value) {
    return new Formula(formula, text(value));
  }
}
