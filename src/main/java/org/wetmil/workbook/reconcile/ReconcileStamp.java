package org.wetmil.workbook.reconcile;

import java.time.LocalDate;
import java.util.List;
import org.wetmil.reconcile.SettingsTaken;

/**
 * What the workbook says of how it came about.
 *
 * @param settings as they were taken
 */
public record ReconcileStamp(
    LocalDate date, String version, List<Input> inputs, SettingsTaken settings) {
  public ReconcileStamp {
    inputs = List.copyOf(inputs);
  }

  /**
   * A file that was read.
   *
   * @param what what it is and how it was taken, in words
   */
  public record Input(String file, String what, String sha256) {}
}
