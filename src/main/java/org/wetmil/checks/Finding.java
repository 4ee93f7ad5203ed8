package org.wetmil.checks;

import java.util.List;
import org.wetmil.estimate.FilledLine;
import org.wetmil.estimate.InputColumn;

/**
 * One thing found, as data; sentences are put together where they are shown.
 *
 * @param check id of the check that found it
 * @param spot where it is
 * @param room the room as written, or the job of a ledger line; empty when it is about none
 * @param surface the surface as written, or the coating of a ledger line; empty as above
 * @param measured what was found, with its unit; a cell's raw text is in quotes
 * @param limit what would have been right, with its unit
 * @param message one sentence for the estimator
 */
public record Finding(
    String check,
    Severity severity,
    Spot spot,
    String room,
    String surface,
    String measured,
    String limit,
    String message) {

  /**
   * Which of the lines in its row it is about, since tables side by side share rows.
   *
   * @return how many of them stand to its left; -1 when it is about none
   */
  public int among(List<FilledLine> inRow) {
    if (inRow.size() == 1) {
      return 0;
    }
    for (int i = 0; i < inRow.size(); i++) {
      if (isAbout(inRow.get(i))) {
        return i;
      }
    }
    return -1;
  }

  /** Whether one of several lines in its row is the one. */
  public boolean isAbout(FilledLine inRow) {
    return room.equals(inRow.line().text(InputColumn.ROOM))
        && surface.equals(inRow.line().text(InputColumn.SURFACE));
  }
}
