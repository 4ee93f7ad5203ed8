package org.wetmil.audit.model;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.Sample;

/**
 * ln(outcome / estimate) = all + coating + surface + crew + year, each effect shrunk towards 0, so
 * that a factor is w x group + (1 - w) x all. Within a crew its heights have effects of their own.
 * An outcome known only for a mixture enters its groups by their shares of the estimate. The year
 * is fitted so that it does not pass for anything else.
 *
 * @param all log ratios of the bids; their mean is the factor common to all, named first
 * @param level log ratio of what no group adds to: a bid whose parts came out differently counts
 *     each part once in the groups, but by its size in the factor common to all
 * @param effects by kind, then name
 */
public record AdditiveModel(Sample all, double level, List<Effect> effects) {
  /** How often the shrinkage is told anew from the effects that came of the last one. */
  private static final int ROUNDS = 2;

  /**
   * Fits the model.
   *
   * @param observations of at least one bid; those of a bid beside each other
   */
  public static AdditiveModel fit(Observations observations) {
    Sample all = all(observations);
    List<Observation> list = observations.list();
    Map<GroupedBy, List<Term>> terms = terms(list);
    double[] logs = list.stream().mapToDouble(one -> one.logRatio() - all.mean()).toArray();
    Map<GroupedBy, Shrinkage> shrinkage = start();
    Backfit fit = Backfit.of(terms, logs, shrinkage);
    for (int round = 0; round < ROUNDS; round++) {
      shrinkage = fit.shrinkage();
      fit = Backfit.of(terms, logs, shrinkage);
    }
    List<Effect> effects = new ArrayList<>();
    for (Map.Entry<GroupedBy, List<Term>> kind : terms.entrySet()) {
      for (int group = 0; group < kind.getValue().size(); group++) {
        effects.add(
            effect(
                kind.getValue().get(group),
                group,
                fit.kind(kind.getKey()),
                shrinkage.get(kind.getKey())));
      }
    }
    double level = all.mean() + leftOver(list, fit.left());
    return new AdditiveModel(all, level, List.copyOf(effects));
  }

  /** What the effects leave of a bid's log ratio, on average over the bids. */
  private static double leftOver(List<Observation> list, double[] left) {
    Map<Integer, double[]> bids = new TreeMap<>();
    for (int i = 0; i < left.length; i++) {
      double[] sums = bids.computeIfAbsent(list.get(i).bid(), bid -> new double[2]);
      sums[0] += list.get(i).estimated() * left[i];
      sums[1] += list.get(i).estimated();
    }
    return bids.values().stream().mapToDouble(sums -> sums[0] / sums[1]).average().orElseThrow();
  }

  /** Log factor on an estimate by all kinds of groups. */
  public double logFactor(Observation one) {
    return logFactor(one, EnumSet.allOf(GroupedBy.class));
  }

  /** Log factor on an estimate by the groups of some kinds; an unknown group adds nothing. */
  public double logFactor(Observation one, Set<GroupedBy> kinds) {
    if (kinds.isEmpty()) {
      return all.mean();
    }
    return level
        + effects.stream()
            .filter(effect -> kinds.contains(effect.by()))
            .mapToDouble(effect -> one.share(effect.by(), effect.group()) * effect.log())
            .sum();
  }

  /** The log effect of a group as its bids show it; 0 for one that the bids do not have. */
  public double seen(GroupedBy by, String group) {
    return sum(by, group, Effect::seen);
  }

  /** The log effect of a group as believed; 0 for one that the bids do not have. */
  public double log(GroupedBy by, String group) {
    return sum(by, group, Effect::log);
  }

  private double sum(GroupedBy by, String group, ToDoubleFunction<Effect> figure) {
    return effects.stream()
        .filter(effect -> effect.by() == by && effect.group().equals(group))
        .mapToDouble(figure)
        .sum();
  }

  private static Map<GroupedBy, List<Term>> terms(List<Observation> list) {
    Map<GroupedBy, List<Term>> terms = new EnumMap<>(GroupedBy.class);
    for (GroupedBy by : GroupedBy.values()) {
      if (by.isInModel()) {
        terms.put(by, Term.of(by, list));
      }
    }
    return terms;
  }

  private static Map<GroupedBy, Shrinkage> start() {
    Map<GroupedBy, Shrinkage> start = new EnumMap<>(GroupedBy.class);
    for (GroupedBy by : GroupedBy.values()) {
      start.put(by, Shrinkage.START);
    }
    return start;
  }

  private static Effect effect(Term term, int group, Backfit.Kind kind, Shrinkage shrinkage) {
    return new Effect(
        term.by(),
        term.group(),
        term.jobs(),
        term.bids(),
        shrinkage.weight(term.bids()),
        kind.seen(group) - kind.middle(),
        kind.effect(group));
  }

  private static Sample all(Observations observations) {
    return Sample.of(
        observations.byBid().values().stream()
            .mapToDouble(
                bid ->
                    Math.log(
                        bid.stream().mapToDouble(Observation::actual).sum()
                            / bid.stream().mapToDouble(Observation::estimated).sum()))
            .toArray());
  }
}
