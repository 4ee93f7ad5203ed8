package org.wetmil.workbook.read.heading;

import java.util.List;
import java.util.Optional;
import org.wetmil.estimate.InputColumn;
import org.wetmil.quantity.Unit;

/**
 * The heading of one column of a sheet.
 *
 * @param column counted from 0
 * @param text what stands there, of stacked headings all of it
 * @param candidates what it may name; none when it is not known, several when the word has more
 *     than one meaning
 * @param unit the unit that stands with it
 * @param atGun whether it says that a pressure is measured at the gun
 */
public record Heading(
    int column, String text, List<InputColumn> candidates, Optional<Unit> unit, boolean atGun) {
  public Heading {
    candidates = List.copyOf(candidates);
  }

  /** Whether it names one column and no other. */
  public boolean isCertain() {
    return candidates.size() == 1;
  }

  public boolean isKnown() {
    return !candidates.isEmpty();
  }

  /** The same heading on another column. */
  Heading at(int other) {
    return new Heading(other, text, candidates, unit, atGun);
  }

  Heading withUnit(Unit stated) {
    return new Heading(column, text, candidates, Optional.of(stated), atGun);
  }
}
