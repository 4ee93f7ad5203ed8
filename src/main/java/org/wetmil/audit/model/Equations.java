package org.wetmil.audit.model;

import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The linear equations of the additive model: a level common to all rows, and effects that are
 * pulled towards 0, so that there is exactly one solution however the groups occur together
 * (published: Henderson's equations for the best linear prediction of random effects).
 *
 * <p>The rows of a bid share its luck: a bid of one row counts 1, one of many rows between 1 and
 * their number, since coatings of one bid can be compared with each other, its crew only with other
 * bids'.
 */
final class Equations {
  private final Rows rows;
  private final Rows.Linear linear;
  private final double luck;
  private final double[][] matrix;
  private final double[] right;
  private double squares;

  /**
   * @param groups how many columns there are
   * @param luck variance of the luck that a bid's rows share, over that of a row by itself
   */
  Equations(Rows rows, Rows.Linear linear, int groups, double luck) {
    this.rows = rows;
    this.linear = linear;
    this.luck = luck;
    matrix = new double[groups + 1][groups + 1];
    right = new double[groups + 1];
    for (int bid = 0; bid < rows.bids(); bid++) {
      add(bid);
    }
  }

  /**
   * What solves the equations.
   *
   * @param level log ratio of what no group adds to
   * @param effects log effect of each group as believed
   * @param doubts by column, variance of the effect's error, in variances of a bid
   * @param scatter variance of a bid's log ratio within its groups
   */
  record Solution(double level, double[] effects, double[] doubts, double scatter) {}

  /**
   * What the bids show about each group.
   *
   * @param seen log effect, the other groups taken off
   * @param bids whole bids that the evidence amounts to
   * @param left what level and effects leave of each row's log ratio
   */
  record Evidence(double[] seen, double[] bids, double[] left) {}

  /**
   * @param pulls by column, how many bids the pull towards 0 is worth, above 0; infinite for a
   *     group that has no effect of its own
   */
  Solution solve(double[] pulls) {
    int[] used =
        IntStream.rangeClosed(0, pulls.length)
            .filter(i -> i == 0 || !Double.isInfinite(pulls[i - 1]))
            .toArray();
    double[][] part = new double[used.length][used.length];
    double[] wanted = new double[used.length];
    for (int i = 0; i < used.length; i++) {
      for (int j = 0; j < used.length; j++) {
        part[i][j] = matrix[used[i]][used[j]];
      }
      part[i][i] += i == 0 ? 0 : pulls[used[i] - 1];
      wanted[i] = right[used[i]];
    }
    RealMatrix inverse =
        new CholeskyDecomposition(new Array2DRowRealMatrix(part, false)).getSolver().getInverse();
    double[] found = inverse.operate(wanted);
    double[] effects = new double[pulls.length];
    double[] doubts = new double[pulls.length];
    double explained = 0;
    for (int i = 0; i < used.length; i++) {
      explained += found[i] * wanted[i];
      if (i > 0) {
        effects[used[i] - 1] = found[i];
        doubts[used[i] - 1] = inverse.getEntry(i, i);
      }
    }
    double scatter = Math.max(0, squares - explained) / Math.max(1, rows.count() - 1);
    return new Solution(found[0], effects, doubts, scatter);
  }

  /** Adds the rows of a bid: their products, less what their common luck makes them tell twice. */
  private void add(int bid) {
    double[] sums = new double[right.length];
    double logSum = 0;
    for (int row = rows.start(bid); row < rows.start(bid + 1); row++) {
      double log = linear.logs()[row];
      int[] columns = rows.columns(row);
      for (int i = -1; i < columns.length; i++) {
        int first = i < 0 ? 0 : columns[i] + 1;
        double share = i < 0 ? 1 : linear.shares()[row][i];
        sums[first] += share;
        right[first] += scale() * share * log;
        for (int j = -1; j < columns.length; j++) {
          double other = j < 0 ? 1 : linear.shares()[row][j];
          matrix[first][j < 0 ? 0 : columns[j] + 1] += scale() * (share * other);
        }
      }
      squares += scale() * log * log;
      logSum += log;
    }
    squares -= twice(bid) * logSum * logSum;
    int[] used = IntStream.range(0, sums.length).filter(i -> sums[i] != 0).toArray();
    for (int first : used) {
      right[first] -= twice(bid) * sums[first] * logSum;
      for (int second : used) {
        matrix[first][second] -= twice(bid) * (sums[first] * sums[second]);
      }
    }
  }

  private double scale() {
    return 1 + luck;
  }

  private double twice(int bid) {
    return scale() * luck / (1 + luck * (rows.start(bid + 1) - rows.start(bid)));
  }

  Evidence evidence(Solution solution) {
    double[] effects = solution.effects();
    double[] left = new double[rows.count()];
    for (int row = 0; row < left.length; row++) {
      left[row] = linear.logs()[row] - solution.level();
      for (int i = 0; i < rows.columns(row).length; i++) {
        left[row] -= linear.shares()[row][i] * effects[rows.columns(row)[i]];
      }
    }
    double[] bids = new double[effects.length];
    double[] more = new double[effects.length];
    for (int bid = 0; bid < rows.bids(); bid++) {
      tell(bid, left, bids, more);
    }
    double[] seen =
        IntStream.range(0, effects.length)
            .mapToDouble(column -> effects[column] + more[column] / bids[column])
            .toArray();
    return new Evidence(seen, bids, left);
  }

  /** Adds what a bid tells about each group, and what it shows beyond the group's effect. */
  private void tell(int bid, double[] left, double[] bids, double[] more) {
    double[] sums = new double[bids.length];
    double leftSum = 0;
    for (int row = rows.start(bid); row < rows.start(bid + 1); row++) {
      leftSum += left[row];
      for (int i = 0; i < rows.columns(row).length; i++) {
        int column = rows.columns(row)[i];
        double share = linear.shares()[row][i];
        sums[column] += share;
        bids[column] += scale() * share * share;
        more[column] += scale() * share * left[row];
      }
    }
    for (int column = 0; column < sums.length; column++) {
      bids[column] -= twice(bid) * sums[column] * sums[column];
      more[column] -= twice(bid) * sums[column] * leftSum;
    }
  }
}
