package org.wetmil.estimate.likely;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;
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

  /** The same probability, summed in a hundred thousand steps. */
  @Test
  void quantilesAreThoseOfTheSumInSmallSteps() {
    double[][] cases = {{0.1, 0.15, 0.2, 0.9}, {0.9, 0.02, 0.3, 0.7}, {0.4, 0.3, 0.1, 1}};
    for (double[] each : cases) {
      double least = Math.log(each[3]);
      double x = Math.log(Quantile.ratio(each[0], each[1], each[2], each[3]));

      assertThat(below(x, each[1], each[2], least)).isCloseTo(each[0], within(1e-7));
    }
  }

  private static double below(double x, double free, double sigma, double least) {
    NormalDistribution normal = new NormalDistribution();
    int steps = 100_000;
    double from = -9 * sigma;
    double width = -2 * from / steps;
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      double t = from + (i + 0.5) * width;
      double stays = Math.max(least, t);
      sum +=
          normal.density(t / sigma)
              / sigma
              * width
              * normal.cumulativeProbability((x - stays) / free);
    }
    return sum;
  }

  /** Ratios made anew, not those kept for the bids of a run. */
  @Test
  void amountsAreThoseOfPlainDraws() {
    Ratios.Of ratios = new Ratios(spreads).of(0.8);
    Random random = new Random(11);
    int n = 200_000;
    double[] half = new double[n];
    double[] quarter = new double[n];
    for (int i = 0; i < n; i++) {
      double both = drawn(random, Factor.FILM) * Math.max(0.8, drawn(random, Factor.TRANSFER));
      double paint = both * drawn(random, Factor.KEPT);
      double spray = both * drawn(random, Factor.TRIGGER);
      half[i] = (paint + spray) / 2;
      quarter[i] = 0.75 * paint + 0.25 * spray;
    }

    assertThat(ratios.amount(0.5).low()).isCloseTo(Strata.quantile(half, 0.1), within(0.01));
    assertThat(ratios.amount(0.5).high()).isCloseTo(Strata.quantile(half, 0.9), within(0.01));
    assertThat(ratios.amount(0.25).low()).isCloseTo(Strata.quantile(quarter, 0.1), within(0.01));
    assertThat(ratios.amount(0.25).high()).isCloseTo(Strata.quantile(quarter, 0.9), within(0.01));
    assertThat(ratios.amount(16.25 / 32).high())
        .isCloseTo(
            0.75 * ratios.amount(16.0 / 32).high() + 0.25 * ratios.amount(17.0 / 32).high(),
            within(1e-12));
    assertThat(ratios.amount(16.25 / 32).low())
        .isCloseTo(
            0.75 * ratios.amount(16.0 / 32).low() + 0.25 * ratios.amount(17.0 / 32).low(),
            within(1e-12));
  }

  private double drawn(Random random, Factor factor) {
    return Math.exp(spreads.sigma(factor) * random.nextGaussian());
  }

  @Test
  void amountsLieBetweenThoseOfPaintAndOfSpraying() {
    Ratios.Of ratios = new Ratios(spreads).of(0.455);
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
