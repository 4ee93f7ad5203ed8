package org.wetmil.checks;

import java.util.List;
import org.wetmil.ledger.Ledger;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.Reconciliation;

/**
 * Ledgers, bids and what came of comparing them: what the checks of ledgers look at.
 *
 * @param system units that figures are said in
 */
public record ReconciledBooks(
    Reconciliation result, List<Ledger.Book> ledgers, List<BidRead> bids, UnitSystem system) {
  public ReconciledBooks {
    ledgers = List.copyOf(ledgers);
    bids = List.copyOf(bids);
  }

  /**
   * A bid that was compared.
   *
   * @param file its name
   * @param currency what its prices are in; empty when it does not say
   * @param filled whether it was filled and taken as it stands
   * @param missing cells of it without a usable value, whose computed value stands in
   */
  public record BidRead(
      String file,
      String job,
      UnitSystem system,
      String currency,
      boolean filled,
      List<String> missing) {
    public BidRead {
      missing = List.copyOf(missing);
    }
  }
}
