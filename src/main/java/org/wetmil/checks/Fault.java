package org.wetmil.checks;

/**
 * What a rule found; with its check, a {@link Finding}.
 *
 * @param stops whether the line cannot be computed because of it
 */
record Fault(
    Spot spot,
    String room,
    String surface,
    String measured,
    String limit,
    String message,
    boolean stops) {

  /** About the whole job. */
  static Fault ofJob(String measured, String limit, String message) {
    return at(Spot.JOB, measured, limit, message);
  }

  /** About a sheet, or a cell of a table sheet. */
  static Fault at(Spot spot, String measured, String limit, String message) {
    return new Fault(spot, "", "", measured, limit, message, false);
  }

  /** The same where the line cannot be computed because of it. */
  Fault stopping(boolean stopping) {
    return new Fault(spot, room, surface, measured, limit, message, stopping);
  }
}
