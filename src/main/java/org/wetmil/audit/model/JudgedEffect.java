package org.wetmil.audit.model;

import java.util.List;
import java.util.stream.IntStream;
import org.wetmil.audit.stats.FalseAlarms;
import org.wetmil.audit.stats.Interval;

/**
 * An effect with how sure it is.
 *
 * @param common log factor common to all bids
 * @param likely 95 % interval of outcome over estimate in the group, with the common factor and
 *     without the other kinds; unknown under three bids
 * @param chance how likely the group differs this much from the others of its kind by luck alone;
 *     NaN under three bids
 * @param adjustedChance the same, allowing for how many groups the model has
 */
public record JudgedEffect(
    Effect effect, double common, Interval likely, double chance, double adjustedChance) {
  /** Share of false alarms put up with among the groups called different (house rule). */
  public static final double ALARM = 0.05;

  /** Outcome over estimate in the group as believed, with the common factor. */
  public double ratio() {
    return Math.exp(common + effect.log());
  }

  /** Whether the group differs from the others of its kind by more than luck. */
  public boolean standsApart() {
    return adjustedChance <= ALARM;
  }

  /** Every effect of the model. */
  public static List<JudgedEffect> of(LeaveOneOut fits) {
    List<JudgedEffect> judged =
        fits.whole().effects().stream().map(effect -> of(fits, effect)).toList();
    double[] adjusted =
        FalseAlarms.adjusted(judged.stream().mapToDouble(JudgedEffect::chance).toArray());
    return IntStream.range(0, adjusted.length)
        .mapToObj(i -> judged.get(i).adjusted(adjusted[i]))
        .toList();
  }

  private static JudgedEffect of(LeaveOneOut fits, Effect effect) {
    double common = fits.whole().all().mean();
    Interval likely =
        fits.interval(
            model -> model.all().mean() + model.effect(effect.by(), effect.group()).seen(),
            effect.jobs());
    double chance =
        fits.chance(model -> model.effect(effect.by(), effect.group()).seen(), effect.jobs());
    return new JudgedEffect(effect, common, likely.exp(), chance, Double.NaN);
  }

  private JudgedEffect adjusted(double chanceAmongMany) {
    return new JudgedEffect(effect, common, likely, chance, chanceAmongMany);
  }
}
