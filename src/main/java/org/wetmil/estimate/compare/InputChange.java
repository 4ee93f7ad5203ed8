package org.wetmil.estimate.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.FilledColumn;
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

  static List<InputChange> of(BidLine a, BidLine b) {
    List<InputChange> changes = new ArrayList<>();
    for (InputColumn column : InputColumn.values()) {
      if (!Same.same(column, a.get(column), b.get(column))) {
        changes.add(
            new InputChange(column, column.heading(), said(a.get(column)), said(b.get(column))));
      }
    }
    for (FilledColumn column : FilledColumn.values()) {
      double one = a.earlier().typed(column);
      double other = b.earlier().typed(column);
      boolean same =
          Double.compare(one, other) == 0 || Math.abs(one - other) <= 1e-9 * Math.abs(one);
      if (!same) {
        changes.add(
            new InputChange(
                null, column.heading() + " (typed over)", typed(column, a), typed(column, b)));
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

  private static String typed(FilledColumn column, BidLine line) {
    double base = line.earlier().typed(column);
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
