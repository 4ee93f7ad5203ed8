package org.wetmil.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wetmil.audit.model.Effect;
import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.model.LeaveOneOut;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.ratio.Concentration;
import org.wetmil.audit.ratio.GroupRatio;
import org.wetmil.audit.stats.Interval;

/** The reasons why one measure missed, the largest first. */
final class Causes {
  /** What is left of the common miss, as a share, that still makes it a reason (house rule). */
  private static final double STILL_COMMON = 0.4;

  /** Least miss of a group, as a share, that is named (house rule). */
  private static final double WORTH_NAMING = 0.03;

  private final MeasureAudit audit;
  private final double estimated;

  private Causes(MeasureAudit audit) {
    this.audit = audit;
    estimated = audit.ratios().all().estimated();
  }

  static List<Cause> of(MeasureAudit audit) {
    return new Causes(audit).all();
  }

  private List<Cause> all() {
    List<Cause> causes = new ArrayList<>();
    audit.effects().stream()
        // A crew at a height says more than the crew, and so comes first.
        .sorted(Comparator.comparing(judged -> judged.effect().by() != GroupedBy.CREW_AT_HEIGHT))
        .filter(JudgedEffect::standsApart)
        .filter(effect -> effect.likely().excludes(1))
        .filter(effect -> effect.ratio() > 1 == effect.likely().low() > 1)
        .filter(effect -> Math.abs(effect.ratio() - 1) >= WORTH_NAMING)
        .filter(effect -> !isNamed(causes, effect.effect()))
        .forEach(effect -> causes.add(cause(effect)));
    common(causes).ifPresent(causes::add);
    causes.sort(Comparator.comparingDouble((Cause cause) -> -Math.abs(cause.weight())));
    return causes;
  }

  /** A miss of all bids, unless groups already named made most of it. */
  private Optional<Cause> common(List<Cause> named) {
    GroupRatio all = audit.ratios().all();
    double miss = all.ratio() - 1;
    double explained =
        named.stream()
            .mapToDouble(Cause::weight)
            .filter(weight -> Math.signum(weight) == Math.signum(miss))
            .sum();
    if (!all.likely().excludes(1) || (miss - explained) / miss < STILL_COMMON) {
      return Optional.empty();
    }
    return Optional.of(
        new Cause(
            audit.measure(),
            null,
            "",
            "",
            all.ratio(),
            all.likely(),
            all.jobs(),
            miss,
            Concentration.of(audit.observations(), null)));
  }

  private Cause cause(JudgedEffect judged) {
    Effect effect = judged.effect();
    Optional<Effect> partner = partner(effect);
    double ratio = judged.ratio() * partner.map(Effect::factor).orElse(1.0);
    Interval likely = partner.map(other -> together(effect, other)).orElse(judged.likely());
    Observations there =
        audit.observations().only(one -> one.share(effect.by(), effect.group()) >= 0.5);
    return new Cause(
        audit.measure(),
        effect.by(),
        effect.group(),
        partner.map(Effect::group).orElse(""),
        ratio,
        likely,
        effect.jobs(),
        estimated(effect) / estimated * (ratio - 1),
        Concentration.of(there, effect.by()).filter(where -> !isPartner(partner, where)));
  }

  private Interval together(Effect first, Effect second) {
    LeaveOneOut fits = audit.fits().orElseThrow();
    return fits.interval(
            model ->
                model.level()
                    + model.seen(first.by(), first.group())
                    + model.seen(second.by(), second.group()),
            first.jobs())
        .exp();
  }

  /** The group of another kind that the bids do not tell apart from this one. */
  private Optional<Effect> partner(Effect effect) {
    return audit.inseparable().stream()
        .filter(pair -> pair.names(effect.by(), effect.group()))
        .flatMap(
            pair ->
                audit.fits().stream()
                    .flatMap(f -> f.whole().effects().stream())
                    .filter(other -> other.by() != effect.by())
                    .filter(other -> pair.names(other.by(), other.group())))
        .findFirst();
  }

  private boolean isNamed(List<Cause> causes, Effect effect) {
    return causes.stream()
        .filter(cause -> cause.by() != effect.by())
        .anyMatch(cause -> isTogether(cause, effect) || isOfCrew(cause, effect));
  }

  private boolean isTogether(Cause cause, Effect effect) {
    return audit.inseparable().stream()
        .anyMatch(
            pair ->
                pair.names(cause.by(), cause.group()) && pair.names(effect.by(), effect.group()));
  }

  private boolean isOfCrew(Cause cause, Effect effect) {
    return cause.by() == GroupedBy.CREW_AT_HEIGHT
        && effect.by() == GroupedBy.CREW
        && audit.observations().crewOf(cause.group()).equals(effect.group());
  }

  private static boolean isPartner(Optional<Effect> partner, Concentration where) {
    return partner
        .filter(other -> other.by() == where.by() && other.group().equals(where.group()))
        .isPresent();
  }

  private double estimated(Effect effect) {
    return audit.observations().list().stream()
        .mapToDouble(one -> one.share(effect.by(), effect.group()) * one.estimated())
        .sum();
  }
}
