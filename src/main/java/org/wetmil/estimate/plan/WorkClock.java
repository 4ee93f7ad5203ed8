package org.wetmil.estimate.plan;

/**
 * Hours on a calendar of working days: day d, from 0, begins at hour 24 d and is worked for the
 * first hours of it. Nights dry paint; days off are not known here.
 */
final class WorkClock {
  /** A last bit of a double must not make another day (house). */
  private static final double ROUNDING = 1e-9;

  private final double hoursADay;
  private double now;

  /**
   * @param hoursADay above 0, at most 24
   */
  WorkClock(double hoursADay) {
    this.hoursADay = hoursADay;
  }

  /** Hours since the first morning. */
  double now() {
    return now;
  }

  /** Works so many hours, over as many days as it takes. */
  void work(double hours) {
    double left = hours;
    while (left > ROUNDING) {
      double today = endOfDay(now) - now;
      if (today <= ROUNDING) {
        now = morningAfter(now);
        today = hoursADay;
      }
      double done = Math.min(left, today);
      now += done;
      left -= done;
    }
  }

  /**
   * Waits for an hour; one at night is the next morning's.
   *
   * @return working hours that nobody worked
   */
  double waitUntil(double hour) {
    double idle = worked(hour) - worked(now);
    now = Math.max(now, hour);
    if (now > endOfDay(now) - ROUNDING) {
      now = morningAfter(now);
    }
    return Math.max(0, idle);
  }

  /** The working day of an hour at which work begins, from 1. */
  int dayBegun(double hour) {
    double late = hour >= endOfDay(hour) - ROUNDING ? morningAfter(hour) : hour;
    return (int) Math.floor(late / 24) + 1;
  }

  /** The working day of an hour at which work has ended, from 1. */
  static int dayEnded(double hour) {
    return (int) Math.floor(Math.max(0, hour - ROUNDING) / 24) + 1;
  }

  /** Working hours up to an hour. */
  private double worked(double hour) {
    double days = Math.floor(hour / 24);
    return days * hoursADay + Math.min(hoursADay, hour - 24 * days);
  }

  private double endOfDay(double hour) {
    return 24 * Math.floor(hour / 24) + hoursADay;
  }

  private static double morningAfter(double hour) {
    return 24 * (Math.floor(hour / 24) + 1);
  }
}
