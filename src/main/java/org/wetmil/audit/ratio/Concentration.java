package org.wetmil.audit.ratio;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.Difference;

/**
 * The one group in which most of a miss arose.
 *
 * @param share of the miss that arose there, at least 0.6; over 1 where the rest made up for some
 */
public record Concentration(GroupedBy by, String group, double share) {
  private static final List<GroupedBy> WHERE =
      List.of(GroupedBy.COATING, GroupedBy.SURFACE, GroupedBy.CREW, GroupedBy.HEIGHT);

  /** House rules for calling it most or nearly all, and for being more than a large group. */
  private static final double MOST = 0.6;

  private static final double NEARLY_ALL = 0.8;
  private static final double ABOVE_ITS_SIZE = 0.25;

  public boolean isNearlyAll() {
    return share >= NEARLY_ALL;
  }

  /**
   * Where the miss of these bids arose; empty when it is spread, or when luck would explain it.
   *
   * @param known a kind of group not to look at; null for none
   */
  public static Optional<Concentration> of(Observations observations, GroupedBy known) {
    List<Piece> all = Piece.of(observations, one -> 1);
    return WHERE.stream()
        .filter(by -> by != known)
        .flatMap(by -> observations.groups(by).stream().flatMap(g -> of(observations, all, by, g)))
        .max(Comparator.comparingDouble(Concentration::share));
  }

  private static Stream<Concentration> of(
      Observations observations, List<Piece> all, GroupedBy by, String group) {
    List<Piece> there = Piece.of(observations, one -> one.share(by, group));
    List<Piece> elsewhere = Piece.of(observations, (Observation one) -> 1 - one.share(by, group));
    double share = miss(there) / miss(all);
    double size = estimated(there) / estimated(all);
    Difference apart = Piece.difference(there, elsewhere);
    boolean isMost = share >= MOST && share >= size + ABOVE_ITS_SIZE;
    return isMost && apart.interval().excludes(0)
        ? Stream.of(new Concentration(by, group, share))
        : Stream.empty();
  }

  private static double miss(List<Piece> pieces) {
    return pieces.stream().mapToDouble(piece -> piece.actual() - piece.estimated()).sum();
  }

  private static double estimated(List<Piece> pieces) {
    return pieces.stream().mapToDouble(Piece::estimated).sum();
  }
}
