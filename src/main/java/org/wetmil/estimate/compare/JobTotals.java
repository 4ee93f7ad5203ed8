package org.wetmil.estimate.compare;

import java.util.Optional;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.estimate.job.JobPrice;
import org.wetmil.estimate.job.Order;
import org.wetmil.estimate.price.Price;

/**
 * What a bid comes to as a job.
 *
 * @param lines what its lines come to together
 * @param paintGal paint of the job, that of the hoses included
 * @param hours person-hours of the job, its own rows included
 * @param price empty where not all of it is stated
 */
public record JobTotals(Amounts lines, double paintGal, double hours, Optional<Price> price) {

  static JobTotals of(FilledBid filled) {
    JobHours hours = JobHours.of(filled);
    Order order = Order.asBought(filled);
    return new JobTotals(
        filled.lines().map(Amounts::of).reduce(Amounts.NONE, Amounts::plus),
        filled.total(FilledColumn.PAINT) + order.hoseGal(),
        hours.number(JobFigure.TOTAL),
        JobPrice.of(filled, hours, order).price());
  }

  /** Paint that only the job has: what the hoses keep. */
  public double jobGal() {
    return paintGal - lines.paintGal();
  }

  /** Person-hours that only the job has: changes, touch-up, set-up and clean-up. */
  public double jobHours() {
    return hours - lines.hours();
  }
}
