package org.wetmil.audit.past;

import java.util.List;

/**
 * What some lines of a bid took together.
 *
 * @param lines the lines it covers: one, those of a coating, or all of the job
 * @param amount US gallons or person-hours, as read
 */
public record Actual(Measure measure, List<PastLine> lines, double amount) {
  public Actual {
    lines = List.copyOf(lines);
  }
}
