package org.wetmil.audit.model;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.Interval;
import org.wetmil.audit.stats.Sample;

/**
 * The model fitted again without each bid in turn: what it would have forecast for that bid, and
 * how far its figures hang on any one. Of more than a hundred bids, several are left out at once.
 *
 * @param whole the model of all bids
 * @param parts the models of some, each without other bids
 * @param without by number of a bid, the model that did not see it
 */
public record LeaveOneOut(
    AdditiveModel whole, List<AdditiveModel> parts, Map<Integer, AdditiveModel> without) {
  /** Most fits; above that the jackknife leaves out groups of bids (house rule). */
  static final int MOST = 100;

  /** Needs outcomes of at least two bids. */
  public static LeaveOneOut of(Observations all) {
    Observations observations = all.merged();
    List<Integer> bids = List.copyOf(observations.byBid().keySet());
    int count = Math.min(MOST, bids.size());
    List<Set<Integer>> left =
        IntStream.range(0, count)
            .mapToObj(
                part ->
                    IntStream.range(0, bids.size())
                        .filter(i -> i % count == part)
                        .mapToObj(bids::get)
                        .collect(Collectors.toSet()))
            .toList();
    AdditiveModel whole = AdditiveModel.fit(observations);
    List<AdditiveModel> parts =
        left.parallelStream()
            .map(out -> whole.again(observations.only(one -> !out.contains(one.bid()))))
            .toList();
    Map<Integer, AdditiveModel> without = new TreeMap<>();
    for (int part = 0; part < count; part++) {
      for (int bid : left.get(part)) {
        without.put(bid, parts.get(part));
      }
    }
    return new LeaveOneOut(whole, parts, without);
  }

  /**
   * Variance of a figure by the jackknife (published: Quenouille and Tukey): (N - 1) / N times the
   * sum of squares of the N figures about their mean.
   *
   * @param figure a log figure that every model has
   */
  double variance(ToDoubleFunction<AdditiveModel> figure) {
    Sample figures = Sample.of(parts.stream().mapToDouble(figure).toArray());
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
