package org.wetmil.audit.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.stats.Sample;

/**
 * One group of the model, and what each bid can say about it.
 *
 * @param exposures one for each bid that has a part in it
 * @param bids whole bids that their evidence amounts to: a mixture of which a half is the group's
 *     counts a quarter
 */
record Term(GroupedBy by, String group, List<Exposure> exposures, double bids) {

  /**
   * One bid's evidence: the mean of its observations by their part in the group.
   *
   * @param at the observations
   * @param shares share of the group in each
   * @param weights how much each counts, 1 together
   * @param purity share of the group in the mean
   */
  private record Exposure(int[] at, double[] shares, double[] weights, double purity) {

    double mean(double[] left, double effect) {
      double sum = 0;
      for (int i = 0; i < at.length; i++) {
        sum += weights[i] * (left[at[i]] + shares[i] * effect);
      }
      return sum;
    }
  }

  /**
   * The groups of one kind, by name.
   *
   * @param list observations, those of a bid beside each other
   */
  static List<Term> of(GroupedBy by, List<Observation> list) {
    Map<String, Builder> groups = new TreeMap<>();
    for (int i = 0; i < list.size(); i++) {
      for (Map.Entry<String, Double> share : list.get(i).shares().get(by).entrySet()) {
        groups.computeIfAbsent(share.getKey(), group -> new Builder(list)).add(i, share.getValue());
      }
    }
    return groups.entrySet().stream()
        .map(group -> group.getValue().term(by, group.getKey()))
        .toList();
  }

  /**
   * The group's effect as its bids show it together.
   *
   * @param left what the effects of all groups leave of each observation's log ratio
   * @param effect the effect of this one in it
   */
  double mean(double[] left, double effect) {
    double sum = 0;
    for (Exposure exposure : exposures) {
      sum += exposure.purity() * exposure.mean(left, effect);
    }
    return sum / bids;
  }

  /**
   * The same, bid by bid; one that is partly the group's is the less exact the smaller the part.
   */
  Sample sample(double[] left, double effect) {
    return Sample.ofPrecisions(
        exposures.stream().mapToDouble(e -> e.mean(left, effect) / e.purity()).toArray(),
        exposures.stream().mapToDouble(e -> e.purity() * e.purity()).toArray());
  }

  /** Takes more of the group's effect off what is left. */
  void take(double more, double[] left) {
    for (Exposure exposure : exposures) {
      for (int i = 0; i < exposure.at().length; i++) {
        left[exposure.at()[i]] -= exposure.shares()[i] * more;
      }
    }
  }

  /** Bids that have a part in it. */
  int jobs() {
    return exposures.size();
  }

  /** Gathers a group's observations in their order. */
  private static final class Builder {
    private final List<Observation> list;
    private final List<Exposure> exposures = new ArrayList<>();
    private final List<Integer> at = new ArrayList<>();
    private final List<Double> shares = new ArrayList<>();

    Builder(List<Observation> list) {
      this.list = list;
    }

    void add(int observation, double share) {
      if (!at.isEmpty() && list.get(at.get(0)).bid() != list.get(observation).bid()) {
        close();
      }
      at.add(observation);
      shares.add(share);
    }

    Term term(GroupedBy by, String group) {
      close();
      double bids = exposures.stream().mapToDouble(e -> e.purity() * e.purity()).sum();
      return new Term(by, group, exposures, bids);
    }

    private void close() {
      int[] places = at.stream().mapToInt(Integer::intValue).toArray();
      double[] parts = shares.stream().mapToDouble(Double::doubleValue).toArray();
      double[] weights = new double[places.length];
      double whole = 0;
      for (int i = 0; i < places.length; i++) {
        weights[i] = parts[i] * list.get(places[i]).estimated();
        whole += weights[i];
      }
      double purity = 0;
      for (int i = 0; i < places.length; i++) {
        weights[i] /= whole;
        purity += weights[i] * parts[i];
      }
      exposures.add(new Exposure(places, parts, weights, Math.min(1, purity)));
      at.clear();
      shares.clear();
    }
  }
}
