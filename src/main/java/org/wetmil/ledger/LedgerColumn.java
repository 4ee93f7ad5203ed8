package org.wetmil.ledger;

/** The columns of a purchase ledger; other headings for them stand in ledger-words.csv. */
public enum LedgerColumn {
  DATE("Date"),
  JOB("Job"),
  DOCUMENT("Document"),
  VENDOR("Vendor"),
  ITEM("Item"),
  DESCRIPTION("Description"),
  QUANTITY("Quantity"),
  UNIT("Unit"),
  UNIT_PRICE("Unit price"),
  AMOUNT("Amount"),
  CURRENCY("Currency"),
  TYPE("Type");

  private final String heading;

  LedgerColumn(String heading) {
    this.heading = heading;
  }

  public String heading() {
    return heading;
  }

  public boolean isNumber() {
    return this == QUANTITY || this == UNIT_PRICE || this == AMOUNT;
  }
}
