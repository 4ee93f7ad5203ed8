package org.wetmil.estimate.likely;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;
import org.wetmil.catalogue.Catalogue;

/** Ranges against the closed form for products of lognormals, and against plain draws. */
class RatiosTest {
  /** What a line takes varies by this many times: the root of the sum of squared logs. */
  private static final double PAINT =
      Math.exp(Math.hypot(Math.hypot(Math.log(1.20), Math.log(1.18)), Math.log(1.03)));

  private final Spreads spreads = Spreads.of(Catalogue.builtIn());

  @Test
  void endsOfAProductOfLognormalsHaveTheirClosedForm() {
    double sigma = spreads.together(Factor.FILM, Factor.KEPT);
    LogNormalDistribution product =
        new LogNormalDistribution(0, Math.hypot(sigma, spreads.sigma(Factor.TRANSFER)));

    assertThat(Quantile.ratio(0.9, sigma, spreads.sigma(Factor.TRANSFER), 0.2))
        .isCloseTo(PAINT, within(1e-12))
        .isCloseTo(product.inverseCumulativeProbability(0.9), within(1e-9));
    assertThat(Quantile.ratio(0.1, sigma, spreads.sigma(Factor.TRANSFER), 0.2))
        .isCloseTo(1 / PAINT, within(1e-12));
  }

  @Test
  void shareThatStaysOnIsNeverOverOne() {
    assertThat(Quantile.ratio(0.1, 0, 0.2, 0.9)).isEqualTo(0.9, within(1e-12));
    assertThat(Quantile.ratio(0.9, 0, 0.2, 0.9))
        .isCloseTo(Math.exp(0.2 * Spreads.Z), within(1e-12));
    // the limit moves up what is below, and nothing far above it
    double free = 0.1;
    double held = Quantile.ratio(0.1, free, 0.2, 0.9);
    assertThat(held).isGreaterThan(Quantile.ratio(0.1, free, 0.2, 0.01));
    double[] plain = plain(free, 0.2, Math.log(0.9), 400_000);
    for (double p : new double[] {0.1, 0.5, 0.9}) {
      double quantile = Quantile.ratio(p, free, 0.2, 0.9);
      double below = 0;
      for (double ratio : plain) {
        below += ratio <= quantile ? 1 : 0;
      }
      double error = Math.sqrt(p * (1 - p) / plain.length);
      assertThat(below / plain.length).isCloseTo(p, within(4 * error));
    }
  }

  private static double[] plain(double free, double sigma, double least, int n) {
    Random random = new Random(7);
    double[] ratios = new double[n];
    for (int i = 0; i < n; i++) {
      double stays = Math.max(least, sigma * random.nextGaussian());
      ratios[i] = Math.exp(free * random.nextGaussian() + stays);
    }
    return ratios;
  }

  @Test
  void amountsLieBetweenThoseOfPaintAndOfSpraying() {
    Ratios.Of ratios = Ratios.of(spreads).of(0.455);
    double last = ratios.paint().high();
    for (double labour : new double[] {0.3, 0.5, 0.8, 1}) {
      double high = ratios.amount(labour).high();
      assertThat(high).isLessThan(ratios.spray().high() + 1e-9);
      assertThat(high).isGreaterThanOrEqualTo(last - 0.02);
      last = high;
    }
    assertThat(ratios.amount(0)).isEqualTo(ratios.paint());
    assertThat(ratios.amount(1)).isEqualTo(ratios.spray());
  }

  @Test
  void jobsInsideTheirRangeAreCounted() {
    Band band = new Band(80, 100, 125);
    Inside inside =
        Inside.of(
            List.of(
                new Inside.Past(band, 79.9),
                new Inside.Past(band, 80),
                new Inside.Past(band, 125),
                new Inside.Past(band, 126),
                new Inside.Past(band, 0),
                new Inside.Past(band, Double.NaN)));

    assertThat(inside).isEqualTo(new Inside(1, 2, 1));
    assertThat(inside.share()).isEqualTo(0.5);
    assertThat(Inside.of(List.of()).share()).isNaN();
  }
}
