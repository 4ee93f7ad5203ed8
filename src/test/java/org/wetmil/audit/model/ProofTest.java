package org.wetmil.audit.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.wetmil.audit.PastBids.line;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.wetmil.audit.PastBids;
import org.wetmil.audit.past.Measure;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.past.PastLine;

class ProofTest {
  private static final List<PastLine> LATEX = List.of(line("latex", "walls", 10));

  @Test
  void eachBidIsForecastByTheOthersOnly() {
    PastBids bids = new PastBids();
    double[] ratios = {1.10, 1.20, 1.15, 1.05, 1.18, 1.12};
    for (double ratio : ratios) {
      bids.byJob("A", LATEX, ratio, 1);
    }
    Proof common = proofs(bids).get(0);
    double others = Math.log(1.20 * 1.15 * 1.05 * 1.18 * 1.12) / 5;
    assertThat(common.bids().get(0).forecast()).isCloseTo(10 * Math.exp(others), within(1e-12));
    assertThat(common.before())
        .isCloseTo(Math.log(1.10 * 1.20 * 1.15 * 1.05 * 1.18 * 1.12) / 6, within(1e-12));
    assertThat(Proof.offered(proofs(bids))).map(Proof::change).contains(Change.COMMON);
  }

  @Test
  void noChangeIsOfferedWhenTheBidsWereRight() {
    PastBids bids = new PastBids();
    for (double ratio : new double[] {1.05, 0.95, 1.03, 0.97, 1.01, 0.99}) {
      bids.byJob("A", LATEX, ratio, 1);
    }
    assertThat(proofs(bids).get(0).after()).isGreaterThan(proofs(bids).get(0).before());
    assertThat(Proof.offered(proofs(bids))).isEmpty();
  }

  @Test
  void fiveBidsProveNothing() {
    PastBids bids = new PastBids();
    for (int i = 0; i < 5; i++) {
      bids.byJob("A", LATEX, 1.2 + i * 0.01, 1);
    }
    assertThat(proofs(bids).get(0).after()).isLessThan(proofs(bids).get(0).before());
    assertThat(Proof.offered(proofs(bids))).isEmpty();
    bids.byJob("A", LATEX, 1.22, 1);
    assertThat(Proof.offered(proofs(bids))).isPresent();
  }

  @Test
  void theLastBidsAreTheLatestByDate() {
    PastBids bids = new PastBids();
    for (int i = 0; i < 7; i++) {
      bids.byJob("A", LATEX, 1.1, 1);
    }
    assertThat(proofs(bids).get(0).last(5))
        .extracting(forecast -> forecast.bid().id())
        .containsExactly("job 3", "job 4", "job 5", "job 6", "job 7");
  }

  private static List<Proof> proofs(PastBids bids) {
    Observations paint = Observations.of(Measure.PAINT, bids.list());
    return Proof.of(paint, LeaveOneOut.of(paint));
  }
}
