package org.wetmil.reconcile.use;

import java.math.BigDecimal;
import org.wetmil.reconcile.bid.BidUse;
import org.wetmil.trade.Yield;

/**
 * One coating of one job: what was bid, what the ledgers say, and what follows.
 *
 * @param pricePaid price of a gallon as bought, on this job or else on any; null when unknown
 * @param toleranceGal difference from the bid up to which nothing is said, US gallons
 */
public record CoatingUse(
    String job, BidUse bid, KindSums ledger, BigDecimal pricePaid, double toleranceGal) {

  public String coating() {
    return bid.coating();
  }

  public double usedGal() {
    return ledger.usedGal();
  }

  /** Used less bid, US gallons. */
  public double varianceGal() {
    return usedGal() - bid.paintGal();
  }

  /** Used less bid as a share of the bid. */
  public double varianceShare() {
    return varianceGal() / bid.paintGal();
  }

  /** Whether anything was used, so that a yield can be found. */
  public boolean isUsed() {
    return usedGal() > 1e-9;
  }

  /** Share of the paint used that the film as bid holds; NaN when nothing was used. */
  public double foundYield() {
    return isUsed() ? Yield.found(bid.theoreticalGal(), usedGal()) : Double.NaN;
  }

  /**
   * Transfer efficiency that would explain the use with film, area and waste as bid; over 1 cannot
   * be. NaN when nothing was used.
   */
  public double impliedTransferEfficiency() {
    return isUsed()
        ? Yield.impliedTransferEfficiency(foundYield(), bid.waste(), bid.roughness())
        : Double.NaN;
  }

  /** Share of the paint sprayed that would have to be lost; below 0 cannot be. */
  public double impliedLoss() {
    return 1 - impliedTransferEfficiency();
  }

  /** Spread of one coat that the use comes to, ft² per US gallon; NaN when nothing was used. */
  public double impliedSpreadFt2PerGal() {
    return isUsed() ? bid.coatedFt2() / usedGal() : Double.NaN;
  }

  /** Dry film of one coat in mil that would explain the use with losses and area as bid. */
  public double impliedDryMil() {
    return bid.dryMil() * usedGal() / bid.paintGal();
  }

  public boolean isOver() {
    return varianceGal() > toleranceGal;
  }

  public boolean isUnder() {
    return varianceGal() < -toleranceGal;
  }

  /** The variance in money; null when no price paid is known. */
  public MoneyVariance money() {
    return pricePaid == null
        ? null
        : MoneyVariance.of(usedGal(), pricePaid, bid.paintGal(), bid.pricePerGal());
  }
}
