package org.wetmil.audit.ratio;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.Difference;
import org.wetmil.audit.stats.Sample;

/**
 * What one bid says about a group. The bid is the unit of every count: its lines share a crew, a
 * site and a week, so that they are not independent of each other.
 *
 * @param estimated the group's part of the estimate
 * @param actual the group's part of the outcome; one known only for a mixture is split by the
 *     shares of the estimate
 * @param purity how far that outcome is the group's alone, above 0 and at most 1
 */
record Piece(int bid, double estimated, double actual, double purity) {

  /** One piece for each bid in which the share is above 0, in the order of the bids. */
  static List<Piece> of(Observations observations, ToDoubleFunction<Observation> share) {
    return observations.byBid().entrySet().stream()
        .map(bid -> of(bid.getKey(), bid.getValue(), share))
        .filter(piece -> piece.estimated() > 0)
        .toList();
  }

  private static Piece of(int bid, List<Observation> list, ToDoubleFunction<Observation> share) {
    double estimated = 0;
    double actual = 0;
    double pure = 0;
    for (Observation one : list) {
      double part = share.applyAsDouble(one);
      estimated += part * one.estimated();
      actual += part * one.actual();
      pure += part * part * one.estimated();
    }
    return of(bid, estimated, actual, pure);
  }

  /**
   * @param squares sum of the squared shares times their estimates
   */
  static Piece of(int bid, double estimated, double actual, double squares) {
    return new Piece(bid, estimated, actual, Math.min(1, squares / estimated));
  }

  /** The log ratios, each counting as far as it is pure. */
  static Sample sample(List<Piece> pieces) {
    return Sample.ofParts(
        pieces.stream().mapToDouble(piece -> Math.log(piece.actual / piece.estimated)).toArray(),
        pieces.stream().mapToDouble(Piece::purity).toArray());
  }

  /** How the log ratios of two groups differ; a bid may have a part in both. */
  static Difference difference(List<Piece> first, List<Piece> second) {
    return Difference.between(sample(first), sample(second), bids(first), bids(second));
  }

  private static int[] bids(List<Piece> pieces) {
    return pieces.stream().mapToInt(Piece::bid).toArray();
  }
}
