package org.wetmil.audit.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.stats.Sample;

/**
 * One group of the model, and what each bid can say about it.
 *
 * @param shares share of the group in each observation
 * @param exposures one for each bid that has a part in it
 * @param bids whole bids that their evidence amounts to: a mixture of which a half is the group's
 *     counts a quarter
 */
record Term(GroupedBy by, String group, double[] shares, List<Exposure> exposures, double bids) {

  /**
   * One bid's evidence: the mean of its observations by their part in the group.
   *
   * @param at the observations
   * @param weights how much each counts, 1 together
   * @param purity share of the group in that mean
   */
  record Exposure(int[] at, double[] weights, double purity) {

    double mean(IntToDoubleFunction value) {
      double sum = 0;
      for (int i = 0; i < at.length; i++) {
        sum += weights[i] * value.applyAsDouble(at[i]);
      }
      return sum;
    }
  }

  /**
   * The group's effect as its bids show it together.
   *
   * @param value what is left of each observation's log ratio without the group's own part
   */
  double mean(IntToDoubleFunction value) {
    double sum = 0;
    for (Exposure exposure : exposures) {
      sum += exposure.purity() * exposure.mean(value);
    }
    return sum / bids;
  }

  /**
   * The same, bid by bid; one that is partly the group's is the less exact the smaller the part.
   */
  Sample sample(IntToDoubleFunction value) {
    return Sample.ofPrecisions(
        exposures.stream().mapToDouble(e -> e.mean(value) / e.purity()).toArray(),
        exposures.stream().mapToDouble(e -> e.purity() * e.purity()).toArray());
  }

  /**
   * @param list observations, those of a bid beside each other
   */
  static Term of(GroupedBy by, String group, List<Observation> list) {
    double[] shares = list.stream().mapToDouble(one -> one.share(by, group)).toArray();
    List<Exposure> exposures = new ArrayList<>();
    for (int from = 0, to; from < list.size(); from = to) {
      to = from;
      while (to < list.size() && list.get(to).bid() == list.get(from).bid()) {
        to++;
      }
      int[] at = IntStream.range(from, to).filter(i -> shares[i] > 1e-9).toArray();
      if (at.length > 0) {
        exposures.add(exposure(at, list, shares));
      }
    }
    double bids = exposures.stream().mapToDouble(e -> e.purity() * e.purity()).sum();
    return new Term(by, group, shares, exposures, bids);
  }

  private static Exposure exposure(int[] at, List<Observation> list, double[] shares) {
    double[] weights =
        IntStream.of(at).mapToDouble(i -> shares[i] * list.get(i).estimated()).toArray();
    double whole = IntStream.range(0, at.length).mapToDouble(i -> weights[i]).sum();
    double purity = 0;
    for (int i = 0; i < at.length; i++) {
      weights[i] /= whole;
      purity += weights[i] * shares[at[i]];
    }
    return new Exposure(at, weights, Math.min(1, purity));
  }
}
