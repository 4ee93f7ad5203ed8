package org.wetmil.audit.ratio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.audit.PastBids.line;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetmil.audit.PastBids;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.past.PastLine;

class RatiosTest {
  private static final List<PastLine> LATEX = List.of(line("latex", "walls", 10));

  @Test
  void theGroupsRatioIsTheGeometricMeanAndTheSumsAreWhatWasPaid() {
    PastBids bids =
        new PastBids()
            .byJob("A", LATEX, 1.0, 1)
            .byJob("A", List.of(line("latex", "walls", 30)), 2.0, 1)
            .byJob("A", LATEX, 4.0, 1);
    GroupRatio all = ratios(bids).all();
    assertThat(all.jobs()).isEqualTo(3);
    assertThat(all.ratio()).isCloseTo(2.0, within(1e-12));
    assertThat(all.median()).isCloseTo(2.0, within(1e-12));
    assertThat(all.ratioOfSums()).isCloseTo(110.0 / 50, within(1e-12));
    assertThat(all.likely().low()).isLessThan(1);
  }

  @Test
  void linesOfOneBidCountAsOneBid() {
    List<PastLine> twice = List.of(line("latex", "walls", 10), line("latex", "walls", 10));
    PastBids bids = new PastBids().byLine("A", twice, 1.0, 1.2).byLine("A", twice, 0.9, 1.3);
    GroupRatio latex = group(ratios(bids), GroupedBy.COATING, "latex");
    assertThat(latex.jobs()).isEqualTo(2);
    assertThat(latex.ratio()).isCloseTo(1.1, within(1e-12));
    assertThat(latex.likely().isKnown()).isFalse();
  }

  @Test
  void aCoatingThatIsPartOfAJobsFigureCountsAsThatPartOfABid() {
    List<PastLine> half = List.of(line("latex", "walls", 10), line("primer", "walls", 10));
    PastBids bids = new PastBids();
    for (int i = 0; i < 5; i++) {
      bids.byJob("A", half, 1 + i * 0.1, 1);
    }
    GroupRatio latex = group(ratios(bids), GroupedBy.COATING, "latex");
    assertThat(latex.jobs()).isEqualTo(5);
    assertThat(latex.weight()).isCloseTo(2.5, within(1e-12));
    assertThat(latex.likely().isKnown()).isFalse();
  }

  @Test
  void anOddJobIsFlaggedAndStaysIn() {
    PastBids bids = new PastBids();
    for (double ratio : new double[] {1.02, 0.98, 1.05, 1.0, 0.97, 1.9}) {
      bids.byJob("A", LATEX, ratio, 1);
    }
    Ratios ratios = ratios(bids);
    assertThat(ratios.jobs()).extracting(JobRatio::isOdd).containsOnlyOnce(true);
    assertThat(ratios.jobs().get(5).isOdd()).isTrue();
    assertThat(ratios.all().jobs()).isEqualTo(6);
  }

  @Test
  void aDriftIsToldPerYear() {
    PastBids bids = new PastBids();
    for (int i = 0; i < 12; i++) {
      bids.byJob("A", LATEX, Math.exp(0.1 * i * 14 / 365.25), 1);
    }
    assertThat(ratios(bids).trend().slope()).isCloseTo(0.1, within(1e-9));
    assertThat(ratios(bids).trend().chance()).isLessThan(0.001);
  }

  @Test
  void linesOnWhichACheckFiredAreComparedWithTheOthers() {
    List<PastLine> lines =
        List.of(line("latex", "walls", 10, "tip-worn"), line("latex", "walls", 10));
    PastBids bids =
        new PastBids()
            .byLine("A", lines, 1.32, 1.1)
            .byLine("A", lines, 1.20, 1.0)
            .byLine("A", lines, 1.08, 0.9);
    SetupRatio setup = SetupRatio.of(Observations.of(Measure.PAINT, bids.list())).get(0);
    assertThat(setup.check()).isEqualTo("tip-worn");
    assertThat(setup.lines()).isEqualTo(3);
    assertThat(setup.over()).isCloseTo(1.2, within(1e-12));
    assertThat(setup.isTooFew()).isFalse();
    // Each bid shows the same difference, so nothing is left but the root of a rounding.
    assertThat(setup.likely().low()).isCloseTo(1.2, within(1e-6));
  }

  @Test
  void twoBidsAreTooFewToSayWhetherACheckMatters() {
    List<PastLine> lines =
        List.of(line("latex", "walls", 10, "tip-worn"), line("latex", "walls", 10));
    PastBids bids = new PastBids().byLine("A", lines, 1.32, 1.1).byLine("A", lines, 1.20, 1.0);
    assertThat(SetupRatio.of(Observations.of(Measure.PAINT, bids.list())).get(0).isTooFew())
        .isTrue();
  }

  @Test
  void bidsThatWereNotWonStillHaveTheirSetupsCounted() {
    PastBids bids =
        new PastBids().bid("", List.of(line("latex", "walls", 10, "tip-worn")), List.of());
    SetupRatio setup = SetupRatio.of(Observations.of(Measure.PAINT, bids.list())).get(0);
    assertThat(setup.lines()).isEqualTo(1);
    assertThat(setup.jobsFired()).isZero();
  }

  @Test
  void aMissThatAroseInOnePartIsPlacedThere() {
    PastBids bids = new PastBids();
    List<PastLine> lines = List.of(line("latex", "walls", 10), line("latex", "soffit", 4));
    for (double luck : new double[] {0.98, 1.02, 1.01, 0.99, 1.0}) {
      bids.byLine("A", lines, luck, 1.6 * luck);
    }
    Observations paint = Observations.of(Measure.PAINT, bids.list());
    assertThat(Concentration.of(paint, null))
        .hasValueSatisfying(
            where -> {
              assertThat(where.group()).isEqualTo("soffit");
              assertThat(where.isNearlyAll()).isTrue();
            });
    assertThat(Concentration.of(paint, GroupedBy.SURFACE)).isEmpty();
  }

  private static Ratios ratios(PastBids bids) {
    return Ratios.of(Observations.of(Measure.PAINT, bids.list()));
  }

  private static GroupRatio group(Ratios ratios, GroupedBy by, String group) {
    return ratios.groups().stream()
        .filter(ratio -> ratio.by() == by && ratio.group().equals(group))
        .findFirst()
        .orElseThrow();
  }
}
