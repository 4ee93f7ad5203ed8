package org.wetmil.ledger;

/**
 * What a ledger line does to the paint of its job. The kind carries the direction, so that volumes
 * are never negative whatever sign the ledger gave them.
 */
public enum LineKind {
  OPENING_STOCK("opening stock", 1),
  PURCHASE("purchase", 1),
  RETURN("return", -1),
  TRANSFER_IN("transfer in", 1),
  TRANSFER_OUT("transfer out", -1),
  LEFT_OVER("left over", -1),
  WASTE("waste", -1);

  private final String title;
  private final int sign;

  LineKind(String title, int sign) {
    this.title = title;
    this.sign = sign;
  }

  /** The word printed under Kind. */
  public String title() {
    return title;
  }

  /** +1 where the line adds to what the job used, -1 where it takes away. */
  public int sign() {
    return sign;
  }
}
