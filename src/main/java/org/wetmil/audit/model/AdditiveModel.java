package org.wetmil.audit.model;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.OneWay;
import org.wetmil.audit.stats.Sample;

/**
 * ln(outcome / estimate) = level + coating + surface + crew + year, each effect pulled towards 0.
 * Within a crew its heights have effects of their own. An outcome known only for a mixture enters
 * its groups by their shares of the estimate. The year is fitted so that it does not pass for
 * anything else.
 *
 * <p>Level and effects by themselves depend on which groups there are; what a factor or a sentence
 * rests on is always a sum that the bids do show: an effect with those of the groups that it goes
 * with, and with what the other kinds add on average ({@link #account}).
 *
 * @param all log ratios of the bids; their mean is the factor common to all, named first
 * @param level log ratio of what no group adds to
 * @param middles by family of kinds, its effects on average over the bids
 * @param kinds effects by kind and group
 * @param shrinkage by kind, how far its groups are pulled towards 0
 */
public record AdditiveModel(
    Sample all,
    double level,
    Map<Family, Double> middles,
    Map<GroupedBy, Map<String, Effect>> kinds,
    Map<GroupedBy, Shrinkage> shrinkage) {
  /** How often mixtures and luck are told anew from the effects that came of the last ones. */
  private static final int ROUNDS = 4;

  /** The same from the effects of nearly the same bids. */
  private static final int ROUNDS_AGAIN = 2;

  /** Most that a bid's own luck is taken to scatter, as variance over that of its parts (house). */
  private static final double MOST_LUCK = 100;

  /**
   * Fits the model.
   *
   * @param observations of at least one bid; those of a bid beside each other
   */
  public static AdditiveModel fit(Observations observations) {
    List<Term> terms = terms(observations);
    return fit(observations, terms, new Pulls(terms), new double[terms.size()], ROUNDS);
  }

  /** Fits the model to some of the bids that this one was fitted to, beginning from it. */
  AdditiveModel again(Observations some) {
    List<Term> terms = terms(some);
    double[] effects = terms.stream().mapToDouble(term -> log(term.by(), term.group())).toArray();
    return fit(some, terms, new Pulls(terms, shrinkage), effects, ROUNDS_AGAIN);
  }

  private static AdditiveModel fit(
      Observations observations, List<Term> terms, Pulls pulls, double[] start, int rounds) {
    Rows rows = new Rows(observations.list(), terms);
    double[] effects = start;
    double luck = 0;
    for (int round = 0; round < rounds; round++) {
      Equations equations = new Equations(rows, rows.near(effects), terms.size(), luck);
      Equations.Solution solution = pulls.settle(equations);
      effects = solution.effects();
      luck = luck(rows, equations.evidence(solution).left());
    }
    Equations equations = new Equations(rows, rows.near(effects), terms.size(), luck);
    Equations.Solution solution = equations.solve(pulls.settled());
    return of(observations, terms, pulls, solution, equations.evidence(solution));
  }

  private static List<Term> terms(Observations observations) {
    return Arrays.stream(GroupedBy.values())
        .filter(GroupedBy::isInModel)
        .flatMap(by -> Term.of(by, observations.list()).stream())
        .toList();
  }

  private static AdditiveModel of(
      Observations observations,
      List<Term> terms,
      Pulls pulls,
      Equations.Solution solution,
      Equations.Evidence evidence) {
    List<Observation> list = observations.list();
    Map<GroupedBy, Map<String, Double>> logs = new EnumMap<>(GroupedBy.class);
    for (int i = 0; i < terms.size(); i++) {
      logs.computeIfAbsent(terms.get(i).by(), by -> new TreeMap<>())
          .put(terms.get(i).group(), solution.effects()[i]);
    }
    Company company = Company.of(list, logs);
    Map<GroupedBy, Map<String, Effect>> kinds = new EnumMap<>(GroupedBy.class);
    for (int i = 0; i < terms.size(); i++) {
      Term term = terms.get(i);
      kinds
          .computeIfAbsent(term.by(), by -> new TreeMap<>())
          .put(
              term.group(),
              new Effect(
                  term.by(),
                  term.group(),
                  term.jobs(),
                  evidence.bids()[i],
                  pulls.weight(i, evidence.bids()[i]),
                  evidence.seen()[i],
                  solution.effects()[i],
                  company.along(term.by(), term.group())));
    }
    Collection<List<Observation>> bids = observations.byBid().values();
    AdditiveModel model =
        new AdditiveModel(
            all(bids), solution.level(), new EnumMap<>(Family.class), kinds, pulls.byKind());
    for (Family family : Family.values()) {
      model.middles.put(family, model.middle(bids, family));
    }
    return model;
  }

  /** Variance of the luck that the parts of a bid share, over that of a part by itself. */
  private static double luck(Rows rows, double[] left) {
    OneWay variance =
        OneWay.of(
            IntStream.range(0, rows.bids())
                .mapToObj(
                    bid ->
                        Sample.of(Arrays.copyOfRange(left, rows.start(bid), rows.start(bid + 1))))
                .toList());
    if (!(variance.between() > 0)) {
      return 0;
    }
    return Math.min(MOST_LUCK, variance.between() / variance.within());
  }

  /** Log factor on an estimate by all kinds of groups. */
  public double logFactor(Observation one) {
    return logFactor(one, kinds.keySet());
  }

  /**
   * Log factor on an estimate by the groups of some kinds. Where a kind is used without the one
   * that it always goes with, it carries that one's effects, too, as its own past work had them;
   * what else is not used enters as it was on average. An unknown group adds nothing.
   */
  public double logFactor(Observation one, Set<GroupedBy> used) {
    if (used.isEmpty()) {
      return all.mean();
    }
    double log = level;
    for (Family family : Family.values()) {
      boolean first = used.contains(family.first());
      boolean second = family.second() != null && used.contains(family.second());
      log +=
          first || second
              ? family.mixture(one, cell -> log(family, cell, first, second))
              : middles.get(family);
    }
    return log;
  }

  private double log(Family family, Family.Cell cell, boolean first, boolean second) {
    double log = 0;
    if (first) {
      log += log(family.first(), cell.first());
      log += second ? log(family.second(), cell.second()) : along(family.first(), cell.first());
    } else {
      log += log(family.second(), cell.second()) + along(family.second(), cell.second());
    }
    return log;
  }

  /**
   * Log ratio of a group on its own account: its own work, with what else goes into that work, done
   * by the average crew in the average year; of a crew, the average work.
   *
   * @param own the group's own effect, seen or believed
   */
  public double account(GroupedBy by, String group, ToDoubleFunction<Effect> own) {
    Effect effect = effect(by, group);
    return average()
        + (effect == null ? 0 : own.applyAsDouble(effect) + effect.along() - middle(by));
  }

  /** Log ratio of all bids as the model has it, on average. */
  public double average() {
    return level + middles.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** What a kind and the one that it always goes with add on average over the bids. */
  public double middle(GroupedBy by) {
    return middles.get(Family.of(by));
  }

  /** The log effect of a group as believed; 0 for one that the bids do not have. */
  public double log(GroupedBy by, String group) {
    Effect effect = effect(by, group);
    return effect == null ? 0 : effect.log();
  }

  /** What the groups add that a group always goes with; 0 for one that the bids do not have. */
  public double along(GroupedBy by, String group) {
    Effect effect = effect(by, group);
    return effect == null ? 0 : effect.along();
  }

  public List<Effect> effects() {
    return kinds.values().stream().flatMap(groups -> groups.values().stream()).toList();
  }

  private Effect effect(GroupedBy by, String group) {
    return kinds.getOrDefault(by, Map.of()).get(group);
  }

  private double middle(Collection<List<Observation>> bids, Family family) {
    return bids.stream()
        .mapToDouble(
            bid ->
                Math.log(
                    sum(
                            bid,
                            one ->
                                one.estimated()
                                    * Math.exp(
                                        family.mixture(one, cell -> log(family, cell, true, true))))
                        / sum(bid, Observation::estimated)))
        .average()
        .orElseThrow();
  }

  private static Sample all(Collection<List<Observation>> bids) {
    return Sample.of(
        bids.stream()
            .mapToDouble(
                bid -> Math.log(sum(bid, Observation::actual) / sum(bid, Observation::estimated)))
            .toArray());
  }

  private static double sum(List<Observation> bid, ToDoubleFunction<Observation> amount) {
    return bid.stream().mapToDouble(amount).sum();
  }
}
