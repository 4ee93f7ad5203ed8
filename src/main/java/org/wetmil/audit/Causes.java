package org.wetmil.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.ratio.Concentration;
import org.wetmil.audit.ratio.GroupRatio;

/**
 * The reasons why one measure missed, the largest first.
 *
 * <p>The model says which groups stand apart; what is said of one is what its own paint or hours
 * show. They are named one after the other, each time the one that explains most of what is left,
 * so that walls are not blamed for the coating that was sprayed on them.
 */
final class Causes {
  /** What is left of the common miss, as a share, that still makes it a reason (house rule). */
  private static final double STILL_COMMON = 0.4;

  private final MeasureAudit audit;
  private final List<Claim> claims;
  private Observations left;

  private Causes(MeasureAudit audit) {
    this.audit = audit;
    left = audit.observations();
    claims =
        audit.effects().stream()
            .filter(JudgedEffect::standsApart)
            .map(judged -> Claim.of(audit.observations(), judged))
            .filter(Claim::isWorthNaming)
            .toList();
  }

  static List<Cause> of(MeasureAudit audit) {
    return new Causes(audit).all();
  }

  private List<Cause> all() {
    List<Cause> causes = new ArrayList<>();
    Optional<Claim> next = next();
    while (next.isPresent()) {
      Claim claim = next.get();
      causes.add(cause(claim));
      left = left.each(claim::takenOff);
      next = next();
    }
    common(causes).ifPresent(causes::add);
    causes.sort(Comparator.comparingDouble((Cause cause) -> -Math.abs(cause.weight())));
    return causes;
  }

  /** The claim that explains most of what is left, if its own group still shows it. */
  private Optional<Claim> next() {
    return claims.stream()
        .filter(claim -> claim.isShownBy(left))
        .max(Comparator.comparingDouble(claim -> claim.explained(left)))
        .filter(claim -> claim.explained(left) > 0);
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

  private Cause cause(Claim claim) {
    String partner = partner(claim);
    Observations there =
        audit.observations().only(one -> one.share(claim.by(), claim.group()) >= 0.5);
    return new Cause(
        audit.measure(),
        claim.by(),
        claim.group(),
        partner,
        claim.ratio(),
        claim.likely(),
        claim.judged().effect().jobs(),
        estimated(claim) / audit.ratios().all().estimated() * (claim.ratio() - 1),
        Concentration.of(there, claim.by()).filter(where -> !where.group().equals(partner)));
  }

  /** The group of another kind that the bids do not tell apart from this one; empty for none. */
  private String partner(Claim claim) {
    return audit.inseparable().stream()
        .filter(pair -> pair.names(claim.by(), claim.group()))
        .map(pair -> pair.partnerOf(claim.by(), claim.group()))
        .findFirst()
        .orElse("");
  }

  private double estimated(Claim claim) {
    return audit.observations().list().stream()
        .mapToDouble(one -> one.share(claim.by(), claim.group()) * one.estimated())
        .sum();
  }
}
