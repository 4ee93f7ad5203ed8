package org.wetmil.audit.stats;

import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * A straight line through points by least squares.
 *
 * @param points how many points there were
 * @param intercept where it meets x = 0; 0 for a line through the origin
 * @param slope its slope
 * @param slopeError standard error of the slope; NaN under three points
 * @param slopeInterval 95 % interval of the slope; unknown under three points
 * @param scatter standard deviation of the points about the line; NaN under three points
 */
public record Line(
    int points,
    double intercept,
    double slope,
    double slopeError,
    Interval slopeInterval,
    double scatter) {

  public static Line through(double[] x, double[] y) {
    return fit(new SimpleRegression(true), x, y);
  }

  public static Line throughOrigin(double[] x, double[] y) {
    return fit(new SimpleRegression(false), x, y);
  }

  private static Line fit(SimpleRegression regression, double[] x, double[] y) {
    for (int i = 0; i < x.length; i++) {
      regression.addData(x[i], y[i]);
    }
    int unknowns = regression.hasIntercept() ? 2 : 1;
    double error = regression.getSlopeStdErr();
    Interval interval =
        x.length < Sample.FEWEST_FOR_INTERVAL
            ? Interval.UNKNOWN
            : Interval.around(regression.getSlope(), Sample.quantile(x.length - unknowns) * error);
    return new Line(
        x.length,
        regression.hasIntercept() ? regression.getIntercept() : 0,
        regression.getSlope(),
        error,
        interval,
        Math.sqrt(regression.getMeanSquareError()));
  }
}
