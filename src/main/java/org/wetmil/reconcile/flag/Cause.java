package org.wetmil.reconcile.flag;

/** What a flag could mean, and what to look at first; common practice, no source. */
public enum Cause {
  UNIT_MISTAKE(
      "a quantity in another unit, as pails typed as gallons",
      "the invoice of the line whose price by volume is far from the others"),
  COUNTED_TWICE("a line entered twice", "the two lines of one document"),
  WRONG_TRANSFER(
      "paint moved between jobs and written on one of them only",
      "the transfers of this coating on the other jobs"),
  MISSING_RETURN(
      "full containers that went back or are left over and are not written down",
      "what stands in the shop and on the truck from this job"),
  EXTRA_COAT("a coat more than was bid", "the daily log, and whether the owner ordered it"),
  HEAVY_FILM("a heavier film than was bid", "film readings, the tip in use and its wear"),
  WASTE_OR_THEFT(
      "waste that is not written down, or paint that left the site",
      "what was thrown away, and who had the keys"),
  BID_LINE_LEFT_OUT(
      "work that was done and not bid", "rooms and surfaces painted against the lines of the bid"),
  MISSING_PURCHASE(
      "paint bought or taken from stock that is not in the ledgers",
      "unmatched lines that name this job, and stock taken from the shop"),
  THIN_FILM("a thinner film than was bid", "film readings, and how much thinner went in"),
  FEWER_COATS("a coat less than was bid", "the daily log, before the job is invoiced"),
  SHORT_AREA("less area than was bid", "rooms and surfaces painted against the lines of the bid"),
  NOT_DONE_YET("work that is not done yet", "how far the job is"),
  OTHER_NAME(
      "paint bought under a name that is not matched",
      "unmatched lines of this job; name the item in the item table"),
  PRICE_CHANGED(
      "a price other than the one bid", "the supplier's price list at the day of the bid"),
  TYPING_MISTAKE("a figure typed wrongly", "the document itself");

  private final String couldMean;
  private final String lookAt;

  Cause(String couldMean, String lookAt) {
    this.couldMean = couldMean;
    this.lookAt = lookAt;
  }

  /** What it could mean, to follow "could be". */
  public String couldMean() {
    return couldMean;
  }

  /** What to look at first, to follow "look first at". */
  public String lookAt() {
    return lookAt;
  }
}
