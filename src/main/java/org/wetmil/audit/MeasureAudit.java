package org.wetmil.audit;

import java.util.List;
import java.util.Optional;
import org.wetmil.audit.change.Suggestions;
import org.wetmil.audit.model.Inseparable;
import org.wetmil.audit.model.JudgedEffect;
import org.wetmil.audit.model.LeaveOneOut;
import org.wetmil.audit.model.Proof;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.ratio.Ratios;
import org.wetmil.audit.ratio.SetupRatio;

/**
 * Paint or hours over all bids that say how they came out.
 *
 * @param fits empty under three bids, and then so are effects, inseparable and proofs
 * @param effects what each coating, surface, crew and year adds
 * @param inseparable groups that the bids do not tell apart
 * @param proofs each change tried on every bid, the simplest first
 * @param offered the change worth making; empty: do not change anything yet
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
        fits.map(f -> JudgedEffect.of(observations, f)).orElse(List.of()),
        fits.map(f -> Inseparable.of(observations)).orElse(List.of()),
        proofs,
        Proof.offered(proofs),
        SetupRatio.of(observations));
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
