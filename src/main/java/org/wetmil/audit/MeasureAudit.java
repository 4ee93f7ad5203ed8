package org.wetmil.audit;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.wetmil.audit.change.Suggestions;
import org.wetmil.audit.model.AdditiveModel;
import org.wetmil.audit.model.Inseparable;
import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.model.LeaveOneOut;
import org.wetmil.audit.model.Proof;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.ratio.Ratios;
import org.wetmil.audit.ratio.SetupRatio;
import org.wetmil.audit.stats.Line;

/**
 * Paint or hours over all bids that say how they came out.
 *
 * @param fits empty under three bids, and then so are effects, inseparable and proofs
 * @param effects what each coating, surface, crew and year adds
 * @param inseparable groups that the bids do not tell apart
 * @param proofs each change tried on every bid, the simplest first
 * @param offered the change worth making; empty: do not change anything yet
 * @param sizeBeyondCauses log outcome on log estimate, with what the model explains taken off the
 *     outcome: a slope under 1 means that small jobs overrun more than their work explains
 * @param setups whether lines on which a check fired ran over
 */
public record MeasureAudit(
    Observations observations,
    Ratios ratios,
    Optional<LeaveOneOut> fits,
    List<JudgedEffect> effects,
    List<Inseparable> inseparable,
    List<Proof> proofs,
    Optional<Proof> offered,
    Optional<Line> sizeBeyondCauses,
    List<SetupRatio> setups) {
  private static final int FEWEST_FOR_MODEL = 3;

  static MeasureAudit of(Observations observations) {
    Ratios ratios = Ratios.of(observations);
    Optional<LeaveOneOut> fits =
        ratios.jobs().size() < FEWEST_FOR_MODEL
            ? Optional.empty()
            : Optional.of(LeaveOneOut.of(observations));
    List<Proof> proofs = fits.map(f -> Proof.of(observations, f)).orElse(List.of());
    return new MeasureAudit(
        observations,
        ratios,
        fits,
        fits.map(JudgedEffect::of).orElse(List.of()),
        fits.map(f -> Inseparable.of(observations)).orElse(List.of()),
        proofs,
        Proof.offered(proofs),
        fits.map(f -> size(observations, f.whole())),
        SetupRatio.of(observations));
  }

  private static Line size(Observations observations, AdditiveModel model) {
    List<List<Observation>> bids = List.copyOf(observations.byBid().values());
    return Line.through(
        bids.stream().mapToDouble(bid -> Math.log(sum(bid, Observation::estimated))).toArray(),
        bids.stream()
            .mapToDouble(
                bid -> Math.log(sum(bid, one -> one.actual() / Math.exp(model.logFactor(one)))))
            .toArray());
  }

  private static double sum(List<Observation> bid, ToDoubleFunction<Observation> amount) {
    return bid.stream().mapToDouble(amount).sum();
  }

  public Measure measure() {
    return observations.measure();
  }

  /** The proven change with what it rests on. */
  Optional<Suggestions.Proven> proven() {
    return offered.map(
        proof -> new Suggestions.Proven(observations, fits.orElseThrow(), proof.change()));
  }
}
