package org.wetmil.reconcile;

import java.time.LocalDate;

/**
 * What the bookkeeper may set.
 *
 * @param toleranceShare difference from the bid, as a share of it, up to which nothing is said
 * @param toleranceContainers the same in containers; a difference is flagged past both
 * @param dropDuplicates whether a line that repeats another is left out of the use
 * @param from first day, itself counted; null for no limit
 * @param to last day, itself counted; null for no limit
 */
public record ReconcileSettings(
    double toleranceShare,
    double toleranceContainers,
    boolean dropDuplicates,
    LocalDate from,
    LocalDate to) {
  /** The built-in settings, all days. */
  public static final ReconcileSettings DEFAULT = SettingsTaken.BUILT_IN.over(null, null);

  boolean hasPeriod() {
    return from != null || to != null;
  }

  boolean isInside(LocalDate date) {
    return (from == null || !date.isBefore(from)) && (to == null || !date.isAfter(to));
  }
}
