package org.wetmil.audit.change;

import java.util.stream.Stream;
import org.wetmil.audit.model.AdditiveModel;
import org.wetmil.audit.model.Change;
import org.wetmil.audit.model.LeaveOneOut;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.past.PastLine;
import org.wetmil.audit.stats.Interval;

/**
 * The factors of one measure that a change asks for.
 *
 * @param observations the bids they come from
 * @param fits the models they come from
 * @param change which of them are used
 */
record Factors(Observations observations, LeaveOneOut fits, Change change) {

  Measure measure() {
    return observations.measure();
  }

  /** Factor on the estimate of a coating on a surface; an empty name is any. */
  double factor(String coating, String surface) {
    return Math.exp(log(fits.whole(), coating, surface));
  }

  Interval likely(String coating, String surface) {
    return fits.interval(model -> log(model, coating, surface), jobs(coating, surface)).exp();
  }

  /** Past bids with an outcome for a coating on a surface. */
  int jobs(String coating, String surface) {
    return (int)
        observations.list().stream()
            .filter(one -> coating.isEmpty() || one.share(GroupedBy.COATING, coating) > 0)
            .filter(one -> surface.isEmpty() || one.share(GroupedBy.SURFACE, surface) > 0)
            .mapToInt(Observation::bid)
            .distinct()
            .count();
  }

  /** The lines of every bid with an outcome. */
  Stream<PastLine> lines() {
    return observations.byBid().keySet().stream()
        .flatMap(bid -> observations.bids().get(bid).lines().stream());
  }

  private double log(AdditiveModel model, String coating, String surface) {
    if (change == Change.COMMON) {
      return model.all().mean();
    }
    double log = model.average() - model.middle(GroupedBy.COATING);
    if (!coating.isEmpty()) {
      log += model.log(GroupedBy.COATING, coating);
    }
    if (!surface.isEmpty()) {
      log += model.log(GroupedBy.SURFACE, surface);
    }
    // What no figure is written for goes with the one that is.
    if (surface.isEmpty() && !isByHand(GroupedBy.SURFACE)) {
      log += model.along(GroupedBy.COATING, coating);
    }
    if (coating.isEmpty() && !isByHand(GroupedBy.COATING)) {
      log += model.along(GroupedBy.SURFACE, surface);
    }
    return log;
  }

  private boolean isByHand(GroupedBy by) {
    return change.uses(measure(), by) && !Change.TABLES.uses(measure(), by);
  }
}
