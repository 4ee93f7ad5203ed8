package org.wetmil.estimate.job;

import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;

/** A filled bid with all that follows from its lines together. */
public record FilledJob(
    FilledBid filled, JobHours hours, Order order, JobPrice price, Switching switching) {

  public static FilledJob of(FilledBid filled) {
    JobHours hours = JobHours.of(filled);
    Order order = Order.of(filled);
    return new FilledJob(
        filled, hours, order, JobPrice.of(filled, hours, order), Switching.of(filled));
  }

  /** Paint of the lines that count and of the hoses, in gallons. */
  public double paintGal() {
    return filled.total(FilledColumn.PAINT) + order.hoseGal();
  }
}
