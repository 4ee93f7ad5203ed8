package org.wetmil.estimate.compare;

import java.util.List;
import org.wetmil.estimate.BidLine;

/**
 * A line that is not the same in both versions.
 *
 * @param a null where it is only in the second
 * @param b null where it is only in the first
 * @param how null where it is only in one
 * @param inputs what it states otherwise; none where others have changed it, such as a line before
 *     it that now bears the openings of its room
 * @param before what it came to with the second version's settings, tables and openings
 * @param after what it comes to in the second version
 */
public record LineChange(
    BidLine a,
    BidLine b,
    LinePair.How how,
    List<InputChange> inputs,
    Amounts before,
    Amounts after) {
  public LineChange {
    inputs = List.copyOf(inputs);
  }

  /** The line as it is now, or as it was where it is no more. */
  public BidLine line() {
    return b == null ? a : b;
  }

  public Amounts effect() {
    return after.minus(before);
  }
}
