package org.wetmil.reconcile.use;

/**
 * Sums over a coating, a job or a month.
 *
 * @param name the coating, the job, or the month as 2026-03; "no date" for lines without one
 * @param bidGal paint bid, US gallons; NaN for a month
 * @param ledger the matched lines
 * @param money used at the price paid, bid at the price bid and their variances; null when a price
 *     is missing for some part, and for a month
 * @param matched the same lines with their amounts as written, by currency
 * @param unmatched lines that name the job or fall into the month but are no coating of it
 */
public record GroupUse(
    String name,
    double bidGal,
    KindSums ledger,
    MoneyVariance money,
    Tally matched,
    Tally unmatched) {

  public double usedGal() {
    return ledger.usedGal();
  }
}
