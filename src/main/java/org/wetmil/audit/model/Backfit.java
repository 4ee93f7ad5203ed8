package org.wetmil.audit.model;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.stats.Sample;

/**
 * Fits the kinds of groups one after the other, each to what the others leave over, until none
 * moves (published: backfitting of an additive model, here with shrunk group means).
 */
final class Backfit {
  private static final int MOST_ROUNDS = 1000;
  private static final double STILL = 1e-9;

  private final Map<GroupedBy, Kind> kinds = new EnumMap<>(GroupedBy.class);
  private final double[] left;

  /**
   * @param logs log ratios less the factor common to all bids
   */
  private Backfit(Map<GroupedBy, List<Term>> terms, double[] logs) {
    terms.forEach((by, groups) -> kinds.put(by, new Kind(groups)));
    left = logs.clone();
  }

  static Backfit of(
      Map<GroupedBy, List<Term>> terms, double[] logs, Map<GroupedBy, Shrinkage> shrinkage) {
    Backfit fit = new Backfit(terms, logs);
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double moved = 0;
      for (Map.Entry<GroupedBy, Kind> kind : fit.kinds.entrySet()) {
        moved = Math.max(moved, kind.getValue().update(shrinkage.get(kind.getKey())));
      }
      if (moved < STILL) {
        return fit;
      }
    }
    // kinds that nearly always occur together settle slowly; what is left moves no printed figure
    return fit;
  }

  /** What the effects leave of each log ratio. */
  double[] left() {
    return left.clone();
  }

  Kind kind(GroupedBy by) {
    return kinds.get(by);
  }

  /** The shrinkage that the effects found so far speak for. */
  Map<GroupedBy, Shrinkage> shrinkage() {
    Map<GroupedBy, Shrinkage> shrinkage = new EnumMap<>(GroupedBy.class);
    kinds.forEach((by, kind) -> shrinkage.put(by, Shrinkage.of(kind.samples())));
    return shrinkage;
  }

  /** The groups of one kind with their effects. */
  final class Kind {
    private final List<Term> terms;
    private final double[] effects;
    private double middle;

    private Kind(List<Term> terms) {
      this.terms = terms;
      effects = new double[terms.size()];
    }

    double effect(int group) {
      return effects[group];
    }

    /** Mean of what the groups show, which belongs to all bids and to no group. */
    double middle() {
      return middle;
    }

    /** What the bids of a group show together once the effects of all others are taken off. */
    double seen(int group) {
      return terms.get(group).mean(left, effects[group]);
    }

    /** The same, bid by bid, for each group. */
    List<Sample> samples() {
      return IntStream.range(0, terms.size())
          .mapToObj(group -> terms.get(group).sample(left, effects[group]))
          .toList();
    }

    private double update(Shrinkage shrinkage) {
      double bids = 0;
      double sum = 0;
      for (int group = 0; group < effects.length; group++) {
        bids += terms.get(group).bids();
        sum += terms.get(group).bids() * seen(group);
      }
      // Without this a constant could wander from one kind of group to another.
      middle = bids > 0 ? sum / bids : 0;
      double moved = 0;
      for (int group = 0; group < effects.length; group++) {
        Term term = terms.get(group);
        double effect = shrinkage.weight(term.bids()) * (seen(group) - middle);
        term.take(effect - effects[group], left);
        moved = Math.max(moved, Math.abs(effect - effects[group]));
        effects[group] = effect;
      }
      return moved;
    }
  }
}
