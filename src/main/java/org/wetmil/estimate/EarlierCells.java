package org.wetmil.estimate;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.wetmil.formula.Written;

/**
 * What the cells of an earlier fill hold now in the row of a line, as far as they hold no formula
 * of ours: its choices, and whatever was put in the place of its formulas.
 *
 * @param numbers in the kept unit of their column; what the formulas of others came to among them
 * @param words texts, those of numbers excepted
 * @param written formulas of others, where they came to a number
 * @param kept whether a number typed over a formula stays, until a fill with refresh
 */
public record EarlierCells(
    Map<FilledColumn, Double> numbers,
    Map<FilledColumn, String> words,
    Map<FilledColumn, Written> written,
    boolean kept) {
  public static final EarlierCells NONE = new EarlierCells(Map.of(), Map.of(), Map.of(), true);

  /** Columns that hold a number or word that follows nothing. */
  public static final Set<FilledColumn> CHOICES =
      Collections.unmodifiableSet(
          EnumSet.of(
              FilledColumn.ORIFICE,
              FilledColumn.FAN,
              FilledColumn.TIP_CODE,
              FilledColumn.PRESSURE,
              FilledColumn.COATS));

  /** Columns that are formulas wherever they are numbers, so that a number there was typed. */
  private static final Set<FilledColumn> FORMULAS = formulas();

  public EarlierCells {
    numbers = Map.copyOf(numbers);
    words = Map.copyOf(words);
    written = Map.copyOf(written);
  }

  private static Set<FilledColumn> formulas() {
    Set<FilledColumn> formulas = EnumSet.complementOf(EnumSet.copyOf(CHOICES));
    formulas.removeAll(
        EnumSet.of(FilledColumn.COATING_USED, FilledColumn.COUNTED, FilledColumn.FINDINGS));
    return formulas;
  }

  /** Whether the line was never filled before. */
  public boolean isEmpty() {
    return numbers.isEmpty() && words.isEmpty() && written.isEmpty();
  }

  /** Whether a number in a column was typed over a formula of ours. */
  public static boolean isFormula(FilledColumn column) {
    return FORMULAS.contains(column);
  }

  /** The number typed over a formula, in the kept unit of its column; NaN when there is none. */
  public double typed(FilledColumn column) {
    return isFormula(column) ? numbers.getOrDefault(column, Double.NaN) : Double.NaN;
  }
}
