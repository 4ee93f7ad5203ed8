package org.wetmil.audit.ratio;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.wetmil.audit.past.GroupedBy;
import org.wetmil.audit.past.Observation;
import org.wetmil.audit.past.Observations;
import org.wetmil.audit.stats.Difference;

/**
 * The bids split into a group and the other groups of its kind. All groups of a kind come from one
 * walk over the observations, since a large audit has many of both.
 *
 * @param within what each bid says about the group, in the order of the bids
 * @param rest what each bid says about the others
 */
record Split(String group, List<Piece> within, List<Piece> rest) {
  /** Parts of an estimate below this share of it are roundings. */
  private static final double NOTHING = 1e-9;

  /** Every group of a kind, by name. */
  static List<Split> of(Observations observations, GroupedBy by) {
    Map<String, Split> splits = new TreeMap<>();
    for (String group : observations.groups(by)) {
      splits.put(group, new Split(group, new ArrayList<>(), new ArrayList<>()));
    }
    observations
        .byBid()
        .forEach(
            (bid, list) -> {
              Sums known = new Sums();
              Map<String, Sums> groups = new HashMap<>();
              for (Observation one : list) {
                double all = one.known(by);
                known.add(all, all, one);
                one.shares()
                    .get(by)
                    .forEach(
                        (group, share) ->
                            groups.computeIfAbsent(group, name -> new Sums()).add(share, all, one));
              }
              splits.forEach(
                  (group, split) -> split.add(bid, known, groups.getOrDefault(group, new Sums())));
            });
    return List.copyOf(splits.values());
  }

  /** How the log ratios of the group and the rest differ. */
  Difference difference() {
    return Piece.difference(within, rest);
  }

  private void add(int bid, Sums known, Sums group) {
    if (group.estimated > 0) {
      within.add(Piece.of(bid, group.estimated, group.actual, group.squares));
    }
    double others = known.estimated - group.estimated;
    if (others > NOTHING * known.estimated) {
      double squares = known.squares - 2 * group.products + group.squares;
      rest.add(Piece.of(bid, others, known.actual - group.actual, squares));
    }
  }

  /** Sums over a bid of shares s of a group, and k of all known groups. */
  private static final class Sums {
    private double estimated;
    private double actual;
    private double squares;
    private double products;

    void add(double share, double known, Observation one) {
      estimated += share * one.estimated();
      actual += share * one.actual();
      squares += share * share * one.estimated();
      products += share * known * one.estimated();
    }
  }
}
