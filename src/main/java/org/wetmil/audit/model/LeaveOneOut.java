package org.wetmil.audit.model;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.TDistribution;
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
        .map(bid -> Map.entry(bid, AdditiveModel.fit(observations.without(bid))))
        .forEachOrdered(model -> without.put(model.getKey(), model.getValue()));
    return new LeaveOneOut(AdditiveModel.fit(observations), without);
  }

  /**
   * 95 % interval of a figure by the jackknife (published: Quenouille and Tukey): its variance is
   * (N - 1) / N times the sum of squares of the figures without each bid about their mean.
   *
   * @param figure a log figure of a model that every model has
   * @param bids bids that the figure comes from; t has one degree of freedom less
   * @return unknown under three bids
   */
  public Interval interval(ToDoubleFunction<AdditiveModel> figure, int bids) {
    if (bids < Sample.FEWEST_FOR_INTERVAL) {
      return Interval.UNKNOWN;
    }
    return Interval.around(figure.applyAsDouble(whole), Sample.quantile(bids - 1) * error(figure));
  }

  /**
   * How likely a figure lies this far from 0 by luck alone, by the same error and t.
   *
   * @return NaN under three bids
   */
  public double chance(ToDoubleFunction<AdditiveModel> figure, int bids) {
    if (bids < Sample.FEWEST_FOR_INTERVAL) {
      return Double.NaN;
    }
    double away = Math.abs(figure.applyAsDouble(whole));
    double error = error(figure);
    if (error == 0) {
      return away == 0 ? 1 : 0;
    }
    return 2 * new TDistribution(null, bids - 1).cumulativeProbability(-away / error);
  }

  private double error(ToDoubleFunction<AdditiveModel> figure) {
    Sample figures = Sample.of(without.values().stream().mapToDouble(figure).toArray());
    return Math.sqrt(figures.squares() * (figures.count() - 1) / figures.count());
  }
}
