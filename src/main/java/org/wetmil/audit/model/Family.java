package org.wetmil.audit.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;

/**
 * Kinds of group that always go together: a coating is on a surface, a crew at a height. Which of
 * the two adds what is told less surely than what both add together.
 */
enum Family {
  WORK(GroupedBy.COATING, GroupedBy.SURFACE),
  CREW(GroupedBy.CREW, GroupedBy.CREW_AT_HEIGHT),
  YEAR(GroupedBy.YEAR, null);

  private static final double NOTHING = 1e-9;

  private final GroupedBy first;
  private final GroupedBy second;

  Family(GroupedBy first, GroupedBy second) {
    this.first = first;
    this.second = second;
  }

  /**
   * A part of an observation that is of one group of each kind.
   *
   * @param share of the estimate, above 0 and at most 1
   * @param first group of the first kind; blank when not known
   * @param second group of the second kind; blank when not known, or there is none
   */
  record Cell(double share, String first, String second) {}

  static Family of(GroupedBy by) {
    for (Family family : values()) {
      if (by == family.first || by == family.second) {
        return family;
      }
    }
    throw new IllegalArgumentException(by + " is not in the model");
  }

  GroupedBy first() {
    return first;
  }

  /** Null for none. */
  GroupedBy second() {
    return second;
  }

  /** The parts of an observation; none when nothing is known. */
  List<Cell> cells(Observation one) {
    List<Cell> cells = new ArrayList<>();
    switch (this) {
      case WORK ->
          one.pairs()
              .forEach((pair, share) -> cells.add(new Cell(share, pair.coating(), pair.surface())));
      case CREW -> one.shares().get(first).keySet().forEach(crew -> crew(one, crew, cells));
      case YEAR -> one.shares().get(first).keySet().forEach(y -> cells.add(new Cell(1, y, "")));
    }
    return cells;
  }

  private static void crew(Observation one, String crew, List<Cell> cells) {
    Map<String, Double> heights = one.shares().get(GroupedBy.CREW_AT_HEIGHT);
    heights.forEach((height, share) -> cells.add(new Cell(share, crew, height)));
    double unknown = 1 - one.known(GroupedBy.CREW_AT_HEIGHT);
    if (unknown > NOTHING) {
      cells.add(new Cell(unknown, crew, ""));
    }
  }

  /**
   * Log factor on an observation whose parts have these: that of their sum.
   *
   * @param log of a part
   */
  double mixture(Observation one, ToDoubleFunction<Cell> log) {
    List<Cell> cells = cells(one);
    double sum = 0;
    double whole = 0;
    for (Cell cell : cells) {
      sum += cell.share() * Math.exp(log.applyAsDouble(cell));
      whole += cell.share();
    }
    return cells.isEmpty() ? 0 : Math.log(sum / whole);
  }
}
