package org.wetmil.audit;

import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.ratio.GroupRatio;
import org.wetmil.audit.stats.Interval;

/**
 * A group that stands apart, and what is to be said of it: where its outcomes are its own, the
 * ratio measured on them; where they are known only together with others', its share of them by the
 * model. Both stand on the list of groups.
 *
 * @param measured how the group's part of the bids came out
 */
record Claim(JudgedEffect judged, GroupRatio measured) {
  /** Least miss of a group, as a share, that is named (house rule). */
  private static final double WORTH_NAMING = 0.03;

  /** Least purity of a group's outcomes that makes them its own (house rule). */
  private static final double OWN = 0.9;

  static Claim of(Observations observations, JudgedEffect judged) {
    return new Claim(
        judged, GroupRatio.of(observations, judged.effect().by(), judged.effect().group()));
  }

  GroupedBy by() {
    return judged.effect().by();
  }

  String group() {
    return judged.effect().group();
  }

  double ratio() {
    return isOwn() ? measured.ratio() : judged.ratio();
  }

  Interval likely() {
    return isOwn() ? measured.likely() : judged.likely();
  }

  private boolean isOwn() {
    return measured.weight() >= OWN * measured.jobs();
  }

  /**
   * Whether both the model and the group's own part of the bids show a miss, the same one, and that
   * it is further off than all bids: what is less over than the rest is no reason for an overrun.
   */
  boolean isWorthNaming() {
    return judged.likely().excludes(1)
        && judged.ratio() > 1 == judged.likely().low() > 1
        && judged.ratio() > 1 == judged.apart() > 0
        && isMiss(judged.ratio())
        && isShown(measured);
  }

  /** Whether the group still missed in what earlier claims left. */
  boolean isShownBy(Observations left) {
    return isShown(GroupRatio.of(left, by(), group()));
  }

  private boolean isShown(GroupRatio ratio) {
    return isMiss(ratio.ratio())
        && ratio.ratio() > 1 == judged.ratio() > 1
        && (!ratio.likely().isKnown() || ratio.likely().excludes(1));
  }

  /** How much nearer the bids come to right once the miss is taken off: squares of log ratios. */
  double explained(Observations left) {
    return left.list().stream()
        .mapToDouble(
            one -> {
              double before = one.logRatio();
              double after = takenOff(one).logRatio();
              return one.estimated() * (before * before - after * after);
            })
        .sum();
  }

  /** An outcome as it would have been without the miss of the group. */
  Observation takenOff(Observation one) {
    return one.took(one.actual() / (1 + one.share(by(), group()) * (ratio() - 1)));
  }

  private static boolean isMiss(double ratio) {
    return Math.abs(ratio - 1) >= WORTH_NAMING;
  }
}
