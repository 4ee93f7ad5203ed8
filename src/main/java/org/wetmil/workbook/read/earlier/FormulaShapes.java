package org.wetmil.workbook.read.earlier;

import java.util.function.Function;
import org.wetmil.estimate.FilledColumn;

/**
 * What Basis keeps of the formulas of a fill: a code for each shape that those of a column have. A
 * shape leaves out in which row the line stands and of which row of Basis a figure is, so that
 * sorting, inserting and saving by other programs do not alter it.
 */
public final class FormulaShapes {
  /** What the list of figures on Basis calls these rows. */
  public static final String TABLE = "Formulas";

  public static final String FIGURE = "Shapes";

  /** In place of codes, where there are more than a cell should hold: all formulas are ours. */
  public static final String TOO_MANY = "*";

  /** A cell of the estimator's in the row of the formula. */
  public static final String CELL = "{cell}";

  private FormulaShapes() {}

  /** A filled cell in the row of the formula. */
  public static String role(FilledColumn column) {
    return "{" + column.name() + "}";
  }

  /** A figure on Basis. */
  public static String role(String table, String figure) {
    return "{" + table + "|" + figure + "}";
  }

  /** The code of a formula whose references are written as roles. */
  public static String code(String formula) {
    return code(FormulaText.of(formula), FormulaText.Ref::text);
  }

  static String code(FormulaText formula, Function<FormulaText.Ref, String> role) {
    int hash = formula.shape(role).hashCode();
    return Integer.toString(hash & Integer.MAX_VALUE, Character.MAX_RADIX);
  }
}
