package org.wetmil.audit.model;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.Interval;
import org.wetmil.audit.stats.Sample;

/**
 * The model fitted again without each bid in turn: what it would have forecast for that bid, and
 * how far its figures hang on any one.
 *
 * @param whole the model of all bids
 * @param without by number of the bid left out
 */
public record LeaveOneOut(AdditiveModel whole, Map<Integer, AdditiveModel> without) {

  /** Needs outcomes of at least two bids. */
  public static LeaveOneOut of(Observations observations) {
    Map<Integer, List<Observation>> bids = observations.byBid();
    Map<Integer, AdditiveModel> without = new TreeMap<>();
    bids.keySet().parallelStream()
        .map(bid -> Map.entry(bid, AdditiveModel.fit(observations.only(one -> one.bid() != bid))))
        .forEachOrdered(model -> without.put(model.getKey(), model.getValue()));
    return new LeaveOneOut(AdditiveModel.fit(observations), without);
  }

  /**
   * Variance of a figure by the jackknife (published: Quenouille and Tukey): (N - 1) / N times the
   * sum of squares of the figures without each bid about their mean.
   *
   * @param figure a log figure that every model has
   */
  double variance(ToDoubleFunction<AdditiveModel> figure) {
    Sample figures = Sample.of(without.values().stream().mapToDouble(figure).toArray());
    return figures.squares() * (figures.count() - 1) / figures.count();
  }

  /**
   * 95 % interval of a figure by its jackknife variance and Student's t.
   *
   * @param bids bids that the figure comes from; t has one degree of freedom less
   * @return unknown under three bids
   */
  public Interval interval(ToDoubleFunction<AdditiveModel> figure, int bids) {
    return bids < Sample.FEWEST_FOR_INTERVAL
        ? Interval.UNKNOWN
        : Interval.around(
            figure.applyAsDouble(whole), Sample.quantile(bids - 1) * Math.sqrt(variance(figure)));
  }
}
