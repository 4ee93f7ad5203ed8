package org.wetmil.checks;

import java.util.List;
import org.wetmil.catalogue.TableProblem;
import org.wetmil.ledger.ItemName;
import org.wetmil.ledger.Ledger;
import org.wetmil.quantity.UnitSystem;
import org.wetmil.reconcile.Reconciliation;
import org.wetmil.reconcile.SettingsTaken;

/**
 * Ledgers, bids and what came of comparing them: what the checks of ledgers look at.
 *
 * @param system units that figures are said in
 * @param own what is stated for this reconciliation
 */
public record ReconciledBooks(
    Reconciliation result,
    List<Ledger.Book> ledgers,
    List<BidRead> bids,
    UnitSystem system,
    OwnWords own) {
  public ReconciledBooks {
    ledgers = List.copyOf(ledgers);
    bids = List.copyOf(bids);
  }

  /**
   * What the bookkeeper and the bids state of their own.
   *
   * @param tables tables of items, each of one file
   * @param refused cells of settings that cannot be used
   */
  public record OwnWords(
      SettingsTaken settings, List<List<ItemName>> tables, List<RefusedCell> refused) {
    /** Nothing is stated. */
    public static final OwnWords NONE = new OwnWords(SettingsTaken.BUILT_IN, List.of(), List.of());

    public OwnWords {
      tables = List.copyOf(tables);
      refused = List.copyOf(refused);
    }
  }

  /** A cell that cannot be used, and the file that it is in. */
  public record RefusedCell(String file, TableProblem problem) {}

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
