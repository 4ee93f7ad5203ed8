package org.wetmil.audit.tables;

import org.wetmil.catalogue.Catalogue;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.estimate.FilledColumn;
import org.wetmil.estimate.job.JobFigure;
import org.wetmil.estimate.job.JobHours;
import org.wetmil.estimate.job.Order;

/**
 * What a bid comes to.
 *
 * @param paintGal paint of the whole bid in US gallons
 * @param hours person-hours of the whole bid
 */
public record Filling(double paintGal, double hours) {
  /** Differences below this share of the whole are roundings. */
  private static final double NOTHING = 1e-9;

  static Filling of(FilledBid filled) {
    return new Filling(
        filled.total(FilledColumn.PAINT) + Order.hoseGal(filled),
        JobHours.of(filled).number(JobFigure.TOTAL));
  }

  static Filling of(Bid bid, Catalogue tables) {
    return of(fill(bid, tables));
  }

  static FilledBid fill(Bid bid, Catalogue tables) {
    return Estimator.fill(
        new Bid(bid.job(), bid.system(), tables, bid.sheets(), bid.problems(), bid.remarks()));
  }

  double paintOver(Filling other) {
    return difference(paintGal, other.paintGal);
  }

  double hoursOver(Filling other) {
    return difference(hours, other.hours);
  }

  private static double difference(double one, double other) {
    return Math.abs(one - other) <= NOTHING * Math.abs(other) ? 0 : one - other;
  }
}
