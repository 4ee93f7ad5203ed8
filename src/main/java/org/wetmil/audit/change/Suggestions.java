package org.wetmil.audit.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.wetmil.audit.model.AdditiveModel;
import org.wetmil.audit.model.Change;
import org.wetmil.audit.model.Effect;
import org.wetmil.audit.model.LeaveOneOut;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.Observations;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.quantity.Quantity;

/** Everything that the past bids speak for changing. */
public final class Suggestions {
  private Suggestions() {}

  /**
   * A measure whose change proved itself.
   *
   * @param change the one that did
   */
  public record Proven(Observations observations, LeaveOneOut fits, Change change) {
    Factors factors() {
      return new Factors(observations, fits, change);
    }
  }

  /**
   * @param paint empty when no change of paint proved itself
   * @param hours empty when no change of hours proved itself
   * @param catalogue the tables that the estimates were made with
   * @param paintTable where a paint factor goes
   */
  public static List<Suggestion> of(
      Optional<Proven> paint, Optional<Proven> hours, Catalogue catalogue, PaintTable paintTable) {
    List<Suggestion> all = new ArrayList<>();
    Optional<Factors> paintFactors = paint.map(Proven::factors);
    paintFactors.ifPresent(
        factors -> all.addAll(new PaintSuggestions(factors, catalogue).in(paintTable)));
    paint.ifPresent(proven -> all.addAll(byHand(proven)));
    hours.ifPresent(
        proven -> {
          all.addAll(new PaceSuggestions(proven.factors(), paintFactors, catalogue).all());
          all.addAll(byHand(proven));
        });
    return List.copyOf(all);
  }

  /** Factors that the change uses and no table of a bid carries. */
  private static List<Suggestion> byHand(Proven proven) {
    Measure measure = proven.observations().measure();
    List<Effect> effects = proven.fits().whole().effects();
    Set<String> climbers =
        proven.observations().groups(GroupedBy.CREW_AT_HEIGHT).stream()
            .map(proven.observations()::crewOf)
            .collect(Collectors.toSet());
    return effects.stream()
        .filter(effect -> proven.change().uses(measure, effect.by()))
        .filter(effect -> !Change.TABLES.uses(measure, effect.by()))
        // A crew that is split by height gets one factor for each class instead of two to multiply.
        .filter(effect -> effect.by() != GroupedBy.CREW || !climbers.contains(effect.group()))
        .map(effect -> byHand(proven, effect))
        .filter(suggestion -> suggestion.factor() != 1)
        .toList();
  }

  private static Suggestion byHand(Proven proven, Effect effect) {
    ToDoubleFunction<AdditiveModel> log =
        effect.by() == GroupedBy.COATING
            ? model -> model.log(effect.by(), effect.group())
            : model -> model.account(effect.by(), effect.group(), Effect::log) - model.average();
    double factor = Math.exp(log.applyAsDouble(proven.fits().whole()));
    boolean isCoating = effect.by() == GroupedBy.COATING;
    return new Suggestion(
        proven.observations().measure(),
        "",
        isCoating ? effect.group() : "",
        "",
        isCoating ? "" : effect.group(),
        "Factor",
        Quantity.NUMBER,
        1,
        factor,
        factor,
        proven.fits().interval(log, effect.jobs()).exp(),
        effect.jobs(),
        false);
  }
}
