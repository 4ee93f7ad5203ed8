package org.wetmil.measure;

import java.util.Optional;
import org.wetmil.quantity.Unit;

/** What the text of a cell turned out to be. */
public sealed interface Typed {

  /**
   * A number.
   *
   * @param value the number, in {@code unit}; of feet and inches, feet
   * @param unit the unit typed with it, empty when there was none
   */
  record Value(double value, Optional<Unit> unit) implements Typed {}

  /** Left open by the estimator: empty, a dash, n/a, TBD and the like. Not the same as 0. */
  record NotKnown() implements Typed {}

  /**
   * Neither.
   *
   * @param raw the text as it stands in the cell
   * @param expected what would have been read, to be shown to the user after "expected"
   */
  record Refused(String raw, String expected) implements Typed {}
}
