package org.wetmil.estimate.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Figure;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;
import org.wetmil.estimate.InputValue;
import org.wetmil.quantity.Unit;

/**
 * An input that a line states otherwise in the second version.
 *
 * @param column where it stands; null for a figure typed over a filled one
 * @param from as the cell says it, with its unit; "blank" where it says nothing
 */
public record InputChange(InputColumn column, String heading, String from, String to) {
  private static final double ROUNDING = 1e-9;

  static List<InputChange> of(FilledLine before, FilledLine after) {
    BidLine a = before.line();
    BidLine b = after.line();
    List<InputChange> changes = new ArrayList<>();
    for (InputColumn column : InputColumn.values()) {
      if (!Same.same(column, a.get(column), b.get(column))) {
        changes.add(
            new InputChange(column, column.heading(), said(a.get(column)), said(b.get(column))));
      }
    }
    for (FilledColumn column : FilledColumn.values()) {
      double one = typed(before, column);
      double other = typed(after, column);
      boolean same =
          Double.compare(one, other) == 0 || Math.abs(one - other) <= ROUNDING * Math.abs(one);
      if (!same) {
        changes.add(
            new InputChange(
                null,
                column.heading() + " (typed over)",
                said(column, one, before),
                said(column, other, after)));
      }
    }
    return changes;
  }

  private static String said(InputValue value) {
    if (value.isBlank()) {
      return "blank";
    }
    String raw = value.raw().strip();
    boolean bare = value.hasNumber() && raw.matches("[\\d., +-]+") && value.unit() != Unit.ONE;
    return bare ? raw + " " + value.unit().symbol() : raw;
  }

  /** What was typed over a filled figure, in the kept unit of its column; NaN for nothing. */
  private static double typed(FilledLine line, FilledColumn column) {
    return line.figures().get(column) instanceof Figure.Typed ? line.base(column) : Double.NaN;
  }

  private static String said(FilledColumn column, double base, FilledLine line) {
    return Double.isNaN(base)
        ? "ours"
        : String.format(
                Locale.ROOT,
                "%.2f %s",
                column.quantity().shown(base, line.system()),
                column.quantity().unit(line.system()).symbol())
            .strip();
  }
}
