package org.wetmil.estimate.likely;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** Ranges against the standard normal table: 1.28155 at 0.9, 0.8413 at 1, 0.6915 at 0.5. */
class SpreadsTest {
  private static final Spreads SPREADS =
      new Spreads(
          Map.of(Factor.TRANSFER, 0.3, Factor.FILM, 0.4, Factor.KEPT, 0.0, Factor.TRIGGER, 1.2),
          0.36);

  @Test
  void limitIsThatOfNineInTen() {
    assertThat(Spreads.sigma(1.5)).isCloseTo(Math.log(1.5) / 1.28155, within(1e-5));
    assertThat(Spreads.limit(Spreads.sigma(1.5))).isCloseTo(1.5, within(1e-12));
    assertThat(Spreads.insideOf(1)).isCloseTo(0.8, within(1e-9));
    assertThat(Spreads.insideOf(1 / 1.2815515655)).isCloseTo(2 * 0.8413447 - 1, within(1e-6));
    assertThat(Spreads.insideOf(0.5 / 1.2815515655)).isCloseTo(2 * 0.6914625 - 1, within(1e-6));
  }

  @Test
  void commonPartAndOwnPartMakeTheWhole() {
    assertThat(SPREADS.commonSigma(Factor.FILM)).isCloseTo(0.4 * 0.6, within(1e-12));
    assertThat(SPREADS.ownSigma(Factor.FILM)).isCloseTo(0.4 * 0.8, within(1e-12));
    assertThat(SPREADS.together(Factor.TRANSFER, Factor.FILM)).isCloseTo(0.5, within(1e-12));
    assertThat(SPREADS.together(Factor.FILM, Factor.TRANSFER, Factor.TRIGGER))
        .isCloseTo(1.3, within(1e-12));
  }
}
