package org.wetmil.audit.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.audit.PastBids.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.wetmil.audit.PastBids;
import org.wetmil.audit.Simulation;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.past.PastBid;
import org.wetmil.audit.past.PastLine;

class AdditiveModelTest {
  private static final List<PastLine> LATEX = List.of(line("latex", "walls", 10));

  @Test
  void twoCrewsAreEachBelievedAsNOverNPlusFour() {
    PastBids bids = new PastBids();
    double[] alder = {1.20, 1.25, 1.30, 1.22, 1.28, 1.24};
    double[] birch = {1.00, 0.95};
    for (double ratio : alder) {
      bids.byJob("Alder", LATEX, ratio, 1);
    }
    for (double ratio : birch) {
      bids.byJob("Birch", LATEX, ratio, 1);
    }
    AdditiveModel model = fit(bids.list());
    assertThat(model.all().mean())
        .isCloseTo(mean(alder) * 6 / 8 + mean(birch) * 2 / 8, within(1e-12));
    // The level counts each crew as far as it is known, not as often as it worked.
    double level = (0.6 * mean(alder) + 2 / 6.0 * mean(birch)) / (0.6 + 2 / 6.0);
    assertThat(model.level()).isCloseTo(level, within(1e-9));
    Effect a = effect(model, "Alder");
    Effect b = effect(model, "Birch");
    assertThat(a.weight()).isCloseTo(0.6, within(1e-12));
    assertThat(b.weight()).isCloseTo(2 / 6.0, within(1e-12));
    assertThat(a.log()).isCloseTo(0.6 * (mean(alder) - level), within(1e-9));
    assertThat(b.log()).isCloseTo(2 / 6.0 * (mean(birch) - level), within(1e-9));
  }

  @Test
  void crewsThatDifferNoMoreThanTheirBidsScatterGetNoFactorOfTheirOwn() {
    PastBids bids = new PastBids();
    for (String crew : List.of("Alder", "Birch", "Cedar")) {
      for (double ratio : new double[] {0.9, 1.0, 1.1, 1.2, 1.05}) {
        bids.byJob(crew, LATEX, ratio, 1);
      }
    }
    AdditiveModel model = fit(bids.list());
    assertThat(effect(model, "Alder").weight()).isZero();
    assertThat(effect(model, "Alder").log()).isZero();
  }

  @Test
  void aKindWithOneGroupAddsNothingToTheCommonFactor() {
    AdditiveModel model = fit(new PastBids().byJob("A", LATEX, 1.2, 1).list());
    assertThat(model.effects()).allMatch(effect -> effect.log() == 0);
    assertThat(Math.exp(model.all().mean())).isCloseTo(1.2, within(1e-12));
  }

  @Test
  void withManyBidsAndLittleLuckTheTrueEffectsComeOut() {
    Map<String, Double> coatings = Map.of("a", 0.3, "b", 0.0, "c", -0.1);
    Map<String, Double> surfaces = Map.of("p", 0.2, "q", 0.0);
    Map<String, Double> crews = Map.of("x", 0.1, "y", 0.0);
    for (Simulation.Known known : Simulation.Known.values()) {
      Simulation simulation = new Simulation(0.05, coatings, surfaces, crews, 0, 0.02, 0.02, known);
      AdditiveModel model = fit(simulation.bids(300, 3, 11));
      assertThat(model.log(GroupedBy.COATING, "a") - model.log(GroupedBy.COATING, "b"))
          .as("%s: a over b", known)
          .isCloseTo(0.3, within(0.02));
      assertThat(model.log(GroupedBy.SURFACE, "p") - model.log(GroupedBy.SURFACE, "q"))
          .as("%s: p over q", known)
          .isCloseTo(0.2, within(0.02));
      assertThat(model.log(GroupedBy.CREW, "x") - model.log(GroupedBy.CREW, "y"))
          .as("%s: x over y", known)
          .isCloseTo(0.1, within(0.02));
    }
  }

  @Test
  void theOrderOfTheBidsDoesNotMoveAFactor() {
    Simulation simulation =
        new Simulation(
            0.05,
            Map.of("a", 0.3, "b", 0.0),
            Map.of("p", 0.2, "q", 0.0),
            Map.of("x", 0.1, "y", 0.0, "z", 0.0),
            0,
            0.1,
            0.1,
            Simulation.Known.BY_COATING);
    List<PastBid> bids = new ArrayList<>(simulation.bids(24, 3, 5));
    AdditiveModel forward = fit(bids);
    Collections.reverse(bids);
    AdditiveModel backward = fit(bids);
    for (int i = 0; i < forward.effects().size(); i++) {
      assertThat(backward.effects().get(i).log())
          .isCloseTo(forward.effects().get(i).log(), within(1e-8));
    }
  }

  @Test
  void groupsThatNeverOccurApartAreNamed() {
    List<PastLine> block = List.of(line("block filler", "block walls", 10));
    PastBids bids =
        new PastBids()
            .byJob("A", LATEX, 1, 1)
            .byJob("A", List.of(line("latex", "ceiling", 10)), 1, 1)
            .byJob("B", block, 1.3, 1)
            .byJob("A", block, 1.2, 1);
    assertThat(Inseparable.of(Observations.of(Measure.PAINT, bids.list())))
        .containsExactly(
            new Inseparable(GroupedBy.COATING, "block filler", GroupedBy.SURFACE, "block walls"));
  }

  private static AdditiveModel fit(List<PastBid> bids) {
    return AdditiveModel.fit(Observations.of(Measure.PAINT, bids));
  }

  private static Effect effect(AdditiveModel model, String group) {
    return model.effects().stream()
        .filter(effect -> effect.group().equals(group))
        .findFirst()
        .orElseThrow();
  }

  private static double mean(double... ratios) {
    return Arrays.stream(ratios).map(Math::log).average().orElseThrow();
  }
}
