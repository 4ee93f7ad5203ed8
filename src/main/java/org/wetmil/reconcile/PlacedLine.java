package org.wetmil.reconcile;

import java.util.List;
import org.wetmil.ledger.LedgerLine;
import org.wetmil.reconcile.match.Match;
import org.wetmil.reconcile.match.Reason;

/**
 * A ledger line in its place.
 *
 * @param job the job found; empty when none was
 * @param coating the coating matched; empty when none is
 * @param how how the coating was matched; null when none is
 * @param reason why it is unmatched; null when it is not
 * @param suggestion what may have been meant, or what was expected; may be empty
 * @param duplicateOf the line that it repeats; null when it repeats none
 * @param pricePerGal its price of a US gallon where that is far from the item's others; NaN else
 * @param usualPricePerGal what the price of a US gallon was compared with; NaN as above
 */
public record PlacedLine(
    LedgerLine line,
    Place place,
    String job,
    String coating,
    Match.How how,
    Reason reason,
    List<String> suggestion,
    LedgerLine duplicateOf,
    double pricePerGal,
    double usualPricePerGal) {
  public PlacedLine {
    suggestion = List.copyOf(suggestion);
  }

  public boolean isMatched() {
    return place == Place.MATCHED;
  }

  public boolean isUnitSuspect() {
    return !Double.isNaN(pricePerGal);
  }

  /** What State says: how it was matched, or why not. */
  public String state() {
    return switch (place) {
      case MATCHED -> how.title();
      case UNMATCHED -> reason.title();
      case OUTSIDE, LEFT_OUT -> place.title();
    };
  }
}
