package org.wetmil.audit.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.FalseAlarms;
import org.wetmil.audit.stats.Interval;
import org.wetmil.audit.stats.Sample;

/**
 * An effect with how sure it is.
 *
 * @param ratio outcome over estimate in the group as believed, with the common factor and without
 *     the other kinds
 * @param likely 95 % interval of that ratio as the group's bids show it; unknown under three bids
 * @param chance how likely the group differs this much from all bids by luck alone; NaN under three
 *     bids
 * @param adjustedChance the same, allowing for how many groups the model has
 */
public record JudgedEffect(
    Effect effect, double ratio, Interval likely, double chance, double adjustedChance) {
  /** Share of false alarms put up with among the groups called different (house rule). */
  public static final double ALARM = 0.05;

  /** Whether the group differs from all bids by more than luck. */
  public boolean standsApart() {
    return adjustedChance <= ALARM;
  }

  /** Every effect of the model. */
  public static List<JudgedEffect> of(Observations observations, LeaveOneOut fits) {
    List<JudgedEffect> judged = new ArrayList<>();
    for (GroupedBy by : GroupedBy.values()) {
      List<Figure> figures =
          fits.whole().effects().stream()
              .filter(effect -> effect.by() == by)
              .map(effect -> figure(observations, effect))
              .toList();
      Scatter apart = Scatter.of(fits, figures, Figure::apart);
      Scatter total = Scatter.of(fits, figures, Figure::total);
      figures.forEach(figure -> judged.add(of(fits.whole(), figure, apart, total)));
    }
    double[] adjusted =
        FalseAlarms.adjusted(judged.stream().mapToDouble(JudgedEffect::chance).toArray());
    return IntStream.range(0, adjusted.length)
        .mapToObj(i -> judged.get(i).adjusted(adjusted[i]))
        .toList();
  }

  private static JudgedEffect of(AdditiveModel whole, Figure figure, Scatter apart, Scatter total) {
    Effect effect = figure.effect();
    double believed = figure.total().applyAsDouble(whole) - effect.seen() + effect.log();
    return new JudgedEffect(
        effect,
        Math.exp(believed),
        total.interval(figure.total().applyAsDouble(whole), effect).exp(),
        apart.chance(figure.apart().applyAsDouble(whole), effect),
        Double.NaN);
  }

  /** A crew at a height stands on its crew's own effect. */
  private static Figure figure(Observations observations, Effect effect) {
    String crew =
        effect.by() == GroupedBy.CREW_AT_HEIGHT ? observations.crewOf(effect.group()) : "";
    return new Figure(
        effect, model -> model.seen(effect.by(), effect.group()) + model.log(GroupedBy.CREW, crew));
  }

  private JudgedEffect adjusted(double chanceAmongMany) {
    return new JudgedEffect(effect, ratio, likely, chance, chanceAmongMany);
  }

  /**
   * @param apart log ratio of the group's bids, less the common one
   */
  private record Figure(Effect effect, ToDoubleFunction<AdditiveModel> apart) {
    ToDoubleFunction<AdditiveModel> total() {
      return model -> model.level() + apart.applyAsDouble(model);
    }
  }

  /**
   * How much one bid of any group of a kind scatters. Groups are pooled, since three or four bids
   * tell little of their own scatter.
   *
   * @param variance jackknife variance of a group's figure times its bids, over all groups
   * @param freedom its degrees of freedom, at most one less than there are bids
   */
  private record Scatter(double variance, double freedom) {

    static Scatter of(
        LeaveOneOut fits,
        List<Figure> figures,
        Function<Figure, ToDoubleFunction<AdditiveModel>> which) {
      double sum = 0;
      double freedom = 0;
      for (Figure figure : figures) {
        Effect effect = figure.effect();
        if (effect.jobs() >= Sample.FEWEST_FOR_INTERVAL) {
          sum += (effect.jobs() - 1) * effect.bids() * fits.variance(which.apply(figure));
          freedom += effect.jobs() - 1;
        }
      }
      return new Scatter(sum / freedom, Math.min(freedom, fits.parts().size() - 1));
    }

    Interval interval(double middle, Effect effect) {
      return effect.jobs() < Sample.FEWEST_FOR_INTERVAL
          ? Interval.UNKNOWN
          : Interval.around(middle, Sample.quantile(freedom) * error(effect));
    }

    double chance(double away, Effect effect) {
      if (effect.jobs() < Sample.FEWEST_FOR_INTERVAL) {
        return Double.NaN;
      }
      if (error(effect) == 0) {
        return away == 0 ? 1 : 0;
      }
      return 2
          * new TDistribution(null, freedom).cumulativeProbability(-Math.abs(away) / error(effect));
    }

    private double error(Effect effect) {
      return Math.sqrt(variance / effect.bids());
    }
  }
}
