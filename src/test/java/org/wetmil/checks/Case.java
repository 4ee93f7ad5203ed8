package org.wetmil.checks;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.wetmil.catalogue.Catalogue;
import org.wetmil.catalogue.StatedRow;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.catalogue.Tables;
import org.wetmil.estimate.Bid;
import org.wetmil.estimate.BidLine;
import org.wetmil.estimate.Bids;
import org.wetmil.estimate.Estimator;
import org.wetmil.estimate.FilledBid;
import org.wetmil.quantity.UnitSystem;

/**
 * A bid in which a check fires, and one just inside its limit in which it stays silent.
 *
 * @param id the check
 * @param fires a bid with the fault
 * @param silent the same bid just inside
 */
record Case(String id, FilledBid fires, FilledBid silent) {

  @Override
  public String toString() {
    return id;
  }

  /** Two bids of one line each, with the built-in tables. */
  static Case of(String id, BidLine fires, BidLine silent) {
    return new Case(id, bid(fires), bid(silent));
  }

  static FilledBid bid(BidLine... lines) {
    return bid(Catalogue.builtIn(), lines);
  }

  static FilledBid bid(Catalogue catalogue, BidLine... lines) {
    return Estimator.fill(Bids.bid(catalogue, lines[0].system(), lines));
  }

  static FilledBid bid(Bid bid) {
    return Estimator.fill(bid);
  }

  /** The built-in tables with rows laid over them: pairs of table and rows. */
  static Catalogue tables(Object... pairs) {
    Map<Tables, List<StatedRow>> stated = new EnumMap<>(Tables.class);
    for (int i = 0; i < pairs.length; i += 2) {
      StatedRow row = (StatedRow) pairs[i + 1];
      stated.computeIfAbsent((Tables) pairs[i], table -> new ArrayList<>()).add(row);
    }
    List<TableProblem> problems = new ArrayList<>();
    Catalogue catalogue = Catalogue.builtIn().with(stated, UnitSystem.US, problems);
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(problems.toString());
    }
    return catalogue;
  }

  static StatedRow row(Object... pairs) {
    return Bids.row(Arrays.hashCode(pairs) & 0xffff, pairs);
  }
}
