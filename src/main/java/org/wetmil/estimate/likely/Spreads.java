package org.wetmil.estimate.likely;

import java.util.EnumMap;
import java.util.Map;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.Setting;

/**
 * How far each factor ranges. A factor is lognormal about 1, so that the stated figure is its
 * median; a setting says how many times more or less its 10 and 90 % limits are (house).
 *
 * @param sigmas standard deviation of each factor's natural log
 * @param common share of each log variance that all lines of a job have in common, 0..1
 */
public record Spreads(Map<Factor, Double> sigmas, double common) {
  static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

  /** Share of jobs below the low end and above the high one. */
  public static final double TAIL = 0.10;

  /** Standard normal deviate of the high end. */
  public static final double Z = NORMAL.inverseCumulativeProbability(1 - TAIL);

  public Spreads {
    sigmas = Map.copyOf(sigmas);
  }

  /** The ranges that the settings of a bid state. */
  public static Spreads of(Catalogue catalogue) {
    Map<Factor, Double> sigmas = new EnumMap<>(Factor.class);
    for (Factor factor : Factor.values()) {
      sigmas.put(factor, sigma(catalogue.number(factor.setting())));
    }
    return new Spreads(sigmas, catalogue.number(Setting.RANGE_IN_COMMON));
  }

  /** The standard deviation of the log of a factor whose 90 % limit is so many times 1. */
  public static double sigma(double limit) {
    return Math.log(limit) / Z;
  }

  /** The 90 % limit of a factor, as its setting states it. */
  public static double limit(double sigma) {
    return Math.exp(sigma * Z);
  }

  /**
   * Share of jobs that come out inside of ranges of another width than they should have.
   *
   * @param width as a multiple of the right one, of their logarithms
   */
  public static double insideOf(double width) {
    return 2 * NORMAL.cumulativeProbability(width * Z) - 1;
  }

  public double sigma(Factor factor) {
    return sigmas.get(factor);
  }

  /** The part that all lines of the job have in common. */
  public double commonSigma(Factor factor) {
    return sigma(factor) * Math.sqrt(common);
  }

  /** The part of each line's own. */
  public double ownSigma(Factor factor) {
    return sigma(factor) * Math.sqrt(1 - common);
  }

  /** Standard deviation of the log of a product of factors. */
  public double together(Factor... factors) {
    double sum = 0;
    for (Factor factor : factors) {
      sum += sigma(factor) * sigma(factor);
    }
    return Math.sqrt(sum);
  }
}
