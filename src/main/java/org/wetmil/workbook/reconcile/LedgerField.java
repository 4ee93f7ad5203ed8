package org.wetmil.workbook.reconcile;

import org.wetmil.workbook.stream.SheetReference;

/** The columns of the list of ledger lines, in order. */
enum LedgerField {
  DATE("Date", 11),
  JOB("Job", 24),
  ITEM("Item", 40),
  COATING("Coating", 18),
  QUANTITY("Quantity", 10),
  UNIT("Unit", 13),
  VOLUME("Volume", 11),
  AMOUNT("Amount", 12),
  CURRENCY("Currency", 10),
  DOCUMENT("Document", 12),
  KIND("Kind", 13),
  FILE("File", 28),
  LINE("Line", 7),
  STATE("State", 24);

  static final String SHEET = "Ledger";

  private final String heading;
  private final int width;

  LedgerField(String heading, int width) {
    this.heading = heading;
    this.width = width;
  }

  String heading() {
    return heading;
  }

  int width() {
    return width;
  }

  /** The whole column as formulas write it, so that lines added below count. */
  String whole() {
    return SheetReference.column(SHEET, ordinal());
  }
}
