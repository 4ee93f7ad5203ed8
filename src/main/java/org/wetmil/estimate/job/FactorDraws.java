package org.wetmil.estimate.job;

import java.util.Arrays;
import org.wetmil.estimate.likely.Factor;
import org.wetmil.estimate.likely.Spreads;
import org.wetmil.estimate.likely.Strata;

/** Draws of one factor of a job: part of it is common to all lines, part is each line's own. */
final class FactorDraws {
  /** The sampling error of the ends of a job is about half a percent. */
  static final int DRAWS = 4_000;

  /** The same for every job; making it costs more than a draw. */
  private static final Strata STRATA = new Strata(DRAWS);

  private final String seed;
  private final double ownSigma;
  private final double[] common;
  private final double[] own;

  FactorDraws(String job, Factor factor, Spreads spreads) {
    this.seed = job + "\n" + factor;
    this.ownSigma = spreads.ownSigma(factor);
    this.common = ordered(STRATA.lognormal(0, spreads.commonSigma(factor)));
    this.own = STRATA.lognormal(0, ownSigma);
  }

  private double[] ordered(double[] values) {
    short[] order = STRATA.order(Strata.seed(seed));
    double[] ordered = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      ordered[i] = values[order[i]];
    }
    return ordered;
  }

  /** Draws of a factor that does not range. */
  static double[] certain() {
    double[] ones = new double[DRAWS];
    Arrays.fill(ones, 1);
    return ones;
  }

  /**
   * What the factor is for some lines, draw by draw.
   *
   * @param lines how many of one size they vary as
   */
  double[] of(String id, double lines) {
    if (ownSigma == 0) {
      return common;
    }
    double[] values = lines > 1 ? average(lines) : own;
    short[] order = STRATA.order(Strata.seed(seed + "\n" + id));
    double[] drawn = new double[DRAWS];
    for (int i = 0; i < DRAWS; i++) {
      drawn[i] = common[i] * values[order[i]];
    }
    return drawn;
  }

  /** The average of a factor over n lines, as a lognormal of the same mean and variance. */
  private double[] average(double n) {
    double variance = ownSigma * ownSigma;
    double sigma2 = Math.log1p(Math.expm1(variance) / n);
    return STRATA.lognormal(variance / 2 - sigma2 / 2, Math.sqrt(sigma2));
  }
}
