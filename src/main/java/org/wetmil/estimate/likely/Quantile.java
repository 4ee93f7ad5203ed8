package org.wetmil.estimate.likely;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Quantiles of what a line takes against what is stated: a product of lognormal factors over the
 * share of paint that stays on, which is never over 1.
 *
 * <p>ln ratio = N(0, free) + max(ln transfer, N(0, transfer's own sigma)). Where the limit is out
 * of reach this is the closed form for a product of lognormals, exp(z sqrt(free^2 + sigma^2)).
 */
final class Quantile {
  /** Standard deviations past which a normal tail is nothing in a double. */
  private static final double REACH = 8.5;

  /** Of the log of a ratio. */
  private static final double TOLERANCE = 1e-12;

  /** A dozen are the rule. */
  private static final int MOST_EVALUATIONS = 200;

  private static final int PIECES = 8;
  private static final GaussIntegrator PIECE = new GaussIntegratorFactory().legendre(16, -1.0, 1.0);

  private Quantile() {}

  /**
   * Quantile of the ratio.
   *
   * @param p 0..1, both excluded
   * @param freeSigma standard deviation of the log of the factors without a limit
   * @param transferSigma the same of the share that stays on
   * @param transfer the stated share that stays on, above 0 and at most 1
   */
  static double ratio(double p, double freeSigma, double transferSigma, double transfer) {
    double z = Spreads.NORMAL.inverseCumulativeProbability(p);
    double least = Math.log(transfer);
    if (transferSigma == 0 || least < -REACH * transferSigma) {
      return Math.exp(z * Math.hypot(freeSigma, transferSigma));
    }
    if (freeSigma == 0) {
      return Math.exp(Math.max(least, z * transferSigma));
    }
    double far = REACH * (freeSigma + transferSigma);
    double log =
        new BrentSolver(TOLERANCE)
            .solve(
                MOST_EVALUATIONS,
                x -> below(x, freeSigma, transferSigma, least) - p,
                least - far,
                far);
    return Math.exp(log);
  }

  /** Probability that the log of the ratio is at most x. */
  private static double below(double x, double free, double sigma, double least) {
    double held = Spreads.NORMAL.cumulativeProbability(least / sigma);
    double sum = held * Spreads.NORMAL.cumulativeProbability((x - least) / free);
    double from = Math.max(least, -REACH * sigma);
    double step = (REACH * sigma - from) / PIECES;
    for (int i = 0; i < PIECES; i++) {
      double middle = from + (i + 0.5) * step;
      sum +=
          step
              / 2
              * PIECE.integrate(
                  u -> {
                    double t = middle + u * step / 2;
                    return Spreads.NORMAL.density(t / sigma)
                        / sigma
                        * Spreads.NORMAL.cumulativeProbability((x - t) / free);
                  });
    }
    return sum;
  }
}
