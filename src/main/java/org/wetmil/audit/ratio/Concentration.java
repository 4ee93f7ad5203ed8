package org.wetmil.audit.ratio;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observations;

/**
 * The one group in which most of a miss arose.
 *
 * @param share of the miss that arose there, at least 0.6; over 1 where the rest made up for some
 * @param size share of the estimate that it is
 */
public record Concentration(GroupedBy by, String group, double share, double size) {
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
   * Where the miss of these bids arose; empty when it is spread, or when luck would explain it. Of
   * several, the one whose share of the miss most exceeds its size: what holds it holds it too.
   *
   * @param known a kind of group not to look at; null for none
   */
  public static Optional<Concentration> of(Observations observations, GroupedBy known) {
    List<Piece> all = Piece.of(observations, one -> 1);
    return WHERE.stream()
        .filter(by -> by != known)
        .flatMap(by -> Split.of(observations, by).stream().flatMap(s -> of(all, by, s)))
        .max(Comparator.comparingDouble(where -> where.share - where.size));
  }

  private static Stream<Concentration> of(List<Piece> all, GroupedBy by, Split split) {
    double share = miss(split.within()) / miss(all);
    double size = estimated(split.within()) / estimated(all);
    boolean isMost = share >= MOST && share >= size + ABOVE_ITS_SIZE;
    return isMost && split.difference().interval().excludes(0)
        ? Stream.of(new Concentration(by, split.group(), share, size))
        : Stream.empty();
  }

  private static double miss(List<Piece> pieces) {
    return pieces.stream().mapToDouble(piece -> piece.actual() - piece.estimated()).sum();
  }

  private static double estimated(List<Piece> pieces) {
    return pieces.stream().mapToDouble(Piece::estimated).sum();
  }
}
