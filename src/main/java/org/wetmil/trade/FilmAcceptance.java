package org.wetmil.trade;

import org.wetmil.quantity.Require;

/**
 * The dry films that a specification accepts on the wall, as gauges read them.
 *
 * <p>A range is accepted as it stands, a single value from 80 to 120 % of it (published, second
 * hand: the 2012 edition of a coating practice standard as quoted by others; its 2004 edition took
 * the value as the least). The mean of a spot may go as far as 80 % of the least and 120 % of the
 * most (from memory: the standard's usual restriction level). What a contract says comes first.
 *
 * @param leastMil least mean of an area, above 0
 * @param mostMil greatest mean of an area, at least {@code leastMil}
 */
public record FilmAcceptance(double leastMil, double mostMil) {
  public static final double LEAST_SHARE = 0.8;
  public static final double MOST_SHARE = 1.2;

  /** What two ways of computing one film may differ by. */
  private static final double ROUNDING = 1e-9;

  /** Readings that make a spot, and spots that make an area (published, second hand). */
  public static final int READINGS_OF_SPOT = 3;

  public static final int SPOTS_OF_AREA = 5;

  public FilmAcceptance {
    Require.positive("leastMil", leastMil);
    Require.between("mostMil", mostMil, leastMil, Double.MAX_VALUE);
  }

  /**
   * What a specification accepts.
   *
   * @param lowMil low end of the specified total dry film, above 0
   * @param highMil high end; the same for a single value
   */
  public static FilmAcceptance of(double lowMil, double highMil) {
    return lowMil < highMil
        ? new FilmAcceptance(lowMil, highMil)
        : new FilmAcceptance(LEAST_SHARE * lowMil, MOST_SHARE * lowMil);
  }

  /** Least mean of one spot. */
  public double leastSpotMil() {
    return LEAST_SHARE * leastMil;
  }

  /** Greatest mean of one spot. */
  public double mostSpotMil() {
    return MOST_SHARE * mostMil;
  }

  /** Whether a mean over an area is under what is accepted. */
  public boolean isUnder(double meanMil) {
    return meanMil < leastMil * (1 - ROUNDING);
  }

  /** Whether a mean over an area is over what is accepted. */
  public boolean isOver(double meanMil) {
    return meanMil > mostMil * (1 + ROUNDING);
  }

  /** Whether a mean over an area is accepted. */
  public boolean holds(double meanMil) {
    return !isUnder(meanMil) && !isOver(meanMil);
  }

  /** Whether the mean of a spot is outside what is accepted of one. */
  public boolean isSpotOutside(double meanMil) {
    return meanMil < leastSpotMil() * (1 - ROUNDING) || meanMil > mostSpotMil() * (1 + ROUNDING);
  }

  /**
   * Areas of about 100 ft2 that are measured of a surface: each up to 300 ft2, three up to 1000 ft2
   * (published, seen in an article), one more for each further 1000 ft2 or part (from memory).
   *
   * @param ft2 area of the surface, above 0
   */
  public static int areas(double ft2) {
    Require.positive("ft2", ft2);
    if (ft2 <= 300) {
      return (int) Math.ceil(ft2 / 100);
    }
    return ft2 <= 1000 ? 3 : 3 + (int) Math.ceil((ft2 - 1000) / 1000);
  }
}
