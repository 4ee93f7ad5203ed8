package org.wetmil.reconcile;

import java.util.List;
import java.util.Map;
import org.wetmil.reconcile.flag.Flag;
import org.wetmil.reconcile.match.Reason;
import org.wetmil.reconcile.use.CoatingUse;
import org.wetmil.reconcile.use.GroupUse;
import org.wetmil.reconcile.use.Tally;

/**
 * What came of comparing ledgers with bids.
 *
 * @param currency the currency of the money in {@code uses} and groups; empty when none is stated
 * @param lines every ledger line once, in the order read
 * @param read all lines
 * @param places the same lines by place; they add up to {@code read}
 * @param reasons the unmatched lines by reason
 * @param uses one for each coating of each job, in the bids' order
 * @param byCoating sums by coating over all jobs, in the order first bid
 * @param byJob sums by job, in the bids' order
 * @param byMonth sums by month, earliest first, lines without a date last
 */
public record Reconciliation(
    ReconcileSettings settings,
    String currency,
    List<PlacedLine> lines,
    Tally read,
    Map<Place, Tally> places,
    Map<Reason, Tally> reasons,
    List<CoatingUse> uses,
    List<GroupUse> byCoating,
    List<GroupUse> byJob,
    List<GroupUse> byMonth,
    List<Flag> flags) {

  public Tally at(Place place) {
    return places.get(place);
  }
}
