package org.wetmil.workbook.fill.beside;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.BiFunction;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.workbook.look.Texts;
import org.wetmil.workbook.stream.SheetReference;

/**
 * Formulas over the filled columns of all bid sheets. They take whole columns, so that sorting,
 * filtering, inserting and appending rows keep them right.
 */
public final class Totals {
  /** Fewer than the 8,192 of a formula, since programs count some of their own. */
  private static final int MOST_CHARACTERS = 8_000;

  private Totals() {}

  /** The sum of a column over the lines that count. */
  public static List<String> all(List<SheetPlan> plans, FilledColumn column, UnitSystem system) {
    return sum(
        plans,
        column,
        system,
        (counted, summed) -> "SUMIF(" + counted + ",1," + summed + ")",
        null);
  }

  /** The paint of one coating over the lines that count. */
  public static List<String> ofCoating(List<SheetPlan> plans, String coating, UnitSystem system) {
    return sum(
        plans,
        FilledColumn.PAINT,
        system,
        (counted, summed) -> "SUMIFS(" + summed + "," + counted + ",1",
        coating);
  }

  private static List<String> sum(
      List<SheetPlan> plans,
      FilledColumn column,
      UnitSystem system,
      BiFunction<String, String, String> one,
      String coating) {
    return plans.stream()
        .flatMap(
            plan ->
                plan.firstColumns().stream()
                    .map(
                        first -> {
                          String counted = whole(plan, first, FilledColumn.COUNTED);
                          String formula = one.apply(counted, whole(plan, first, column));
                          String closed =
                              coating == null
                                  ? formula
                                  : formula
                                      + ","
                                      + whole(plan, first, FilledColumn.COATING_USED)
                                      + ","
                                      + Texts.criterion(coating)
                                      + ")";
                          return closed + factor(column, plan.system(), system);
                        }))
        .toList();
  }

  /**
   * A formula that adds up terms. Where they are more than a formula can hold, as in a workbook of
   * a hundred bid sheets, names hold parts of the sum.
   */
  public static String added(XSSFWorkbook workbook, List<String> terms) {
    String whole = String.join("+", terms);
    if (whole.length() <= MOST_CHARACTERS) {
      return whole;
    }
    int half = terms.size() / 2;
    return part(workbook, terms.subList(0, half))
        + "+"
        + part(workbook, terms.subList(half, terms.size()));
  }

  private static String part(XSSFWorkbook workbook, List<String> terms) {
    String formula = added(workbook, terms);
    XSSFName name = workbook.createName();
    name.setNameName(Marks.PREFIX + "part_of_sum_" + workbook.getNumberOfNames());
    name.setRefersToFormula(formula);
    return name.getNameName();
  }

  /** What takes a figure of a sheet in other units to the units of the total. */
  private static String factor(FilledColumn column, UnitSystem from, UnitSystem to) {
    double factor = column.quantity().unit(from).si() / column.quantity().unit(to).si();
    return factor == 1 ? "" : "*" + plain(factor);
  }

  static String whole(SheetPlan plan, int firstColumn, FilledColumn column) {
    return SheetReference.column(plan.sheet(), firstColumn + plan.columns().indexOf(column));
  }

  /** A number as a formula writes it. */
  public static String plain(double value) {
    return new BigDecimal(Double.toString(value)).toPlainString();
  }
}
