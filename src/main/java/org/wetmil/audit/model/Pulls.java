package org.wetmil.audit.model;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.wetmil.audit.past.GroupedBy;

/** How far the groups of each kind are pulled towards all bids, told from all kinds at once. */
final class Pulls {
  private static final int MOST_ROUNDS = 200;

  /** Relative change that moves no printed figure. */
  private static final double STILL = 1e-4;

  private final List<Term> terms;
  private final Map<GroupedBy, List<Term>> kinds;
  private final Map<GroupedBy, Shrinkage> shrinkage = new EnumMap<>(GroupedBy.class);

  Pulls(List<Term> terms) {
    this(terms, Map.of());
  }

  /**
   * @param start by kind, what to begin with where the bids tell how far its groups differ
   */
  Pulls(List<Term> terms, Map<GroupedBy, Shrinkage> start) {
    this.terms = terms;
    kinds = terms.stream().collect(Collectors.groupingBy(Term::by));
    kinds.forEach(
        (by, groups) -> {
          Shrinkage usual = Shrinkage.start(groups);
          shrinkage.put(by, Shrinkage.isTold(groups) ? start.getOrDefault(by, usual) : usual);
        });
  }

  /** Changes the pulls until the effects that come of them speak for no others. */
  Equations.Solution settle(Equations equations) {
    Equations.Solution solution = equations.solve(columns());
    for (int round = 0; round < MOST_ROUNDS && tell(solution) > STILL; round++) {
      solution = equations.solve(columns());
    }
    return solution;
  }

  /** Tells the pulls from effects; gives the largest relative change. */
  private double tell(Equations.Solution solution) {
    double moved = 0;
    for (Map.Entry<GroupedBy, List<Term>> kind : kinds.entrySet()) {
      if (!Shrinkage.isTold(kind.getValue())) {
        continue;
      }
      double before = shrinkage.get(kind.getKey()).k();
      double freedom = kind.getValue().size();
      double squares = 0;
      for (int column = 0; column < terms.size(); column++) {
        if (terms.get(column).by() == kind.getKey()) {
          freedom -= before * solution.doubts()[column];
          squares += solution.effects()[column] * solution.effects()[column];
        }
      }
      Shrinkage told = Shrinkage.of(freedom, squares, solution.scatter());
      moved = Math.max(moved, Math.abs(told.k() / before - 1));
      shrinkage.put(kind.getKey(), told);
    }
    return moved;
  }

  Map<GroupedBy, Shrinkage> byKind() {
    return Map.copyOf(shrinkage);
  }

  private double[] columns() {
    return terms.stream().mapToDouble(term -> shrinkage.get(term.by()).k()).toArray();
  }

  /** The pulls by column, once they have settled. */
  double[] settled() {
    return terms.stream().mapToDouble(term -> shrinkage.get(term.by()).settled().k()).toArray();
  }

  /** How far a group is believed of which the bids tell as much as n whole ones. */
  double weight(int column, double n) {
    return shrinkage.get(terms.get(column).by()).settled().weight(n);
  }
}
