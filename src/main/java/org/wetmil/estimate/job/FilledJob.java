package org.wetmil.estimate.job;

import java.util.List;
import java.util.Map;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.FilledLine;

/** A filled bid with all that follows from its lines together. */
public record FilledJob(
    FilledBid filled,
    JobHours hours,
    Order order,
    JobPrice price,
    JobRange range,
    Switching switching) {

  public static FilledJob of(FilledBid filled) {
    JobHours hours = JobHours.of(filled);
    Map<List<String>, List<FilledLine>> groups = Order.groups(filled);
    JobDraws draws = JobDraws.of(filled.bid(), groups);
    Order order = Order.of(filled, groups, draws);
    JobPrice price = JobPrice.of(filled, hours, order);
    JobRange range = JobRange.of(filled, draws, hours, order, price);
    return new FilledJob(filled, hours, order, price, range, Switching.of(filled));
  }

  /** Paint of the lines that count and of the hoses, in gallons. */
  public double paintGal() {
    return filled.total(FilledColumn.PAINT) + order.hoseGal();
  }
}
