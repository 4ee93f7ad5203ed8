package org.wetmil.audit.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.stats.FalseAlarms;
import org.wetmil.audit.stats.Interval;
import org.wetmil.audit.stats.Sample;

/**
 * An effect with how sure it is.
 *
 * @param ratio outcome over estimate in the group on its own account, as believed
 * @param likely 95 % interval of that ratio as the group's bids show it; unknown under three bids
 * @param apart log ratio of the group as its bids show it, less that of all bids
 * @param chance how likely the group differs this much from all bids by luck alone; NaN under three
 *     bids
 * @param adjustedChance the same, allowing for how many groups the model has
 */
public record JudgedEffect(
    Effect effect,
    double ratio,
    Interval likely,
    double apart,
    double chance,
    double adjustedChance) {
  /** Share of false alarms put up with among the groups called different (house rule). */
  public static final double ALARM = 0.05;

  /** Whether the group differs from all bids by more than luck. */
  public boolean standsApart() {
    return adjustedChance <= ALARM;
  }

  /** Every effect of the model. */
  public static List<JudgedEffect> of(LeaveOneOut fits) {
    List<JudgedEffect> judged = new ArrayList<>();
    for (GroupedBy by : GroupedBy.values()) {
      List<Figure> figures =
          fits.whole().effects().stream()
              .filter(effect -> effect.by() == by)
              .map(Figure::new)
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
    return new JudgedEffect(
        effect,
        Math.exp(whole.account(effect.by(), effect.group(), Effect::log)),
        total.interval(figure.total(whole), effect).exp(),
        figure.apart(whole),
        apart.chance(figure.apart(whole), effect),
        Double.NaN);
  }

  private JudgedEffect adjusted(double chanceAmongMany) {
    return new JudgedEffect(effect, ratio, likely, apart, chance, chanceAmongMany);
  }

  /** What the bids of a group show. */
  private record Figure(Effect effect) {

    /** Log ratio of the group on its own account. */
    double total(AdditiveModel model) {
      return model.account(effect.by(), effect.group(), Effect::seen);
    }

    /** The same less that of all bids. */
    double apart(AdditiveModel model) {
      return total(model) - model.average();
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
        LeaveOneOut fits, List<Figure> figures, ToDoubleBiFunction<Figure, AdditiveModel> which) {
      double sum = 0;
      double freedom = 0;
      for (Figure figure : figures) {
        Effect effect = figure.effect();
        if (effect.jobs() >= Sample.FEWEST_FOR_INTERVAL) {
          sum +=
              (effect.jobs() - 1)
                  * effect.bids()
                  * fits.variance(model -> which.applyAsDouble(figure, model));
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
